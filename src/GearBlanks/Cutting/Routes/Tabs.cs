using GearBlanks.Findings;
using GearBlanks.Teeth;

namespace GearBlanks.Cutting.Routes;

/// <summary>What holds a part in its sheet: on the tips of a gear, round the rim of a ring, on every side of a rack.</summary>
internal static class Tabs
{
    // mm: common practice, no source. A narrower tab holds nothing, and a shorter cut between two tabs frees nothing.
    private const double Least = 0.2;

    // mm
    private const double Rounding = 1e-6;

    /// <summary>The tabs in the order of the contour; none where there is no room, and the remarks say so.</summary>
    public static List<Tab> Of(Loop loop, Lands? lands, RouteTask task)
    {
        RoutePlan plan = task.Plan;
        List<Tab> tabs = [.. Places(loop, lands, task).Select(place => Tab.In(loop, place, plan.TabWidth, task.AtTabs)).OrderBy(tab => tab.From)];
        double widest = tabs.Select(tab => tab.Width).DefaultIfEmpty(0).Max();
        tabs.RemoveAll(tab => tab.Width < Least);
        string where = lands is null ? "the rim" : task.Teeth is RackBar ? "the outline" : "a tip land";
        if (tabs.Count == 0)
        {
            task.Remarks.Add($"There are no tabs: {where} leaves {Words.Mm(Math.Max(0, widest))} for one, and less than {Words.Mm(Least)} holds nothing.");
            return tabs;
        }

        // The tool has to cut between two of them.
        for (int i = tabs.Count - 1; i > 0; i--)
        {
            if (tabs[i].From - tabs[i - 1].To < Least || (i == tabs.Count - 1 && tabs[0].From + loop.Length - tabs[i].To < Least))
            {
                tabs.RemoveAt(i);
            }
        }

        double narrowest = tabs.Min(tab => tab.ToldWidth);
        if (tabs.Any(IsNarrow))
        {
            string which = tabs.All(IsNarrow) ? "The" : "Some";
            task.Remarks.Add($"{which} tabs are {Words.Mm(narrowest)} wide: {(lands is null ? "the rim leaves" : "the tip lands leave")} no more.");
        }

        if (tabs.Count < plan.Tabs)
        {
            task.Remarks.Add($"There are {tabs.Count} tabs: {(task.Teeth is RackBar ? "there is no room for more" : "one a tooth")}.");
        }

        task.Tabs.AddRange(tabs.Select(tab => tab.ToldWidth));
        return tabs;

        bool IsNarrow(Tab tab) => tab.Width < plan.TabWidth - Rounding;
    }

    // Evenly round the rim, or over the tip lands.
    private static IEnumerable<TabPlace> Places(Loop loop, Lands? lands, RouteTask task)
    {
        int count = task.Plan.Tabs;
        if (lands is null)
        {
            return Enumerable.Range(0, count).Select(i => new TabPlace((i + 0.5) * loop.Length / count, Math.Max(0, (loop.Length / Math.Max(count, 2)) - Least) / 2));
        }

        List<Stretch> tips = lands.Tips;
        return task.Teeth is RackBar
            ? RackSides.Places(loop, tips, task.Plan, task.AtTabs, Least)
            : Enumerable.Range(0, Math.Min(count, tips.Count)).Select(i => InMiddle(loop, tips[i * tips.Count / Math.Min(count, tips.Count)]));
    }

    /// <summary>In the middle of a stretch.</summary>
    internal static TabPlace InMiddle(Loop loop, Stretch stretch)
    {
        (double start, double length) = loop.Of(stretch);
        return new TabPlace(start + (length / 2), length / 2);
    }
}
