using System.Collections.Immutable;
using System.Globalization;
using System.Numerics;
using Fractions;

namespace GearBlanks.Files.Keys;

/// <summary>Reads text such as "1/4 in" or "29.530589 d" exactly.</summary>
internal static class Quantities
{
    // Nobody writes more; it keeps exact arithmetic short.
    private const int Longest = 40;

    private static readonly ImmutableArray<(string Name, Fraction Size)> LengthUnits =
        [("mm", Fraction.One), ("in", new Fraction(254, 10)), ("thou", new Fraction(254, 10000))];

    private static readonly ImmutableArray<(string Name, Fraction Size)> TimeUnits =
        [("s", Fraction.One), ("min", new Fraction(60)), ("h", new Fraction(3600)), ("d", new Fraction(86400))];

    /// <summary>A length in mm, or what is wrong.</summary>
    public static (Fraction? Value, string? Complaint, string? Nearest) Length(string text) => Read(text, LengthUnits);

    /// <summary>A time in seconds, or what is wrong.</summary>
    public static (Fraction? Value, string? Complaint, string? Nearest) Time(string text) => Read(text, TimeUnits);

    /// <summary>A plain number exactly as it is written; where it is written otherwise than in decimal digits, as the double that was read.</summary>
    public static Fraction Exact(string written, double read) => Number(written.Replace("_", "", StringComparison.Ordinal)) ?? Fraction.FromDouble(read);

    private static (Fraction? Value, string? Complaint, string? Nearest) Read(string text, ImmutableArray<(string Name, Fraction Size)> units)
    {
        var trimmed = text.Trim();
        if (trimmed.Length > Longest)
        {
            return (null, "The text is too long for a number with its unit", null);
        }

        var split = 0;
        while (split < trimmed.Length && !char.IsLetter(trimmed[split]))
        {
            split++;
        }

        var (number, unit) = (trimmed[..split].TrimEnd(), trimmed[split..]);
        if (unit.Length == 0)
        {
            return (null, "The unit is missing", null);
        }

        var size = units.FirstOrDefault(u => u.Name == unit);
        if (size.Name is null)
        {
            var near = units.Select(u => u.Name).FirstOrDefault(n => string.Equals(n, unit, StringComparison.OrdinalIgnoreCase));
            return (null, $"The unit \"{unit}\" is not known here", near ?? Nearest.To(unit, units.Select(u => u.Name)));
        }

        return Number(number) is { } value
            ? (value * size.Size, null, null)
            : (null, number.Contains(',', StringComparison.Ordinal) ? "A decimal comma is not read: write a point" : "The number before the unit cannot be read", null);
    }

    // A decimal number or a ratio of two, with a sign or without.
    private static Fraction? Number(string text)
    {
        var slash = text.IndexOf('/', StringComparison.Ordinal);
        if (slash < 0)
        {
            return Decimal(text);
        }

        var (over, under) = (Decimal(text[..slash].Trim()), Decimal(text[(slash + 1)..].Trim()));
        return over is { } n && under is { IsPositive: true } d ? n / d : null;
    }

    private static Fraction? Decimal(string text)
    {
        var digits = text.StartsWith('-') || text.StartsWith('+') ? text[1..] : text;
        var point = digits.IndexOf('.', StringComparison.Ordinal);
        var plain = point < 0 ? digits : digits.Remove(point, 1);
        if (plain.Length == 0 || point == 0 || point == digits.Length - 1 || !plain.All(char.IsAsciiDigit))
        {
            return null;
        }

        var value = new Fraction(BigInteger.Parse(plain, CultureInfo.InvariantCulture), BigInteger.Pow(10, point < 0 ? 0 : digits.Length - 1 - point));
        return text[0] == '-' ? -value : value;
    }
}
