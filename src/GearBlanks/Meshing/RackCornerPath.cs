using GearBlanks.Teeth;

namespace GearBlanks.Meshing;

/// <summary>A rack's tip corner past the gear over it; the parameter is its distance along the rack from the line through the gear's centre, mm.</summary>
internal sealed class RackCornerPath(ExternalGear gear, RackBar rack, double distance) : CornerPath
{
    private readonly double _tip = distance - rack.TipHeight;
    private readonly double _radius = gear.ReferenceRadius;
    private readonly double _atPitchPoint = -(gear.ReferenceRadius - (distance - rack.TipHeight)) * Math.Tan(rack.PressureAngle);

    /// <inheritdoc/>
    public override Corner At(double parameter) => new(_tip, parameter, (parameter - _atPitchPoint) / _radius);

    /// <inheritdoc/>
    public override double Reach(double limit) => Math.Sqrt((limit * limit) - (_tip * _tip));
}
