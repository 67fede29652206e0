namespace GearBlanks.Curves;

/// <summary>
/// A piece of the involute of a circle. The parameter is the roll angle u, rad, at least 0: the angle of circle unwound.
/// Before its placement the circle's centre is the origin, the involute's foot lies on +X and it unwinds counter-clockwise:
/// the point at u is rb (cos u + u sin u, sin u - u cos u), the tangent has angle u, the radius of curvature is rb u.
/// </summary>
/// <remarks>Source: ISO 21771:2007, clause 4.3 (involute, roll angle); from memory.</remarks>
/// <param name="BaseRadius">Radius rb of the circle, mm; positive.</param>
/// <param name="StartRoll">Roll angle where the piece begins, rad.</param>
/// <param name="EndRoll">Roll angle where it ends, rad.</param>
/// <param name="Placement">Where the involute stands.</param>
public sealed record Involute(double BaseRadius, double StartRoll, double EndRoll, Motion Placement) : Curve
{
    private double Sense => EndRoll < StartRoll ? -1 : 1;

    private double Handedness => Placement.IsMirrored ? -1 : 1;

    /// <inheritdoc/>
    public override double Start => StartRoll;

    /// <inheritdoc/>
    public override double End => EndRoll;

    /// <summary>The roll angle, rad, at which the involute of a circle of radius <paramref name="baseRadius"/> reaches a radius, both mm.</summary>
    public static double RollAt(double baseRadius, double radius) =>
        Math.Sqrt(Math.Max(0, (radius - baseRadius) * (radius + baseRadius))) / baseRadius;

    /// <inheritdoc/>
    public override Point PointAt(double parameter)
    {
        (double sine, double cosine) = Math.SinCos(parameter);
        return Placement.Apply(new Point(
            BaseRadius * (cosine + (parameter * sine)),
            BaseRadius * (sine - (parameter * cosine))));
    }

    /// <inheritdoc/>
    public override Vector TangentAt(double parameter) => Placement.Apply(Vector.AtAngle(parameter)) * Sense;

    /// <inheritdoc/>
    public override double CurvatureAt(double parameter) => Sense * Handedness / (BaseRadius * parameter);

    /// <inheritdoc/>
    public override double LengthBetween(double from, double to) => Sense * BaseRadius * (to - from) * (to + from) / 2;

    /// <inheritdoc/>
    internal override CurveState StateAt(double parameter)
    {
        (double sine, double cosine) = Math.SinCos(parameter);
        double speed = Sense * BaseRadius * parameter;
        return new(
            Placement.Apply(new Point(BaseRadius * (cosine + (parameter * sine)), BaseRadius * (sine - (parameter * cosine)))),
            Placement.Apply(new Vector(cosine, sine)) * Sense,
            parameter * Handedness,
            Sense * Handedness / (BaseRadius * parameter),
            speed * parameter / 2,
            speed);
    }

    /// <inheritdoc/>
    internal override double PieceDensityAt(double parameter, bool arcs) => arcs ? Math.Cbrt(BaseRadius) : Math.Sqrt(BaseRadius * parameter);

    /// <inheritdoc/>
    public override Curve Reversed() => this with { StartRoll = EndRoll, EndRoll = StartRoll };

    /// <inheritdoc/>
    public override Curve Moved(Motion motion) => this with { Placement = Placement.Then(motion) };

    /// <inheritdoc/>
    public override Curve Between(double start, double end) => this with { StartRoll = start, EndRoll = end };

    /// <inheritdoc/>
    /// <remarks>The parallel of an involute is the same involute turned by d / rb.</remarks>
    public override Curve Parallel(double distance)
    {
        double turn = Sense * Handedness * distance / BaseRadius;
        ArgumentOutOfRangeException.ThrowIfNegative(Math.Min(StartRoll, EndRoll) + turn, nameof(distance));
        return new Involute(BaseRadius, StartRoll + turn, EndRoll + turn, Motion.Turn(-turn).Then(Placement));
    }
}
