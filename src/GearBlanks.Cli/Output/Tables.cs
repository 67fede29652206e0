using System.Globalization;
using Spectre.Console;

namespace GearBlanks.Cli.Output;

/// <summary>The look of all tables.</summary>
internal static class Tables
{
    public static Table Make(string first, params string[] figures)
    {
        Table table = new Table { Border = TableBorder.Simple }.AddColumn(first, column => column.NoWrap());
        foreach (string figure in figures)
        {
            table.AddColumn(figure, column => column.RightAligned().NoWrap());
        }

        return table;
    }

    // Adding 0 turns what rounding left of a negative number into plain zero.
    public static string Figure(double value, int decimals) =>
        (Math.Round(value, decimals) + 0.0).ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
