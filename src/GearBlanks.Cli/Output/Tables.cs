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

    public static string Figure(double value, int decimals) =>
        value.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
