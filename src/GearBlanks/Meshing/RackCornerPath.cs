using GearBlanks.Curves;
using GearBlanks.Teeth;

namespace GearBlanks.Meshing;

/// <summary>A rack's tip corner past the gear over it; the parameter is its distance along the rack from the line through the gear's centre, mm; the
/// sharp corner, whatever has been taken off, where none is given.</summary>
internal sealed class RackCornerPath(ExternalGear gear, RackBar rack, double distance, Circle? corner = null) : CornerPath
{
    private readonly double _tip = distance - (corner?.Centre.Y ?? rack.TipHeight);
    private readonly double _radius = gear.ReferenceRadius;
    private readonly double _atPitchPoint = corner is { } given
        ? given.Centre.X - ((rack.ToothThickness / 2) - ((distance - gear.ReferenceRadius) * Math.Tan(rack.PressureAngle)))
        : -(gear.ReferenceRadius - (distance - rack.TipHeight)) * Math.Tan(rack.PressureAngle);

    /// <inheritdoc/>
    public override Corner At(double parameter) => new(_tip, parameter, (parameter - _atPitchPoint) / _radius);

    /// <inheritdoc/>
    public override double RateAt(double parameter) => double.Hypot(_tip - _radius, parameter) / _radius;

    /// <inheritdoc/>
    public override double Reach(double limit) => Math.Sqrt((limit * limit) - (_tip * _tip));
}
