namespace GearBlanks.Curves;

/// <summary>A straight piece. The parameter is the distance from the first point, mm.</summary>
/// <param name="From">Where it begins.</param>
/// <param name="To">Where it ends.</param>
public sealed record Line(Point From, Point To) : Curve
{
    private Vector Direction => (To - From).Unit;

    /// <inheritdoc/>
    public override double Start => 0;

    /// <inheritdoc/>
    public override double End => From.DistanceTo(To);

    /// <inheritdoc/>
    public override Point PointAt(double parameter) => parameter == 0 ? From : From + (Direction * parameter);

    /// <inheritdoc/>
    public override Vector TangentAt(double parameter) => Direction;

    /// <inheritdoc/>
    public override double CurvatureAt(double parameter) => 0;

    /// <inheritdoc/>
    public override double LengthBetween(double from, double to) => to - from;

    /// <inheritdoc/>
    internal override CurveState StateAt(double parameter) => new(PointAt(parameter), Direction, 0, 0, parameter, 1);

    /// <inheritdoc/>
    internal override double PieceDensityAt(double parameter, bool arcs) => 0;

    /// <inheritdoc/>
    public override Curve Reversed() => new Line(To, From);

    /// <inheritdoc/>
    public override Curve Moved(Motion motion) => new Line(motion.Apply(From), motion.Apply(To));

    /// <inheritdoc/>
    public override Curve Between(double start, double end) => new Line(PointAt(start), PointAt(end));

    /// <inheritdoc/>
    public override Curve Parallel(double distance)
    {
        Vector aside = Direction.TurnedRight * distance;
        return new Line(From + aside, To + aside);
    }
}
