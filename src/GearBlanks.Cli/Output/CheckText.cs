using System.Globalization;
using GearBlanks.Findings;
using GearBlanks.Mechanisms;
using Spectre.Console;

namespace GearBlanks.Cli.Output;

/// <summary>A mechanism's check for people: what fails and what to do first, then figures.</summary>
internal static class CheckText
{
    private const double SecondsInAnHour = 3_600;
    private const double SecondsInADay = 86_400;

    public static void Write(Terminal console, MechanismReport report)
    {
        FindingText.WriteSummary(console, report.Mechanism.Title, report.Findings);
        WriteMeshes(console, report);
        WriteHands(console, report);
        if (report.Conditions is { } conditions)
        {
            ConditionsText.Write(console, conditions);
        }

        console.Say(NotChecked);
    }

    public const string NotChecked =
        "Not checked: strength, fatigue, lifting, vehicles, tolerances of cutting, bodies that pass each other. Fingers stay out of meshes that turn.";

    // Long periods in days, short ones in hours, either to a tenth of a second.
    private static string Period(double seconds) => seconds < 2 * SecondsInADay
        ? Tables.Figure(seconds / SecondsInAnHour, 5) + " h"
        : Tables.Figure(seconds / SecondsInADay, 6) + " d";

    private static string Speed(BodySpeed speed) =>
        speed.Speed is { } turns ? string.Create(CultureInfo.InvariantCulture, $"{turns.Numerator}/{turns.Denominator}")
        : speed.Travel is { } travel ? $"slides {Tables.Figure(travel, 3)} mm (drive counter-clockwise)"
        : "not driven";

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

    private static void WriteHands(Terminal console, MechanismReport report)
    {
        if (report.Speeds.IsEmpty)
        {
            return;
        }

        Table speeds = Tables.Make("sandwich", "turns per turn of the drive");
        foreach (BodySpeed speed in report.Speeds)
        {
            speeds.AddRow(Markup.Escape(speed.Sandwich), Speed(speed));
        }

        console.Say(speeds);
        if (report.Hands.IsEmpty)
        {
            return;
        }

        Table hands = Tables.Make("hand", "sense", "one turn", "error ppm", "one degree out after");
        foreach (HandReport hand in report.Hands)
        {
            hands.AddRow(
                Markup.Escape(hand.Hand.Name),
                hand.Speed is { } speed ? speed.IsPositive ? "as the drive" : "against it" : "-",
                hand.Timing is { } timing ? Period(timing.PeriodSeconds) : "-",
                hand.Timing is { } error ? Tables.Figure(error.ErrorPpm, 2) : "-",
                hand.Timing is null ? "-" : hand.Timing.SecondsToOneDegree is { } seconds ? Words.Time(seconds) : "never");
        }

        console.Say(hands);
    }
}
