using GearBlanks.Findings;
using GearBlanks.Verbs;

namespace GearBlanks.Cli.Output;

/// <summary>What <c>cut</c> wrote, for people.</summary>
internal static class CutText
{
    public static void Write(Terminal console, CutResult result)
    {
        FindingText.WriteSummary(console, result.Report.Mechanism.Title, result.Report.Findings);
        console.Say($"Wrote {result.Files.Length} files to {result.Folder}.");
        WriteKerf(console, result.Gears);
        foreach (string remark in result.Remarks)
        {
            console.Say($"  {remark}");
        }

        WriteCautions(console, result.Cautions);
        if (result.Report.Verdict == Level.Fails)
        {
            console.Warn("A check fails: the files say so. Read what to change above before anything is cut.");
        }
    }

    /// <summary>Whether the outlines carry the cut's width: once where it is the same for all.</summary>
    public static void WriteKerf(Terminal console, IReadOnlyList<WrittenGear> gears)
    {
        string[] all = [.. gears.Select(gear => gear.Kerf.Words).Distinct()];
        foreach (string line in all.Length == 1 ? [$"Outlines are {all[0]}."] : gears.Select(gear => $"  {gear.Name}: {gear.Kerf.Words}"))
        {
            console.Say(line);
        }
    }

    public static void WriteCautions(Terminal console, IEnumerable<string> cautions)
    {
        foreach (string caution in cautions)
        {
            console.Warn($"Caution: {caution}");
        }
    }
}
