using GearBlanks.Teeth;

namespace GearBlanks.Meshing;

/// <summary>The right side of a rack's tooth, in a frame on whose Y axis its flank crosses the rolling line.</summary>
internal sealed class RackSide : ToothSide
{
    private readonly RackBar _rack;
    private readonly double _rollingHeight;
    private readonly double _sine;
    private readonly double _cosine;
    private readonly double _round;
    private readonly double _centreX;
    private readonly double _centreY;

    public RackSide(RackBar rack, double rollingHeight)
    {
        _rack = rack;
        _rollingHeight = rollingHeight;
        (_sine, _cosine) = Math.SinCos(rack.PressureAngle);
        _round = rack.Data.Rack.FilletRadius * rack.Module;
        _centreY = rack.RootHeight + _round;
        _centreX = FlankAt(_centreY) + (_round / _cosine);
    }

    /// <inheritdoc/>
    /// <remarks>The root round is hollow: it counts between the rays from its centre to the flank and to the root line.</remarks>
    public override double Room(Corner corner)
    {
        (double x, double y) = (corner.X - _centreX, corner.Y - _centreY);
        return (y * _cosine) - (x * _sine) >= 0 ? (corner.X - FlankAt(corner.Y)) * _cosine
            : x >= 0 ? corner.Y - _rack.RootHeight
            : _round - Math.Sqrt((x * x) + (y * y));
    }

    private double FlankAt(double height) => (_rollingHeight - height) * _sine / _cosine;
}
