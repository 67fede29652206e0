using GearBlanks.Files.Keys;
using GearBlanks.Findings;
using GearBlanks.Mechanisms;

namespace GearBlanks.Verbs;

/// <summary>Explains a finding.</summary>
public static class ExplainVerb
{
    /// <summary>Runs the verb.</summary>
    /// <param name="finding">The finding's name.</param>
    public static Outcome<Explanation> Run(string finding) => Explanations.All.TryGetValue(finding, out Explanation? explanation)
        ? explanation
        : CommandLine.Problem("FINDING", finding, "There is no finding of this name", "one of " + string.Join(", ", Explanations.All.Keys), Nearest.To(finding, Explanations.All.Keys));
}
