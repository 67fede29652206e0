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
        var byName = new Dictionary<string, Entries>(StringComparer.Ordinal);
        foreach (var axis in axes)
        {
            byName.TryAdd(axis.Text("name") ?? "", axis);
        }

        var done = new HashSet<Entries>();
        foreach (var start in axes)
        {
            var chain = new List<Entries>();
            var onChain = new HashSet<Entries>();
            Entries? axis = start;
            while (axis is not null && !done.Contains(axis) && onChain.Add(axis))
            {
                chain.Add(axis);
                axis = byName.GetValueOrDefault(axis.Text("from") ?? "");
            }

            if (axis is not null && onChain.Contains(axis))
            {
                Tell(chain[chain.IndexOf(axis)..], problems);
            }

            done.UnionWith(chain);
        }
    }

    // Told once, at the axis that stands first in the file.
    private static void Tell(List<Entries> cycle, ProblemList problems)
    {
        var first = cycle.MinBy(a => (a.Place.Line, a.Place.Column))!;
        var at = cycle.IndexOf(first);
        var names = cycle[at..].Concat(cycle[..at]).Append(first).Select(a => $"\"{a.Text("name")}\"");
        first.Refuse(
            problems, "from", $"These axes are placed from one another in a circle: {ProblemList.Shown(string.Join(" from ", names))}",
            "a position for one of them at least");
    }
}
