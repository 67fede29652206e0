using GearBlanks.Mechanisms;
using Spectre.Console;

namespace GearBlanks.Cli.Output;

/// <summary>A mechanism's check for people: what fails and what to do first, then figures.</summary>
internal static class CheckText
{
    public static void Write(Terminal console, MechanismReport report, bool withHeights, IEnumerable<string> sections)
    {
        FindingText.WriteSummary(console, report.Mechanism.Title, report.Findings);
        WriteMeshes(console, report);
        MotionText.Write(console, report);
        if (withHeights)
        {
            StackText.Write(console, report.Stack);
        }

        if (report.Conditions is { } conditions)
        {
            ConditionsText.Write(console, conditions);
        }

        foreach (string section in sections)
        {
            SectionText.Write(console, report, section);
        }

        console.Say(NotChecked);
    }

    private const string NotChecked =
        "Not checked: strength, fatigue, lifting, vehicles, tolerances of cutting, bodies whose heights the job does not give. Fingers stay out of meshes that turn.";

    private static void WriteMeshes(Terminal console, MechanismReport report)
    {
        if (report.Mechanism.Meshes.IsEmpty)
        {
            return;
        }

        Table table = Tables.Make("mesh", "distance", "backlash", "wanted", "contact ratio", "tip clearance", "verdict");
        foreach (Mesh mesh in report.Mechanism.Meshes)
        {
            table.AddRow(
                Markup.Escape(mesh.Name), Tables.Figure(mesh.Pair.CentreDistance, 3), Tables.Figure(mesh.Pair.CircumferentialBacklash, 4),
                Tables.Figure(mesh.WantedBacklash, 4),
                Tables.Figure(mesh.Pair.ContactRatio, 3), Tables.Figure(Math.Min(mesh.Pair.FirstTipClearance, mesh.Pair.SecondTipClearance), 3),
                FindingText.Marked(report.VerdictOn(Places.Mesh(mesh.Name))));
        }

        console.Say(table);
    }
}
