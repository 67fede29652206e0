using GearBlanks.Teeth;

namespace GearBlanks.Meshing;

/// <summary>
/// A gear's tip corner past the right side of the rack under it, in a frame on whose Y axis the rack's flank crosses the rolling line; the parameter is the
/// corner's angle about the gear's centre from the line down to the rack, rad.
/// </summary>
internal sealed class OverRackCornerPath(ExternalGear gear, double distance, double workingAngle, Teeth.TipCorner? corner = null) : CornerPath
{
    private readonly double _tip = corner?.Radius ?? gear.TipRadius;

    private readonly double _atPitchPoint = corner is { } given
        ? gear.HalfAngleAt(gear.ReferenceRadius) - given.HalfAngle
        : InvoluteFunction.Inv(Math.Acos(gear.BaseRadius / gear.TipRadius)) - InvoluteFunction.Inv(workingAngle);

    /// <inheritdoc/>
    public override Corner At(double parameter)
    {
        (double sine, double cosine) = Math.SinCos(parameter);
        return new Corner(
            (_tip * sine) - (gear.ReferenceRadius * (parameter - _atPitchPoint)), distance - (_tip * cosine), 0);
    }

    /// <inheritdoc/>
    public override double RateAt(double parameter)
    {
        (double sine, double cosine) = Math.SinCos(parameter);
        return double.Hypot((_tip * cosine) - gear.ReferenceRadius, _tip * sine);
    }

    /// <inheritdoc/>
    public override double Reach(double limit) => Math.Acos((distance - limit) / _tip);
}
