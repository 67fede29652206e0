using GearBlanks.Teeth;

namespace GearBlanks.Meshing;

/// <summary>The words for the three interferences that only a ring knows, and what mends them.</summary>
internal static class RingAdvice
{
    /// <summary>What a figure is.</summary>
    public static string What(string name, RingPair pair, string firstName, string secondName)
    {
        (string pinion, string ring) = Names(pair, firstName, secondName);
        return name switch
        {
            "involute-interference" => $"Way on the line of action from the base circle of {pinion} to the first contact with {ring}",
            "trochoid-interference" => $"Room between the tip corners of {pinion} and {ring} where their tip circles cross",
            _ => $"Room for the tips of {pinion} to pass those of {ring} where it moves in along the line of centres",
        };
    }

    /// <summary>What to change.</summary>
    public static string Of(string name, RingPair pair, string firstName, string secondName)
    {
        (string pinion, string ring) = Names(pair, firstName, secondName);
        return name switch
        {
            "involute-interference" => Involute(pair, pinion, ring),
            "trochoid-interference" => Trochoid(pair, pinion, ring),
            _ => Trimming(pair, pinion, ring),
        };
    }

    private static (string Pinion, string Ring) Names(RingPair pair, string firstName, string secondName) =>
        pair.First is RingGear ? (secondName, firstName) : (firstName, secondName);

    private static string Involute(RingPair pair, string pinion, string ring) =>
        (TipChange.To(pair.Ring, ring, other => At(pair, pair.Pinion, other).InvoluteClearance) is { } tip ? $"{tip}, or use" : "Use")
        + $" more teeth or a greater profile shift for {pinion}.";

    private static string Trochoid(RingPair pair, string pinion, string ring)
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

    private static string Trimming(RingPair pair, string pinion, string ring) =>
        $"Put {pinion} into {ring} along the axis: on the way in along the line of centres its tips may catch."
        + (RadialAssembly.LeastRingTeeth(pair) is { } teeth ? FormattableString.Invariant($" With this pinion and backlash a ring of {teeth} teeth or more lets it in.") : "");

    private static RingPair At(RingPair pair, Toothing pinion, Toothing ring) => (RingPair)GearPair.At(pinion, ring, pair.CentreDistance);
}
