using GearBlanks.Findings;
using GearBlanks.Teeth;

namespace GearBlanks.Meshing;

/// <summary>What there is to say of one pair at its distance.</summary>
public static class PairCheck
{
    /// <summary>The findings on a pair.</summary>
    /// <param name="pair">The pair.</param>
    /// <param name="firstName">The first one's name, for the sentences.</param>
    /// <param name="secondName">The second one's name.</param>
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
            "Circumferential backlash at the working circle", _ => PairAdvice.Backlash(pair, firstName, aim));
        yield return Check.Of(
            "contact-ratio", place, pair.ContactRatio, limits.ContactRatio, "",
            "Contact ratio", bound => PairAdvice.ContactRatio(pair, aim, bound));
        yield return TipClearance(pair.First, firstName, secondName, pair.FirstTipClearance, place, limits);
        yield return TipClearance(pair.Second, secondName, firstName, pair.SecondTipClearance, place, limits);
        if (pair.FirstFilletClearance is { } first)
        {
            yield return FilletClearance(pair, pair.First, pair.Second, firstName, secondName, first, place, limits);
        }

        if (pair.SecondFilletClearance is { } second)
        {
            yield return FilletClearance(pair, pair.Second, pair.First, secondName, firstName, second, place, limits);
        }

        if (pair is RingPair ring)
        {
            foreach (Finding finding in RingCheck.Of(ring, firstName, secondName, place))
            {
                yield return finding;
            }
        }
    }

    private static Finding TipClearance(Toothing one, string name, string mate, double clearance, string place, Limits limits) =>
        Check.Of(
            "tip-clearance", place, clearance, limits.TipClearance.Times(one.Module), "mm", $"Clearance of the tip of {name} from the root of {mate}",
            bound => TipChange.By(one, name, bound - clearance));

    private static Finding FilletClearance(
        GearPair pair, Toothing one, Toothing mate, string name, string mateName, double clearance, string place, Limits limits) =>
        Check.Of(
            "fillet-clearance", place, clearance, limits.FilletClearance.Times(one.Module), "mm",
            $"Room between the tip corner of {mateName} and the fillet of {name}",
            bound => PairAdvice.FilletClearance(pair, one, mate, name, mateName, bound));
}
