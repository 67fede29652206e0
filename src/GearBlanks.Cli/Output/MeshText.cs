using GearBlanks.Meshing;
using GearBlanks.Teeth;
using GearBlanks.Verbs;
using Spectre.Console;

namespace GearBlanks.Cli.Output;

/// <summary>One pair for people.</summary>
internal static class MeshText
{
    private const double DegreesInARadian = 180 / Math.PI;

    public static void Write(Terminal console, MeshResult result)
    {
        GearPair pair = result.Pair;
        FindingText.WriteSummary(console, "mesh", result.Findings);
        Table table = Tables.Make("mesh", "");
        Add("centre distance, mm", pair.CentreDistance, 4);
        Add("centre distance without backlash, mm", GearPair.ZeroBacklashDistance(pair.First, pair.Second), 4);
        Add("working pressure angle, degrees", pair.WorkingPressureAngle * DegreesInARadian, 4);
        Add("circumferential backlash, mm", pair.CircumferentialBacklash, 4);
        Add("normal backlash, mm", pair.NormalBacklash, 4);
        Add("radial backlash, mm", pair.RadialBacklash, 4);
        Add("angular backlash of gear 1, degrees", pair.FirstAngularBacklash * DegreesInARadian, 4);
        Add("angular backlash of gear 2, degrees", pair.SecondAngularBacklash * DegreesInARadian, 4);
        Add("contact ratio", pair.ContactRatio, 4);
        if (pair.ContactEnds is var (atRoot, atTip))
        {
            AddSliding("gear 1", atRoot.FirstSliding, atTip.FirstSliding);
            AddSliding("gear 2", atTip.SecondSliding, atRoot.SecondSliding);
        }

        Add("turns of gear 1 until the same teeth meet", pair.HuntingTurns, 0);
        Add("clearance of tip 1 from root 2, mm", pair.FirstTipClearance, 4);
        Add("clearance of tip 2 from root 1, mm", pair.SecondTipClearance, 4);
        console.Say(table);
        foreach (Table sizes in GearText.Sizes([("gear 1", pair.First, pair.FirstWorkingRadius), (pair.Second is RingGear ? "gear 2, ring" : "gear 2", pair.Second, pair.SecondWorkingRadius)]))
        {
            console.Say(sizes);
        }

        void AddSliding(string gear, double atRoot, double atTip)
        {
            string root = double.IsInfinity(atRoot) ? "without bound" : Tables.Figure(atRoot, 3);
            table.AddRow($"specific sliding of {gear}, root and tip", $"{root}, {(double.IsInfinity(atTip) ? "without bound" : Tables.Figure(atTip, 3))}");
        }

        void Add(string name, double? figure, int decimals) =>
            table.AddRow(name, figure is { } value ? Tables.Figure(value, decimals) : "none");
    }
}
