using GearBlanks.Teeth;

namespace GearBlanks.Meshing;

/// <summary>
/// A gear over a rack, the distance being the height of its centre over the rack's reference line: it rolls with its reference circle at the rack's own
/// pressure angle, and j = 2 tan alpha (a - d/2 - (xE1 + xE2) m).
/// </summary>
internal sealed record RackLayout : PairLayout
{
    private readonly double _closedDistance;

    public RackLayout(GearData gear, RackBarData rack)
        : base(gear.Module, gear.Rack.PressureAngle, PitchOf(gear), gear.GeneratingShift + rack.GeneratingShift) =>
        _closedDistance = (gear.ReferenceDiameter / 2) + (ShiftSum * Module);

    /// <inheritdoc/>
    public override int Sense => 1;

    /// <inheritdoc/>
    public override double LeastDistance => 0;

    /// <inheritdoc/>
    public override double? ClosedDistance => _closedDistance;

    /// <inheritdoc/>
    public override double WorkingAngleAt(double distance) => PressureAngle;

    /// <inheritdoc/>
    public override double BacklashAt(double distance) => 2 * Math.Tan(PressureAngle) * (distance - _closedDistance);

    /// <inheritdoc/>
    public override double DistanceFor(double backlash)
    {
        double distance = _closedDistance + (backlash / (2 * Math.Tan(PressureAngle)));
        return double.IsFinite(distance) && backlash >= 0
            ? distance
            : throw new GearGeometryException(
                "backlash-out-of-reach", "No height over the rack gives this backlash; backlash, mm", backlash, 0, "use a backlash of at least 0");
    }

    /// <inheritdoc/>
    public override double BacklashOfThinning(double distance) => 1;

    protected override GearGeometryException NoLineOfAction(double distance) => new(
        "no-line-of-action", "The gear's centre does not lie over the rack's reference line; height of the centre, mm", distance, 0,
        FormattableString.Invariant($"without backlash this gear meshes at {_closedDistance:0.###} mm"));
}
