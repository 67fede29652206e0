namespace GearBlanks.Curves;

/// <summary>A circular piece, up to a whole circle. The parameter is the angle from +X about the centre, rad.</summary>
/// <param name="Centre">Centre of the circle.</param>
/// <param name="Radius">Radius, mm; positive.</param>
/// <param name="StartAngle">Angle where it begins, rad.</param>
/// <param name="Sweep">Angle travelled, rad, counter-clockwise positive, at most one turn.</param>
public sealed record Arc(Point Centre, double Radius, double StartAngle, double Sweep) : Curve
{
    private double Sense => Math.Sign(Sweep);

    /// <summary>True for a whole circle.</summary>
    public bool IsFullCircle => Math.Abs(Sweep) >= 2 * Math.PI;

    /// <inheritdoc/>
    public override double Start => StartAngle;

    /// <inheritdoc/>
    public override double End => StartAngle + Sweep;

    /// <summary>A whole circle, counter-clockwise, from its rightmost point.</summary>
    public static Arc FullCircle(Circle circle) => new(circle.Centre, circle.Radius, 0, 2 * Math.PI);

    /// <inheritdoc/>
    public override Point PointAt(double parameter) => Centre + (Vector.AtAngle(parameter) * Radius);

    /// <inheritdoc/>
    public override Vector TangentAt(double parameter) => Vector.AtAngle(parameter).TurnedLeft * Sense;

    /// <inheritdoc/>
    public override double CurvatureAt(double parameter) => Sense / Radius;

    /// <inheritdoc/>
    public override double LengthBetween(double from, double to) => Radius * (to - from) * Sense;

    /// <inheritdoc/>
    internal override CurveState StateAt(double parameter)
    {
        Vector outward = Vector.AtAngle(parameter);
        return new(Centre + (outward * Radius), outward.TurnedLeft * Sense, parameter, Sense / Radius, Radius * parameter * Sense, Radius * Sense);
    }

    /// <inheritdoc/>
    internal override double PieceDensityAt(double parameter, bool arcs) => arcs ? 0 : Math.Sqrt(Radius);

    /// <inheritdoc/>
    public override Curve Reversed() => new Arc(Centre, Radius, End, -Sweep);

    /// <inheritdoc/>
    public override Curve Moved(Motion motion)
    {
        Point centre = motion.Apply(Centre);
        return new Arc(centre, Radius, (motion.Apply(StartPoint) - centre).Angle, motion.IsMirrored ? -Sweep : Sweep);
    }

    /// <inheritdoc/>
    public override Curve Between(double start, double end) => new Arc(Centre, Radius, start, end - start);

    /// <inheritdoc/>
    public override Curve Parallel(double distance)
    {
        double radius = Radius + (Sense * distance);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(radius, nameof(distance));
        return this with { Radius = radius };
    }
}
