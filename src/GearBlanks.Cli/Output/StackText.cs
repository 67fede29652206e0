using System.Globalization;
using GearBlanks.Mechanisms;
using Spectre.Console;

namespace GearBlanks.Cli.Output;

/// <summary>The table of heights, and how gears are put on, for people.</summary>
internal static class StackText
{
    private const double DegreesInARadian = 180 / Math.PI;

    public static void Write(Terminal console, StackReport stack)
    {
        if (stack.Heights.IsEmpty)
        {
            console.Say("The job gives no heights: give its sandwiches a height.");
        }
        else
        {
            WriteHeights(console, stack);
        }

        WriteClocking(console, stack);
        WriteTeeth(console, stack);
    }

    private static void WriteHeights(Terminal console, StackReport stack)
    {
        Table table = Tables.Make("sandwich", "part", "from", "to", "either way");
        foreach (HeightRow row in stack.Heights)
        {
            table.AddRow(
                Markup.Escape(row.Sandwich ?? "frame"), Markup.Escape(row.Part), Tables.Figure(row.From, 3), Tables.Figure(row.To, 3),
                Tables.Figure(Math.Max(row.FromTolerance, row.ToTolerance), 3));
        }

        console.Say(table);
    }

    private static void WriteClocking(Terminal console, StackReport stack)
    {
        Table table = Tables.Make("gear", "first tooth at", "in its sandwich", "first screw", "ways to put it on", "wrong ones", "upside down");
        foreach (GearClocking gear in stack.Clockings)
        {
            table.AddRow(
                Markup.Escape(gear.Gear), Degrees(gear.Angle), Degrees(gear.Turned), Degrees(gear.FirstScrew), Count(gear.Ways), Count(gear.WrongWays),
                gear.FlipsUnseen ? "teeth elsewhere" : "alike");
        }

        console.Say(table);
    }

    private static void WriteTeeth(Terminal console, StackReport stack)
    {
        if (stack.Teeth.IsEmpty)
        {
            return;
        }

        Table table = Tables.Make("mesh", "tooth", "of", "between", "of", "mm beside");
        foreach (FacingTeeth teeth in stack.Teeth)
        {
            table.AddRow(
                Markup.Escape(teeth.Mesh), Count(teeth.Tooth), Markup.Escape(teeth.ToothOf), $"{Count(teeth.Before)} and {Count(teeth.After)}",
                Markup.Escape(teeth.GapOf), Tables.Figure(teeth.Offset, 3));
        }

        console.Say(table);
    }

    private static string Degrees(double? angle) => angle is { } rad ? Tables.Figure(rad * DegreesInARadian, 2) : "-";

    private static string Count(int count) => count.ToString(CultureInfo.InvariantCulture);
}
