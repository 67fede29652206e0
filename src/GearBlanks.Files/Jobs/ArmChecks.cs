using GearBlanks.Files.Keys;
using GearBlanks.Files.Toml;

namespace GearBlanks.Files.Jobs;

/// <summary>What must hold of arms: known sandwiches that turn, none of which carries its own axis, near or far.</summary>
internal sealed class ArmChecks
{
    private readonly ProblemList _problems;
    private readonly Dictionary<string, Entries> _axes;
    private readonly Dictionary<string, Entries> _sandwiches;

    private ArmChecks(Entries file, ProblemList problems)
    {
        _problems = problems;
        _axes = Chains.ByName(file.Tables("axes"));
        _sandwiches = Chains.ByName(file.Tables("sandwiches"));
    }

    public static void Check(Entries file, NamedItems sandwiches, ProblemList problems) =>
        new ArmChecks(file, problems).Check([.. file.Tables("axes")], [.. file.Tables("sandwiches")], sandwiches);

    private void Check(List<Entries> axes, List<Entries> sandwiches, NamedItems names)
    {
        foreach (var axis in axes.Where(axis => names.Check(axis, "carried-by")))
        {
            if (IsRack(Arm(axis)))
            {
                axis.Refuse(_problems, "carried-by", "This sandwich is a rack: it slides and carries no axis", "a sandwich that turns");
            }
        }

        if (CheckCircles(axes))
        {
            return;
        }

        foreach (var sandwich in sandwiches)
        {
            if (Arm(AxisOf(sandwich)) is { } arm)
            {
                CheckCarried(sandwich, arm);
            }
        }
    }

    // A sandwich whose axis a turning arm carries.
    private void CheckCarried(Entries sandwich, Entries arm)
    {
        if (IsRack(sandwich))
        {
            sandwich.Refuse(_problems, "axis", $"A rack slides along the frame, and this axis is carried by \"{arm.Text("name")}\"", "an axis that the frame carries");
        }

        if (sandwich.Flag("fixed") == true && arm.Flag("fixed") != true)
        {
            sandwich.Refuse(_problems, "fixed", $"The axis of this sandwich is carried by \"{arm.Text("name")}\", which turns: the frame cannot hold it", "fixed on an axis that the frame carries");
        }
    }

    // True where there is one.
    private bool CheckCircles(List<Entries> axes)
    {
        var circles = Chains.Circles(axes, axis => AxisOf(Arm(axis))).ToList();
        circles.ForEach(Tell);
        return circles.Count > 0;
    }

    private void Tell(IReadOnlyList<Entries> circle)
    {
        var first = circle[0];
        var way = circle.Select(axis => $"\"{axis.Text("name")}\" by \"{axis.Text("carried-by")}\"");
        first.Refuse(
            _problems, "carried-by",
            circle.Count == 1
                ? $"The sandwich \"{first.Text("carried-by")}\" turns on this axis, so it cannot carry it"
                : $"These axes are carried in a circle: {ProblemList.Shown(string.Join(", ", way))}",
            "a sandwich on another axis, which the frame carries in the end");
    }

    private Entries? Arm(Entries? axis) => axis?.Text("carried-by") is { } name ? _sandwiches.GetValueOrDefault(name) : null;

    private Entries? AxisOf(Entries? sandwich) => sandwich?.Text("axis") is { } name ? _axes.GetValueOrDefault(name) : null;

    private static bool IsRack(Entries? sandwich) => sandwich?.Tables("layers").Any(SlidingChecks.IsRack) == true;
}
