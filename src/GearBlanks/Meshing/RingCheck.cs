using GearBlanks.Findings;
using GearBlanks.Teeth;

namespace GearBlanks.Meshing;

/// <summary>What there is to say of a pinion in a ring besides: the three interferences that only a ring knows.</summary>
internal static class RingCheck
{
    private const string Source = "Stock Drive Products / Sterling Instrument, Elements of Metric Gear Technology, D785/D805, 5.2 (from memory); below 0 by definition";

    private static readonly Limit TrochoidLimit = new(0, null, null, null, Source);
    private static readonly Limit TrimmingLimit = new(null, 0, null, null, Source);

    public static IEnumerable<Finding> Of(RingPair pair, string firstName, string secondName, string place)
    {
        (string pinion, string ring) = pair.First is RingGear ? (secondName, firstName) : (firstName, secondName);
        yield return Check.Of(
            "involute-interference", place, pair.InvoluteClearance, InvoluteLimit(pair), "mm",
            $"Way on the line of action from the base circle of {pinion} to the first contact with {ring}", _ => InvoluteAdvice(pair, pinion, ring));
        if (pair.TrochoidClearance is { } trochoid)
        {
            yield return Check.Of(
                "trochoid-interference", place, trochoid, TrochoidLimit, "mm",
                $"Room between the tip corners of {pinion} and {ring} where their tip circles cross", _ => TrochoidAdvice(pair, pinion, ring));
        }

        if (pair.TrimmingClearance is { } trimming)
        {
            yield return Check.Of(
                "trimming-interference", place, trimming, TrimmingLimit, "mm",
                $"Room for the tips of {pinion} to pass those of {ring} where it moves in along the line of centres",
                _ => $"Put {pinion} into {ring} along the axis: on the way in along the line of centres its tips may catch.");
        }
    }

    // An undercut may let the tip pass where there is no involute to touch.
    private static Limit InvoluteLimit(RingPair pair)
    {
        double? fillet = pair.First is RingGear ? pair.SecondFilletClearance : pair.FirstFilletClearance;
        return new Limit(fillet < 0 ? 0 : null, 0, null, null, Source);
    }

    private static string InvoluteAdvice(RingPair pair, string pinion, string ring) =>
        (TipChange.To(pair.Ring, ring, other => At(pair, pair.Pinion, other).InvoluteClearance) is { } tip ? $"{tip}, or use" : "Use")
        + $" more teeth or a greater profile shift for {pinion}.";

    private static string TrochoidAdvice(RingPair pair, string pinion, string ring)
    {
        string[] tips =
        [
            .. ((string?[])[
                TipChange.To(pair.Ring, ring, other => At(pair, pair.Pinion, other).TrochoidClearance ?? pair.Ring.Module),
                TipChange.To(pair.Pinion, pinion, other => At(pair, other, pair.Ring).TrochoidClearance ?? pair.Ring.Module),
            ]).OfType<string>(),
            $"Use a ring with more teeth, or fewer teeth for {pinion}",
        ];
        return string.Join(", or ", tips.Select((tip, i) => i == 0 ? tip : char.ToLowerInvariant(tip[0]) + tip[1..])) + ".";
    }

    private static RingPair At(RingPair pair, Toothing pinion, Toothing ring) => (RingPair)GearPair.At(pinion, ring, pair.CentreDistance);
}
