using System.Globalization;
using GearBlanks.Findings;
using GearBlanks.Teeth;
using MathNet.Numerics.RootFinding;

namespace GearBlanks.Meshing;

/// <summary>What there is to say of one pair at its distance.</summary>
public static class PairCheck
{
    /// <summary>The findings on a pair.</summary>
    /// <param name="pair">The pair.</param>
    /// <param name="firstName">The first gear's name, for the sentences.</param>
    /// <param name="secondName">The second gear's name.</param>
    /// <param name="place">What the mesh is called in findings.</param>
    /// <param name="limits">The limits.</param>
    /// <param name="wantedBacklash">Backlash that advice aims at, mm; where it is not comfortable itself, the limits' own.</param>
    public static IEnumerable<Finding> Of(
        GearPair pair, string firstName, string secondName, string place, Limits limits, double wantedBacklash)
    {
        double m = pair.First.Module;

        // Advice that leads to another finding is none.
        double aim = limits.Backlash.Times(m).Judge(wantedBacklash) is (Level.Ok, _) ? wantedBacklash : limits.WantedBacklash * m;
        yield return Check.Of(
            "backlash", place, pair.CircumferentialBacklash, limits.Backlash.Times(m), "mm",
            "Circumferential backlash at the working circle", _ => BacklashAdvice(pair, firstName, aim));
        yield return Check.Of(
            "contact-ratio", place, pair.ContactRatio, limits.ContactRatio, "",
            "Contact ratio", bound => ContactRatioAdvice(pair, aim, bound));
        yield return TipClearance(pair.First, firstName, secondName, pair.FirstTipClearance, place, limits);
        yield return TipClearance(pair.Second, secondName, firstName, pair.SecondTipClearance, place, limits);
        if (pair.FirstFilletClearance is { } first)
        {
            yield return FilletClearance(pair.First, pair.Second, pair.CentreDistance, firstName, secondName, first, place, limits);
        }

        if (pair.SecondFilletClearance is { } second)
        {
            yield return FilletClearance(pair.Second, pair.First, pair.CentreDistance, secondName, firstName, second, place, limits);
        }
    }

    /// <summary>What to change so that a pair has a backlash, mm: the distance or the first gear's profile shift, each worked out.</summary>
    internal static string BacklashAdvice(GearPair pair, string firstName, double wanted)
    {
        double shift = (pair.CircumferentialBacklash - wanted) * (pair.First.Teeth + pair.Second.Teeth)
            / (4 * pair.CentreDistance * Math.Tan(pair.First.PressureAngle));
        string? byShift = pair.First.Data.ProfileShift + shift is >= GearRanges.LeastShift and <= GearRanges.GreatestShift
            ? $"shift {firstName} by {shift.ToString("+0.000;-0.000;0", CultureInfo.InvariantCulture)}"
            : null;
        return DistanceFor(pair, wanted) is { } distance
            ? $"For {Words.Mm(wanted)} of backlash {(distance > pair.CentreDistance ? "open" : "close")} the centre distance by "
                + $"{Words.Mm(Math.Abs(distance - pair.CentreDistance))}{(byShift is null ? "" : ", or " + byShift)}."
            : $"No distance gives {Words.Mm(wanted)} of backlash: {byShift ?? "thin the teeth less"}.";
    }

    private static string ContactRatioAdvice(GearPair pair, double wanted, double bound)
    {
        const string otherwise = "use more teeth, longer tips or a smaller sum of profile shifts";
        if (DistanceFor(pair, wanted) is not { } distance)
        {
            return $"Thin the teeth less, or {otherwise}.";
        }

        double best = GearPair.At(pair.First, pair.Second, distance).ContactRatio;
        return distance < pair.CentreDistance && best >= bound
            ? $"Close the centre distance by {Words.Mm(pair.CentreDistance - distance)}: the contact ratio becomes {Words.Figure(best, "")}."
            : $"At the distance for {Words.Mm(wanted)} of backlash it is {Words.Figure(best, "")}: {otherwise}.";
    }

    // Null where the teeth are so thin that no distance closes the backlash.
    private static double? DistanceFor(GearPair pair, double backlash) =>
        pair.RadialBacklash is null ? null : GearPair.DistanceFor(pair.First, pair.Second, backlash);

    private static Finding TipClearance(
        ExternalGear gear, string name, string mate, double clearance, string place, Limits limits) =>
        Check.Of(
            "tip-clearance", place, clearance, limits.TipClearance.Times(gear.Module), "mm", $"Clearance of the tip of {name} from the root of {mate}",
            bound => $"Lower the tip diameter of {name} by {Words.Mm(Math.Ceiling(2 * (bound - clearance) * 1000) / 1000)}.");

    private static Finding FilletClearance(
        ExternalGear gear, ExternalGear mate, double distance, string name, string mateName, double clearance, string place, Limits limits) =>
        Check.Of(
            "fillet-clearance", place, clearance, limits.FilletClearance.Times(gear.Module), "mm", $"Room between the tip corner of {mateName} and the fillet of {name}",
            bound => FreeTipDiameter(gear, mate, distance, bound) is { } free
                ? $"Lower the tip diameter of {mateName} to {Words.Mm(free)}, or raise the profile shift of {name}."
                : $"Raise the profile shift of {name}, or open the centre distance.");

    // The greatest tip diameter of the mate that keeps the room, on the grid of hundredths; null where none does.
    private static double? FreeTipDiameter(ExternalGear gear, ExternalGear mate, double distance, double room)
    {
        double Room(double radius) =>
            (TipCornerPath.LeastRoom(gear, ExternalGear.Create(mate.Data with { TipDiameter = 2 * radius }), distance) ?? gear.Module) - room;
        double low = mate.FormRadius + ((mate.TipRadius - mate.FormRadius) / 100);
        return Room(low) > 0 && Brent.TryFindRoot(Room, low, mate.TipRadius, 1e-6, 100, out double radius)
            ? Math.Floor((radius * 2 * 100) - 1e-3) / 100
            : null;
    }
}
