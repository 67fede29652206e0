using GearBlanks.Blanks;
using GearBlanks.Blanks.Bores;
using GearBlanks.Teeth;

namespace GearBlanks.Mechanisms;

/// <summary>What is cut through a gear's face, from what the gear and the defaults say.</summary>
internal sealed record CutoutsPlan(JobGear Job, JobDefaults Defaults)
{
    // A gear with a bore of its own does not take the default's shape, whose sizes belong to the default's bore.
    public JobBoreShape? Shape => Job.BoreShape ?? (Job.Bore is null ? Defaults.BoreShape : null);

    private double Diameter => Job.Bore ?? Defaults.Bore ?? 0;

    /// <exception cref="GearGeometryException">The bore cannot exist.</exception>
    public Cutouts Cutouts()
    {
        Bore? bore = Bore();
        return new Cutouts
        {
            Bore = bore,
            Screws = Job.Screws is { } screws
                ? new ScrewCircle(screws.Count, screws.CircleDiameter, screws.HoleDiameter, screws.HeadDiameter, screws.StartAngle)
                : null,
            Holes = Job.Holes,
            Crossings = Job.Crossings is { } crossings ? Crossings(crossings, bore) : null,
        };
    }

    // A ring's middle is open, and a bar has none.
    private Bore? Bore() => Job.Ring is not null || Job.RackBar is not null ? null : Shape switch
    {
        null => Diameter > 0 ? new RoundBore(Diameter) : null,
        { Form: BoreForm.Hexagon } hexagon => new HexagonBore(hexagon.Across!.Value, hexagon.CornerRadius, hexagon.Angle),
        { Form: BoreForm.Keyway, KeyDepth: { } depth } key => new KeywayBore(Diameter, key.KeyWidth!.Value, depth, key.CornerRadius, key.Angle),
        { Form: BoreForm.Keyway } key => KeywayBore.OfAcross(Diameter, key.KeyWidth!.Value, key.Across!.Value, key.CornerRadius, key.Angle),
        { } flat => new FlattedBore(Diameter, flat.Form == BoreForm.D ? 1 : 2, flat.Across!.Value, flat.CornerRadius, flat.Angle),
    };

    private static Crossings Crossings(JobCrossings crossings, Bore? bore) => new(
        crossings.Arms,
        crossings.HubDiameter ?? (2 * ((bore?.OuterRadius ?? 0) + crossings.HubWidth!.Value)),
        crossings.RimWidth,
        crossings.ArmWidth,
        crossings.ArmWidthAtRim ?? crossings.ArmWidth,
        crossings.CornerRadius,
        crossings.StartAngle);
}
