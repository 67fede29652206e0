using GearBlanks.Curves;
using GearBlanks.Teeth;

namespace GearBlanks.Meshing;

/// <summary>The clockwise side of a ring's tooth.</summary>
internal sealed class RingSide : ToothSide
{
    private readonly RingGear _ring;
    private readonly double _sideAtPitchPoint;
    private readonly Point _centre;
    private readonly double _round;
    private readonly Vector _outward;
    private readonly Vector _contact;

    public RingSide(RingGear ring, double workingRadius)
    {
        _ring = ring;
        _sideAtPitchPoint = -ring.HalfAngleAt(workingRadius);
        _centre = ring.RootFillet.Centre;
        _round = ring.RootFillet.Radius;
        _outward = _centre - default(Point);
        _contact = Vector.AtAngle((Math.PI / 2) - ring.HalfAngleAt(ring.FormRadius) - Math.Acos(ring.BaseRadius / ring.FormRadius));
    }

    /// <inheritdoc/>
    /// <remarks>The root round is hollow: it counts between the rays from its centre to the root circle and to the flank.</remarks>
    public override double Room(Corner corner)
    {
        double radius = corner.Radius;
        Vector fromCentre = Point.Polar(radius, Angle(corner)) - _centre;
        return _outward.Cross(fromCentre) <= 0 ? _ring.RootRadius - radius
            : _contact.Cross(fromCentre) >= 0 ? FlankRoom(corner)
            : _round - fromCentre.Length;
    }

    /// <summary>Distance of a corner from the involute, also where it is longer than the flank, mm: the turn times the base radius.</summary>
    public double FlankRoom(Corner corner) => (-_ring.HalfAngleAt(corner.Radius) - Angle(corner)) * _ring.BaseRadius;

    private double Angle(Corner corner) => Math.Atan2(corner.Y, corner.X) - corner.Turn + _sideAtPitchPoint;
}
