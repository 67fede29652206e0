using GearBlanks.Teeth;
using GearBlanks.Verbs;
using Spectre.Console;

namespace GearBlanks.Cli.Output;

/// <summary>One pair for people.</summary>
internal static class MeshText
{
    public static void Write(Terminal console, MeshResult result)
    {
        FindingText.WriteSummary(console, "mesh", result.Findings);
        console.Say(MeshFigures.Of("gear 1", "gear 2", ("", result.Pair)));
        foreach (Table sizes in GearText.Sizes(
            [("gear 1", result.Pair.First, result.Pair.FirstWorkingRadius), (result.Pair.Second is RingGear ? "gear 2, ring" : "gear 2", result.Pair.Second, result.Pair.SecondWorkingRadius)]))
        {
            console.Say(sizes);
        }
    }
}
