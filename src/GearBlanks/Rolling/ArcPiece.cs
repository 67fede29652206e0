using GearBlanks.Curves;

namespace GearBlanks.Rolling;

/// <summary>A circular piece of a side whose centre is not the gear's.</summary>
internal sealed class ArcPiece : SidePiece
{
    private readonly double _radius;
    private readonly double _distance;
    private readonly double _direction;
    private readonly int _sense;

    public ArcPiece(Arc arc)
        : base(arc.StartPoint.Radius, arc.EndPoint.Radius)
    {
        _radius = arc.Radius;
        _distance = arc.Centre.Radius;
        _direction = arc.Centre.Angle;
        Point middle = arc.PointAt(arc.StartAngle + (arc.Sweep / 2));
        _sense = (arc.Centre - default(Point)).Cross(middle - default(Point)) < 0 ? -1 : 1;
    }

    /// <inheritdoc/>
    /// <remarks>sin^2 (d/2) = (R^2 - (r - c)^2) / (4 r c): exact also where the angle d from the centre's direction is small.</remarks>
    public override double AngleAt(double radius) => _direction + (_sense * 2 * Math.Asin(Math.Sqrt(HalfSquare(radius))));

    /// <inheritdoc/>
    public override Vector SlopeAt(double radius)
    {
        double half = HalfSquare(radius);
        double sine = 2 * Math.Sqrt(half * (1 - half)) * _distance;
        double inward = radius - (_distance * (1 - (2 * half)));
        return new Vector(sine, -_sense * inward) * (1 / _radius);
    }

    private double HalfSquare(double radius) =>
        Math.Clamp((_radius - radius + _distance) * (_radius + radius - _distance) / (4 * radius * _distance), 0, 1);
}
