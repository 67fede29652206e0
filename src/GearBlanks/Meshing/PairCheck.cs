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
        var least = new Lazy<LeastRemedy>(() => new LeastRemedy(pair, firstName, secondName, limits, wantedBacklash));
        return PairFigures.OfMesh(pair, limits).Select(figure => Check.Of(
            figure.Name, place, figure.Value, figure.Limit, figure.Unit, What(figure, pair, firstName, secondName),
            bound => $"{Advice(figure, pair, firstName, secondName, aim, bound)} {least.Value.Sentence(figure)}"));
    }

    private static string What(PairFigure figure, GearPair pair, string firstName, string secondName)
    {
        (string name, string mate) = figure.Side == 2 ? (secondName, firstName) : (firstName, secondName);
        return figure.Name switch
        {
            "backlash" => "Circumferential backlash at the working circle",
            "contact-ratio" => "Contact ratio",
            "tip-clearance" => $"Clearance of the tip of {name} from the root of {mate}",
            "fillet-clearance" => $"Room between the tip corner of {mate} and the fillet of {name}",
            _ => RingAdvice.What(figure.Name, (RingPair)pair, firstName, secondName),
        };
    }

    private static string Advice(PairFigure figure, GearPair pair, string firstName, string secondName, double aim, double bound)
    {
        (Toothing one, Toothing mate) = figure.Side == 2 ? (pair.Second, pair.First) : (pair.First, pair.Second);
        (string name, string mateName) = figure.Side == 2 ? (secondName, firstName) : (firstName, secondName);
        return figure.Name switch
        {
            "backlash" => PairAdvice.Backlash(pair, firstName, aim),
            "contact-ratio" => PairAdvice.ContactRatio(pair, aim, bound),
            "tip-clearance" => TipChange.By(one, name, bound - figure.Value),
            "fillet-clearance" => PairAdvice.FilletClearance(pair, one, mate, name, mateName, bound),
            _ => RingAdvice.Of(figure.Name, (RingPair)pair, firstName, secondName),
        };
    }
}
