using System.Globalization;

namespace GearBlanks.Files.Drawings;

/// <summary>How many mm a drawing's unit has.</summary>
internal static class DrawnUnits
{
    /// <summary>The unit that the header of a DXF file names; unitless files are taken for mm, and that is told.</summary>
    public static (double Millimetres, string? Remark) OfDxf(int? unit) => unit switch
    {
        1 => (25.4, null),
        2 => (304.8, null),
        4 => (1, null),
        5 => (10, null),
        6 => (1000, null),
        8 => (25.4e-6, null),
        9 => (0.0254, null),
        10 => (914.4, null),
        13 => (0.001, null),
        14 => (100, null),
        null or 0 => (1, "The drawing does not say its unit: taken for millimetres."),
        _ => throw new DrawingException(0, unit.Value.ToString(CultureInfo.InvariantCulture), "The drawing's unit ($INSUNITS) is none that gears are drawn in", "inch (1), foot (2), mm (4), cm (5), m (6), mil (9), micrometre (13)"),
    };

    /// <summary>A length of SVG, mm; null where it is none (a share of the page) or not to be read.</summary>
    public static double? OfSvg(string? text)
    {
        if (text is null)
        {
            return null;
        }

        string word = text.Trim();
        int digits = word.Length;
        while (digits > 0 && (char.IsLetter(word[digits - 1]) || word[digits - 1] == '%'))
        {
            digits--;
        }

        double? factor = word[digits..].ToUpperInvariant() switch
        {
            "MM" => 1,
            "CM" => 10,
            "IN" => 25.4,
            "PT" => 25.4 / 72,
            "PC" => 25.4 / 6,
            "Q" => 0.25,
            "" or "PX" => 25.4 / 96,
            _ => null,
        };
        return factor is { } size && Numbers.TryParse(word.AsSpan(0, digits), out double value) ? value * size : null;
    }
}
