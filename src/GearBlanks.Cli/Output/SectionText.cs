using GearBlanks.Findings;
using GearBlanks.Mechanisms;
using GearBlanks.Mechanisms.Conditions;
using Spectre.Console;

namespace GearBlanks.Cli.Output;

/// <summary>Everything about one mesh, sandwich, gear or hand, for people.</summary>
internal static class SectionText
{
    public static void Write(Terminal console, MechanismReport report, string name)
    {
        foreach (Mesh mesh in report.Mechanism.Meshes.Where(mesh => mesh.Name == name))
        {
            WriteMesh(console, report, mesh);
        }

        foreach (Sandwich sandwich in report.Mechanism.Sandwiches.Where(sandwich => sandwich.Name == name))
        {
            WriteSandwich(console, report, sandwich);
        }

        foreach (MountedGear gear in report.Mechanism.Gears.Where(gear => gear.Name == name && gear.Sandwich != name))
        {
            WriteGear(console, report, gear);
        }

        foreach (HandReport hand in report.Hands.Where(hand => hand.Hand.Name == name))
        {
            WriteHand(console, report, hand);
        }
    }

    private static void WriteMesh(Terminal console, MechanismReport report, Mesh mesh)
    {
        console.Say($"Mesh {mesh.Name}, gears {mesh.First.Name} and {mesh.Second.Name}:");
        console.Say(report.Conditions?.Meshes.FirstOrDefault(one => one.Mesh == mesh.Name) is { } under
            ? MeshFigures.Of(mesh.First.Name, mesh.Second.Name, ("as drawn", mesh.Pair), ("least distance", under.LeastDistance.Pair), ("greatest distance", under.GreatestDistance.Pair))
            : MeshFigures.Of(mesh.First.Name, mesh.Second.Name, ("as drawn", mesh.Pair)));
        if (report.Conditions?.Meshes.FirstOrDefault(one => one.Mesh == mesh.Name) is { } conditions)
        {
            WriteContributions(console, conditions);
        }

        WriteFindings(console, report, Places.Mesh(mesh.Name));
    }

    private static void WriteContributions(Terminal console, MeshConditions mesh)
    {
        Table table = Tables.Make("backlash, mm", "takes", "gives", "deviation");
        foreach (var one in mesh.Contributions)
        {
            table.AddRow(
                Markup.Escape(one.Of.Length == 0 ? one.Name : $"{one.Name} of {one.Of}"), Tables.Figure(one.Takes, 4), Tables.Figure(one.Gives, 4), Tables.Figure(one.Deviation, 4));
        }

        console.Say(table);
    }

    private static void WriteSandwich(Terminal console, MechanismReport report, Sandwich sandwich)
    {
        console.Say($"Sandwich {sandwich.Name}, on axis {sandwich.Axis.Name}:");
        StackText.Write(console, new StackReport(
            [.. report.Stack.Heights.Where(row => row.Sandwich == sandwich.Name)],
            [.. report.Stack.Clockings.Where(gear => gear.Sandwich == sandwich.Name)],
            [.. report.Stack.Teeth.Where(teeth => sandwich.Gears.Any(gear => gear.Name == teeth.ToothOf || gear.Name == teeth.GapOf))]));
        foreach (Table sizes in GearText.Sizes([.. sandwich.Gears.Select(gear => (gear.Name, gear.Toothing, (double?)null))]))
        {
            console.Say(sizes);
        }

        WriteFindings(console, report, [Places.Sandwich(sandwich.Name), .. sandwich.Gears.Select(gear => Places.Gear(gear.Name))]);
    }

    private static void WriteGear(Terminal console, MechanismReport report, MountedGear gear)
    {
        console.Say($"Gear {gear.Name}, in sandwich {gear.Sandwich}:");
        foreach (Table sizes in GearText.Sizes([(gear.Name, gear.Toothing, null)]))
        {
            console.Say(sizes);
        }

        WriteFindings(console, report, Places.Gear(gear.Name));
    }

    private static void WriteHand(Terminal console, MechanismReport report, HandReport hand)
    {
        console.Say($"Hand {hand.Hand.Name}, on sandwich {hand.Hand.Sandwich}:");
        if (hand.LostMotion is { } lost)
        {
            Table table = Tables.Make("lost motion by mesh", "degrees");
            foreach (MeshPlay play in lost.Meshes.Where(play => play.Degrees != 0))
            {
                table.AddRow(Markup.Escape(play.Mesh), Tables.Figure(play.Degrees, 4));
            }

            table.AddRow("all together", Tables.Figure(lost.WorstCase, 4));
            console.Say(table);
        }

        WriteFindings(console, report, Places.Hand(hand.Hand.Name));
    }

    private static void WriteFindings(Terminal console, MechanismReport report, params string[] places)
    {
        foreach (Finding finding in report.Findings.Where(finding => places.Contains(finding.Place)))
        {
            console.Say($"  {LevelWords.Of(finding.Level),-5}  {finding.Name}: {finding.Message}");
        }
    }
}
