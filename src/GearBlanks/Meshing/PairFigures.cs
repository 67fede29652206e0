using GearBlanks.Findings;
using GearBlanks.Teeth;

namespace GearBlanks.Meshing;

/// <summary>Every figure of a pair that is held against a limit, without words: what is checked, and what a change must not worsen.</summary>
internal static class PairFigures
{
    private const string RingSource = "Stock Drive Products / Sterling Instrument, Elements of Metric Gear Technology, D785/D805, 5.2 (from memory); below 0 by definition";

    private static readonly Limit TrochoidLimit = new(0, null, null, null, RingSource);
    private static readonly Limit TrimmingLimit = new(null, 0, null, null, RingSource);

    private static readonly (string Name, int Side)[] Mesh =
    [
        ("backlash", 0), ("contact-ratio", 0), ("tip-clearance", 1), ("tip-clearance", 2), ("fillet-clearance", 1), ("fillet-clearance", 2),
        ("involute-interference", 0), ("trochoid-interference", 0), ("trimming-interference", 0),
    ];

    /// <summary>The figures of the mesh, in the order of its findings.</summary>
    public static IEnumerable<PairFigure> OfMesh(GearPair pair, Limits limits) =>
        Mesh.Select(one => One(pair, one.Name, one.Side, limits)).Where(figure => figure is not null).Select(figure => figure!.Value);

    /// <summary>One figure of the mesh, by its name and side; null where the pair has none.</summary>
    public static PairFigure? One(GearPair pair, string name, int side, Limits limits)
    {
        double m = pair.First.Module;
        (double? value, Limit limit) = name switch
        {
            "backlash" => (pair.CircumferentialBacklash, limits.Backlash.Times(m)),
            "contact-ratio" => (pair.ContactRatio, limits.ContactRatio),
            "tip-clearance" => (side == 1 ? pair.FirstTipClearance : pair.SecondTipClearance, limits.TipClearance.Times(m)),
            "fillet-clearance" => (side == 1 ? pair.FirstFilletClearance : pair.SecondFilletClearance, limits.FilletClearance.Times(m)),
            "involute-interference" => pair is RingPair ring ? (ring.InvoluteClearance, InvoluteLimit(ring)) : ((double?)null, TrochoidLimit),
            "trochoid-interference" => ((pair as RingPair)?.TrochoidClearance, TrochoidLimit),
            _ => ((pair as RingPair)?.TrimmingClearance, TrimmingLimit),
        };
        return value is { } figure ? new PairFigure(name, side, figure, limit, name == "contact-ratio" ? "" : "mm") : null;
    }

    /// <summary>The figures of the teeth that a change of the pair may worsen: undercut and tips.</summary>
    public static IEnumerable<PairFigure> OfTeeth(GearPair pair, Limits limits) => OfTeeth(pair.First, 1, limits).Concat(OfTeeth(pair.Second, 2, limits));

    /// <summary>The figures of one gear, ring or rack.</summary>
    public static IEnumerable<PairFigure> OfTeeth(Toothing teeth, int side, Limits limits)
    {
        if (teeth is ExternalGear gear)
        {
            yield return new PairFigure("undercut-depth", side, gear.Undercut?.Depth ?? 0, limits.UndercutDepth.Times(gear.Module), "mm");
        }

        // A pointed tip is thinner than any land.
        yield return new PairFigure(
            "tip-thickness", side, teeth.IsPointed ? -1 : teeth.TipThickness,
            limits.TipThickness.Times(teeth.Module) with { FailsBelow = Math.Max(0, limits.TipThickness.FailsBelow * teeth.Module ?? 0) }, "mm");
    }

    // An undercut may let the tip pass where there is no involute to touch.
    private static Limit InvoluteLimit(RingPair pair)
    {
        bool digsIn = pair.InvoluteClearance < 0 && (pair.First is RingGear ? pair.SecondFilletClearance : pair.FirstFilletClearance) < 0;
        return new Limit(digsIn ? 0 : null, 0, null, null, RingSource);
    }
}
