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
        foreach (Table sizes in Sizes([("gear", result.Gear, null)]))
        {
            console.Say(sizes);
        }

        console.Say(result.IsPicture
            ? $"Wrote {result.File}, a picture to look at, not to cut by."
            : $"Wrote {result.File}. The outline is {result.Written.Kerf.Words}.");
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

    /// <summary>The sizes of gears side by side; a rack among them has heights instead of diameters, and its own table.</summary>
    public static IEnumerable<Table> Sizes(IReadOnlyList<(string Name, Toothing Teeth, double? WorkingRadius)> items)
    {
        (string Name, Gear Gear, double? WorkingRadius)[] gears = [.. items.Where(item => item.Teeth is Gear).Select(item => (item.Name, (Gear)item.Teeth, item.WorkingRadius))];
        if (gears.Length > 0)
        {
            yield return Diameters(gears);
        }

        foreach ((string name, RackBar rack) in items.Where(item => item.Teeth is RackBar).Select(item => (item.Name, (RackBar)item.Teeth)))
        {
            yield return Heights(name, rack);
        }
    }

    private static Table Diameters((string Name, Gear Gear, double? WorkingRadius)[] gears)
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

        void Add(string name, Func<(string Name, Gear Gear, double? WorkingRadius), double> figure) =>
            table.AddRow([name, .. gears.Select(gear => Tables.Figure(figure(gear), 4))]);
    }

    private static Table Heights(string name, RackBar rack)
    {
        Table table = Tables.Make("mm", name);
        foreach ((string what, double figure) in (IEnumerable<(string, double)>)
            [
                ("length", rack.Length), ("pitch", rack.Pitch), ("tips over the reference line", rack.TipHeight), ("root under it", -rack.RootHeight),
                ("back under it", rack.Data.BackHeight), ("tooth thickness (reference line)", rack.ToothThickness), ("tooth thickness at the tip", rack.TipThickness),
            ])
        {
            table.AddRow(what, Tables.Figure(figure, 4));
        }

        return table;
    }
}
