using GearBlanks.Meshing;
using Spectre.Console;

namespace GearBlanks.Cli.Output;

/// <summary>Every figure of a mesh for people, its states side by side.</summary>
internal static class MeshFigures
{
    private const double DegreesInARadian = 180 / Math.PI;

    /// <summary>The table.</summary>
    /// <param name="first">What the first one is called.</param>
    /// <param name="second">What the second one is called.</param>
    /// <param name="states">The pair in each state; null where there is none.</param>
    public static Table Of(string first, string second, params ReadOnlySpan<(string Name, GearPair? Pair)> states)
    {
        GearPair?[] pairs = [.. states.ToArray().Select(state => state.Pair)];
        GearPair drawn = pairs.First(pair => pair is not null)!;
        Table table = Tables.Make("mesh", [.. states.ToArray().Select(state => state.Name)]);
        Add("centre distance, mm", 4, pair => pair.CentreDistance);
        Add("centre distance without backlash, mm", 4, pair => GearPair.ZeroBacklashDistance(pair.First, pair.Second));
        Add("working pressure angle, degrees", 4, pair => pair.WorkingPressureAngle * DegreesInARadian);
        Add("circumferential backlash, mm", 4, pair => pair.CircumferentialBacklash);
        Add("normal backlash, mm", 4, pair => pair.NormalBacklash);
        Add("radial backlash, mm", 4, pair => pair.RadialBacklash);
        Add($"angular backlash of {first}, degrees", 4, pair => pair.FirstAngularBacklash * DegreesInARadian);
        Add($"angular backlash of {second}, degrees", 4, pair => pair.SecondAngularBacklash * DegreesInARadian);
        Add("contact ratio", 4, pair => pair.ContactRatio);
        AddWords($"specific sliding of {first}, root and tip", pair => pair.ContactEnds is var (root, tip) ? Sliding(root.FirstSliding, tip.FirstSliding) : "none");
        AddWords($"specific sliding of {second}, root and tip", pair => pair.ContactEnds is var (root, tip) ? Sliding(tip.SecondSliding, root.SecondSliding) : "none");
        Add($"flank of {first} below contact, mm", 4, pair => pair.FirstFormMargin);
        Add($"flank of {second} below contact, mm", 4, pair => pair.SecondFormMargin);
        Add($"clearance of the tip of {first}, mm", 4, pair => pair.FirstTipClearance);
        Add($"clearance of the tip of {second}, mm", 4, pair => pair.SecondTipClearance);
        Add($"room at the fillet of {first}, mm", 4, pair => pair.FirstFilletClearance);
        Add($"room at the fillet of {second}, mm", 4, pair => pair.SecondFilletClearance);
        if (drawn is RingPair)
        {
            Add("room by involute interference, mm", 4, pair => ((RingPair)pair).InvoluteClearance);
            Add("room by trochoid interference, mm", 4, pair => ((RingPair)pair).TrochoidClearance);
            Add("room by trimming interference, mm", 4, pair => ((RingPair)pair).TrimmingClearance);
            Add("teeth of the least ring to put in radially", 0, pair => RadialAssembly.LeastRingTeeth((RingPair)pair));
        }

        Add($"turns of {first} until the same teeth meet", 0, pair => pair.HuntingTurns);
        return table;

        void Add(string name, int decimals, Func<GearPair, double?> figure) =>
            AddWords(name, pair => figure(pair) is { } value ? Tables.Figure(value, decimals) : "none");

        void AddWords(string name, Func<GearPair, string> words) =>
            table.AddRow([Markup.Escape(name), .. pairs.Select(pair => pair is null ? "-" : words(pair))]);
    }

    private static string Sliding(double atRoot, double atTip) => $"{Bounded(atRoot)}, {Bounded(atTip)}";

    private static string Bounded(double sliding) => double.IsInfinity(sliding) ? "without bound" : Tables.Figure(sliding, 3);
}
