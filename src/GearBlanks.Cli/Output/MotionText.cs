using System.Globalization;
using Fractions;
using GearBlanks.Findings;
using GearBlanks.Mechanisms;
using Spectre.Console;

namespace GearBlanks.Cli.Output;

/// <summary>Speeds, hands and the dial for people.</summary>
internal static class MotionText
{
    private const double SecondsInAnHour = 3_600;
    private const double SecondsInADay = 86_400;

    public static void Write(Terminal console, MechanismReport report)
    {
        if (report.Speeds.IsEmpty)
        {
            return;
        }

        console.Say(Speeds(report));
        if (!report.Hands.IsEmpty)
        {
            console.Say(Hands(report));
            console.Say(LostMotions(report));
        }

        if (report.Dial is { } dial)
        {
            console.Say(Dial(dial));
            console.Say($"Clockwise from the dial's zero, from the setting {Said(dial.Setting)} on; days of 86400 s, no leap seconds.");
        }
    }

    // Arms show only where there are some.
    private static Table Speeds(MechanismReport report)
    {
        bool hasArms = report.Speeds.Any(speed => speed.Arm is not null);
        Table table = Tables.Make("sandwich", hasArms ? ["turns per turn of the drive", "carried by", "turns against it"] : ["turns per turn of the drive"]);
        foreach (BodySpeed speed in report.Speeds)
        {
            table.AddRow([
                Markup.Escape(speed.Sandwich), Speed(speed),
                .. hasArms ? (string[])[speed.Arm is { } arm ? Markup.Escape(arm) : "the frame", speed.AgainstArm is { } against ? Exact(against) : "-"] : []]);
        }

        return table;
    }

    private static Table Hands(MechanismReport report)
    {
        Table table = Tables.Make("hand", "sense", "one turn", "error ppm", "degrees ahead a year", "one degree out after");
        foreach (HandReport hand in report.Hands)
        {
            table.AddRow(
                Markup.Escape(hand.Hand.Name),
                hand.Speed is { IsZero: false } speed ? speed.IsPositive ? "as the drive" : "against it" : "-",
                hand.Timing is { } timing ? Period(timing.PeriodSeconds) : "-",
                hand.Timing is { } error ? Tables.Figure(error.ErrorPpm, 2) : "-",
                hand.Timing is { } drift ? Tables.Figure(drift.DegreesAYear, 3) : "-",
                hand.Timing is null ? "-" : hand.Timing.SecondsToOneDegree is { } seconds ? Words.Time(seconds) : "never");
        }

        return table;
    }

    private static Table LostMotions(MechanismReport report)
    {
        Table table = Tables.Make("lost motion", "worst, degrees", "worst, minutes", "root of squares, degrees", "root of squares, minutes");
        foreach (HandReport hand in report.Hands.Where(hand => hand.LostMotion is not null))
        {
            LostMotion lost = hand.LostMotion!;
            table.AddRow(
                Markup.Escape(hand.Hand.Name), Tables.Figure(lost.WorstCase, 3), Tables.Figure(lost.WorstCaseMinutes, 3),
                Tables.Figure(lost.RootSumSquare, 3), Tables.Figure(lost.RootSumSquareMinutes, 3));
        }

        return table;
    }

    private static Table Dial(DialReading dial)
    {
        Table table = Tables.Make($"at {Said(dial.At)}", "degrees", "ahead by degrees");
        foreach (HandPosition hand in dial.Hands)
        {
            table.AddRow(
                Markup.Escape(hand.Hand.Name), hand.Angle is { } angle ? Tables.Figure(angle.ToDouble(), 4) : "-",
                hand.Ahead is { } ahead ? Tables.Figure(ahead.ToDouble(), 4) : "-");
        }

        return table;
    }

    private static string Said(Trains.Moment moment) => moment.IsTakenForUtc ? $"{moment.Written} (taken for UTC)" : moment.Written;

    // Long periods in days, short ones in hours, either to a tenth of a second.
    private static string Period(double seconds) => seconds < 2 * SecondsInADay
        ? Tables.Figure(seconds / SecondsInAnHour, 5) + " h"
        : Tables.Figure(seconds / SecondsInADay, 6) + " d";

    private static string Speed(BodySpeed speed) =>
        speed.Speed is { } turns ? Exact(turns)
        : speed.Travel is { } travel ? $"slides {Tables.Figure(travel, 3)} mm (drive counter-clockwise)"
        : "not driven";

    private static string Exact(Fraction turns) => string.Create(CultureInfo.InvariantCulture, $"{turns.Numerator}/{turns.Denominator}");
}
