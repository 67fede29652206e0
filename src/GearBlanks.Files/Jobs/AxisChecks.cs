using GearBlanks.Files.Keys;
using GearBlanks.Files.Toml;

namespace GearBlanks.Files.Jobs;

/// <summary>What must hold between axes: each has one place, and no chain of them bites its tail.</summary>
internal static class AxisChecks
{
    private const string Ways = "either position, or from with distance and direction";

    private static readonly string[] Relative = ["from", "distance", "direction"];

    public static void Check(IReadOnlyList<Entries> axes, NamedItems names, ProblemList problems)
    {
        foreach (var axis in axes)
        {
            CheckPlace(axis, problems);
            names.Check(axis, "from");
        }

        CheckCycles(axes, problems);
    }

    private static void CheckPlace(Entries axis, ProblemList problems)
    {
        var given = Relative.Where(axis.Has).ToList();
        if (axis.Has("position"))
        {
            if (given.Count > 0)
            {
                axis.Refuse(problems, given[0], "The axis has a position already", Ways);
            }
        }
        else if (given.Count == 0)
        {
            axis.Refuse(problems, "position", "The place of this axis is missing", Ways);
        }
        else
        {
            foreach (var missing in Relative.Except(given))
            {
                axis.Refuse(problems, missing, $"The key \"{missing}\" is missing", Ways);
            }
        }
    }

    private static void CheckCycles(IReadOnlyList<Entries> axes, ProblemList problems)
    {
        var byName = Chains.ByName(axes);
        foreach (var circle in Chains.Circles(axes, axis => byName.GetValueOrDefault(axis.Text("from") ?? "")))
        {
            var names = circle.Append(circle[0]).Select(a => $"\"{a.Text("name")}\"");
            circle[0].Refuse(
                problems, "from", $"These axes are placed from one another in a circle: {ProblemList.Shown(string.Join(" from ", names))}",
                "a position for one of them at least");
        }
    }
}
