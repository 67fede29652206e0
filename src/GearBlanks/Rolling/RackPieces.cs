using GearBlanks.Curves;

namespace GearBlanks.Rolling;

/// <summary>A straight piece of a rack's side.</summary>
internal sealed class RackLinePiece : SidePiece
{
    private readonly Point _lower;
    private readonly Vector _rise;

    public RackLinePiece(Point from, Point to)
        : base(from.Y, to.Y)
    {
        (_lower, Point upper) = from.Y <= to.Y ? (from, to) : (to, from);
        _rise = (upper - _lower).Unit;
    }

    /// <inheritdoc/>
    public override double AngleAt(double radius) => -_lower.X - ((radius - _lower.Y) * _rise.X / _rise.Y);

    /// <inheritdoc/>
    public override Vector SlopeAt(double radius) => new(_rise.Y, -_rise.X);
}

/// <summary>A circular piece of a rack's side.</summary>
internal sealed class RackArcPiece : SidePiece
{
    private readonly Point _centre;
    private readonly double _radius;
    private readonly int _sense;

    public RackArcPiece(Arc arc)
        : base(arc.StartPoint.Y, arc.EndPoint.Y)
    {
        _centre = arc.Centre;
        _radius = arc.Radius;
        _sense = arc.PointAt(arc.StartAngle + (arc.Sweep / 2)).X < arc.Centre.X ? -1 : 1;
    }

    /// <inheritdoc/>
    public override double AngleAt(double radius) => -_centre.X - (_sense * Across(radius));

    /// <inheritdoc/>
    public override Vector SlopeAt(double radius) => new Vector(Across(radius), _sense * (radius - _centre.Y)) * (1 / _radius);

    private double Across(double height)
    {
        double over = height - _centre.Y;
        return Math.Sqrt(Math.Max(0, (_radius - over) * (_radius + over)));
    }
}
