using GearBlanks.Findings;
using GearBlanks.Teeth;
using GearBlanks.Verbs;
using Spectre.Console;

namespace GearBlanks.Cli.Output;

/// <summary>What <c>gear</c> drew, for people.</summary>
internal static class GearText
{
    public static void Write(Terminal console, GearResult result)
    {
        FindingText.WriteSummary(console, "gear", result.Findings);
        console.Say(Sizes([("gear", result.Gear, null)]));
        console.Say($"Wrote {result.File}. The outline is {result.Written.Kerf.Words}.");
        foreach (string remark in result.Remarks)
        {
            console.Say($"  {remark}");
        }

        CutText.WriteCautions(console, result.Cautions);
        if (result.Verdict == Level.Fails)
        {
            console.Warn("A check fails: the file says so.");
        }
    }

    public static Table Sizes(IReadOnlyList<(string Name, ExternalGear Gear, double? WorkingRadius)> gears)
    {
        Table table = Tables.Make("mm", [.. gears.Select(gear => gear.Name)]);
        Add("reference diameter", gear => 2 * gear.Gear.ReferenceRadius);
        Add("base diameter", gear => 2 * gear.Gear.BaseRadius);
        Add("tip diameter", gear => 2 * gear.Gear.TipRadius);
        Add("root diameter", gear => 2 * gear.Gear.RootRadius);
        Add("form diameter", gear => 2 * gear.Gear.FormRadius);
        if (gears.All(gear => gear.WorkingRadius is not null))
        {
            Add("working diameter", gear => 2 * gear.WorkingRadius!.Value);
        }

        Add("tooth thickness (reference circle)", gear => gear.Gear.ToothThickness);
        Add("tooth thickness at the tip", gear => gear.Gear.TipThickness);
        return table;

        void Add(string name, Func<(string Name, ExternalGear Gear, double? WorkingRadius), double> figure) =>
            table.AddRow([name, .. gears.Select(gear => Tables.Figure(figure(gear), 4))]);
    }
}
