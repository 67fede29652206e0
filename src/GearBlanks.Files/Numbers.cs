using System.Buffers.Text;
using System.Globalization;

namespace GearBlanks.Files;

/// <summary>
/// Numbers as text in files: fixed-point decimals with a point, the same in every culture; never an exponent, never a negative zero.
/// </summary>
public static class Numbers
{
    /// <summary>The most decimals that can be asked for.</summary>
    public const int MostDecimals = 12;

    // Sign, the 309 digits of the greatest double, point, decimals.
    private const int LongestText = 1 + 309 + 1 + MostDecimals;

    // Up to here every whole number is a double, so scaling and rounding lose nothing but the last place of the product.
    private const double LargestExact = 1L << 53;

    private static readonly double[] PowersOfTen = [1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12];

    /// <summary>The number with at most <paramref name="decimals"/> decimals, trailing zeros dropped.</summary>
    /// <inheritdoc cref="Format"/>
    public static string ToText(double value, int decimals, int leastDecimals = 0)
    {
        Span<byte> text = stackalloc byte[LongestText];
        return System.Text.Encoding.ASCII.GetString(text[..Format(value, text, decimals, leastDecimals)]);
    }

    /// <summary>Writes the number as ASCII and says how many bytes it took.</summary>
    /// <param name="value">The number; finite.</param>
    /// <param name="destination">Where to write; 24 bytes hold any number below 1e7.</param>
    /// <param name="decimals">Decimals to round to, 0 to <see cref="MostDecimals"/>.</param>
    /// <param name="leastDecimals">Decimals that stay even where they are zeros, 0 to <paramref name="decimals"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is not finite, or the decimals are out of range.</exception>
    /// <exception cref="ArgumentException">The destination is too short.</exception>
    public static int Format(double value, Span<byte> destination, int decimals, int leastDecimals = 0)
    {
        if (!double.IsFinite(value))
        {
            throw new ArgumentOutOfRangeException(nameof(value), value, "Only finite numbers can be written.");
        }

        ArgumentOutOfRangeException.ThrowIfGreaterThan(decimals, MostDecimals);
        ArgumentOutOfRangeException.ThrowIfNegative(leastDecimals);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(leastDecimals, decimals);

        double scaled = Math.Round(Math.Abs(value) * PowersOfTen[decimals]);
        return scaled < LargestExact
            ? FormatScaled((long)scaled, value < 0, destination, decimals, leastDecimals)
            : FormatLarge(value, destination, decimals, leastDecimals);
    }

    /// <summary>Reads a number written with a point, whatever the culture; exponents are read too, infinities and NaN are not.</summary>
    public static bool TryParse(ReadOnlySpan<char> text, out double value) =>
        double.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent, CultureInfo.InvariantCulture, out value)
        && double.IsFinite(value);

    private static int FormatScaled(long scaled, bool negative, Span<byte> destination, int decimals, int leastDecimals)
    {
        int length = 0;
        if (negative && scaled != 0)
        {
            destination[length++] = (byte)'-';
        }

        (long whole, long fraction) = Math.DivRem(scaled, (long)PowersOfTen[decimals]);
        if (!Utf8Formatter.TryFormat(whole, destination[length..], out int wholeLength))
        {
            throw new ArgumentException("The number does not fit.", nameof(destination));
        }

        length += wholeLength;
        int kept = decimals;
        while (kept > leastDecimals && fraction % 10 == 0)
        {
            fraction /= 10;
            kept--;
        }

        if (kept == 0)
        {
            return length;
        }

        destination[length] = (byte)'.';
        for (int i = length + kept; i > length; i--)
        {
            (fraction, long digit) = Math.DivRem(fraction, 10);
            destination[i] = (byte)('0' + digit);
        }

        return length + 1 + kept;
    }

    private static int FormatLarge(double value, Span<byte> destination, int decimals, int leastDecimals)
    {
        if (!value.TryFormat(destination, out int length, string.Create(CultureInfo.InvariantCulture, $"F{decimals}"), CultureInfo.InvariantCulture))
        {
            throw new ArgumentException("The number does not fit.", nameof(destination));
        }

        int kept = decimals;
        while (kept > leastDecimals && destination[length - 1] == '0')
        {
            length--;
            kept--;
        }

        return kept == 0 && decimals > 0 ? length - 1 : length;
    }
}
