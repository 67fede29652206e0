using GearBlanks.Findings;
using GearBlanks.Teeth;

namespace GearBlanks.Meshing;

/// <summary>Every figure of a pair that is held against a limit, without words: what is checked, and what a change must not worsen.</summary>
internal static class PairFigures
{
    private const string RingSource = "Stock Drive Products / Sterling Instrument, Elements of Metric Gear Technology, D785/D805, 5.2 (from memory); below 0 by definition";

    private static readonly Limit TrochoidLimit = new(0, null, null, null, RingSource);
    private static readonly Limit TrimmingLimit = new(null, 0, null, null, RingSource);

    /// <summary>The figures of the mesh, in the order of its findings.</summary>
    public static IEnumerable<PairFigure> OfMesh(GearPair pair, Limits limits)
    {
        double m = pair.First.Module;
        Limit tip = limits.TipClearance.Times(m);
        Limit fillet = limits.FilletClearance.Times(m);
        yield return new PairFigure("backlash", 0, pair.CircumferentialBacklash, limits.Backlash.Times(m), "mm");
        yield return new PairFigure("contact-ratio", 0, pair.ContactRatio, limits.ContactRatio, "");
        yield return new PairFigure("tip-clearance", 1, pair.FirstTipClearance, tip, "mm");
        yield return new PairFigure("tip-clearance", 2, pair.SecondTipClearance, tip, "mm");
        if (pair.FirstFilletClearance is { } first)
        {
            yield return new PairFigure("fillet-clearance", 1, first, fillet, "mm");
        }

        if (pair.SecondFilletClearance is { } second)
        {
            yield return new PairFigure("fillet-clearance", 2, second, fillet, "mm");
        }

        if (pair is RingPair ring)
        {
            foreach (PairFigure figure in OfRing(ring))
            {
                yield return figure;
            }
        }
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

    private static IEnumerable<PairFigure> OfRing(RingPair pair)
    {
        yield return new PairFigure("involute-interference", 0, pair.InvoluteClearance, InvoluteLimit(pair), "mm");
        if (pair.TrochoidClearance is { } trochoid)
        {
            yield return new PairFigure("trochoid-interference", 0, trochoid, TrochoidLimit, "mm");
        }

        if (pair.TrimmingClearance is { } trimming)
        {
            yield return new PairFigure("trimming-interference", 0, trimming, TrimmingLimit, "mm");
        }
    }

    // An undercut may let the tip pass where there is no involute to touch.
    private static Limit InvoluteLimit(RingPair pair)
    {
        bool digsIn = pair.InvoluteClearance < 0 && (pair.First is RingGear ? pair.SecondFilletClearance : pair.FirstFilletClearance) < 0;
        return new Limit(digsIn ? 0 : null, 0, null, null, RingSource);
    }
}
