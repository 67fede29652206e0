using System.Globalization;
using GearBlanks.Findings;
using GearBlanks.Teeth;

namespace GearBlanks.Meshing;

/// <summary>What to change in a pair, worked out so that doing it is enough.</summary>
internal static class PairAdvice
{
    /// <summary>For a backlash, mm: the distance or the first one's profile shift.</summary>
    public static string Backlash(GearPair pair, string firstName, double wanted)
    {
        double shift = (pair.CircumferentialBacklash - wanted)
            / (2 * pair.First.Module * Math.Tan(pair.First.PressureAngle) * pair.Layout.BacklashOfThinning(pair.CentreDistance));
        string? byShift = pair.First.Data.ProfileShift + shift is >= GearRanges.LeastShift and <= GearRanges.GreatestShift
            ? $"shift {firstName} by {shift.ToString("+0.000;-0.000;0", CultureInfo.InvariantCulture)}"
            : null;
        return DistanceFor(pair, wanted) is { } distance
            ? $"For {Words.Mm(wanted)} of backlash {Move(pair, distance)}{(byShift is null ? "" : ", or " + byShift)}."
            : $"No distance gives {Words.Mm(wanted)} of backlash: {byShift ?? $"thin the teeth {(pair.CircumferentialBacklash > wanted ? "less" : "more")}"}.";
    }

    /// <summary>For a contact ratio: the distance where that is enough.</summary>
    public static string ContactRatio(GearPair pair, double wanted, double bound)
    {
        const string otherwise = "use more teeth, longer tips or a smaller sum of profile shifts";
        if (DistanceFor(pair, wanted) is not { } distance)
        {
            return pair.Layout.Sense > 0 ? $"Thin the teeth less, or {otherwise}." : $"Thin the teeth more, or {otherwise}.";
        }

        double best = GearPair.At(pair.First, pair.Second, distance).ContactRatio;
        string move = Move(pair, distance);
        return pair.Layout.Sense * (pair.CentreDistance - distance) > 0 && best >= bound
            ? $"{char.ToUpperInvariant(move[0])}{move[1..]}: the contact ratio becomes {Words.Figure(best, "")}."
            : $"At the distance for {Words.Mm(wanted)} of backlash it is {Words.Figure(best, "")}: {otherwise}.";
    }

    /// <summary>For room at the fillet of one, mm: the mate's tip where a shorter one is enough.</summary>
    public static string FilletClearance(GearPair pair, Toothing one, Toothing mate, string name, string mateName, double room)
    {
        string shift = one is ExternalGear ? $"raise the profile shift of {name}" : $"lower the profile shift of {name}";
        string apart = pair switch
        {
            RingPair => "close the centre distance",
            RackPair => "raise the gear",
            _ => "open the centre distance",
        };
        return TipChange.To(mate, mateName, other => (GearPair.At(one, other, pair.CentreDistance).FirstFilletClearance ?? one.Module) - room) is { } tip
            ? $"{tip}, or {shift}."
            : $"{char.ToUpperInvariant(shift[0])}{shift[1..]}, or {apart}.";
    }

    /// <summary>The distance changed to another, mm.</summary>
    public static string Move(GearPair pair, double distance)
    {
        bool further = distance > pair.CentreDistance;
        string by = Words.Mm(Math.Abs(distance - pair.CentreDistance));
        return pair is RackPair ? $"{(further ? "raise" : "lower")} the gear by {by}" : $"{(further ? "open" : "close")} the centre distance by {by}";
    }

    // Null where no distance has this backlash.
    private static double? DistanceFor(GearPair pair, double backlash)
    {
        try
        {
            return pair.RadialBacklash is null ? null : pair.Layout.DistanceFor(backlash);
        }
        catch (GearGeometryException)
        {
            return null;
        }
    }
}
