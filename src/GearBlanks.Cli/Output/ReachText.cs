using GearBlanks.Mechanisms.Reach;
using GearBlanks.Verbs;
using Spectre.Console;

namespace GearBlanks.Cli.Output;

/// <summary>What a tool reaches, for people.</summary>
internal static class ReachText
{
    public static void Write(Terminal console, ReachResult result)
    {
        FindingText.WriteSummary(console, result.Title ?? "gear", result.Findings);
        Table table = Tables.Make("mm", "tool", "touches the root", "follows the fillet", "runs free", "uncut depth", "uncut area, mm2");
        foreach (GearReach gear in result.Gears)
        {
            table.AddRow(
                Markup.Escape(gear.Name), Tables.Figure(gear.Tool, 3), Tables.Figure(gear.Largest.RootTouching, 3), Tables.Figure(gear.Largest.WholeFillet, 3),
                gear.Largest.RunningFree is { } free ? Tables.Figure(free, 3) : "not known", Tables.Figure(gear.UncutDepth, 4), Tables.Figure(gear.UncutArea, 4));
        }

        console.Say(table);
        foreach (GearReach gear in result.Gears.Where(gear => gear.Largest.WhyNot is not null))
        {
            console.Say($"  {gear.Name}: no largest tool that runs free, because {gear.Largest.WhyNot}.");
        }

        if (result.Files.Length > 0)
        {
            console.Say($"Wrote {string.Join(", ", result.Files)}.");
        }

        CutText.WriteCautions(console, result.Cautions);
    }
}
