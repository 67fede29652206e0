using GearBlanks.Findings;
using GearBlanks.Verbs;

namespace GearBlanks.Cli.Output;

/// <summary>What <c>cut</c> wrote, for people.</summary>
internal static class CutText
{
    public static void Write(Terminal console, CutResult result)
    {
        FindingText.WriteSummary(console, result.Report.Mechanism.Title, result.Report.Findings);
        console.Say($"Wrote {result.Files.Length} files to {result.Folder}. Outlines are nominal: kerf is not compensated.");
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

    public static void WriteCautions(Terminal console, IEnumerable<string> cautions)
    {
        foreach (string caution in cautions)
        {
            console.Warn($"Caution: {caution}");
        }
    }
}
