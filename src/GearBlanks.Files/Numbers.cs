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

    /// <summary>Room for any number: sign, the 309 digits of the greatest double, point, decimals.</summary>
    internal const int LongestText = 1 + 309 + 1 + MostDecimals;

    // Sign, point and the 17 digits that a whole double and a leading zero have.
    private const int RoomForMost = 24;

    // Up to here every whole number is a double, so scaling and rounding lose nothing but the last place of the product.
    private const double LargestExact = 1L << 53;

    private static ReadOnlySpan<long> PowersOfTen =>
        [1, 10, 100, 1000, 10_000, 100_000, 1_000_000, 10_000_000, 100_000_000, 1_000_000_000, 10_000_000_000, 100_000_000_000, 1_000_000_000_000];

    /// <summary>The number with at most <paramref name="decimals"/> decimals, trailing zeros dropped.</summary>
    /// <inheritdoc cref="Format"/>
    public static string ToText(double value, int decimals, int leastDecimals = 0)
    {
        Span<byte> text = stackalloc byte[LongestText];
        return System.Text.Encoding.ASCII.GetString(text[..Format(value, text, decimals, leastDecimals)]);
    }

    /// <summary>Writes the number as ASCII and says how many bytes it took.</summary>
    /// <param name="value">The number; finite.</param>
    /// <param name="destination">Where to write; at least 24 bytes, which hold any number below 1e9; numbers beyond may need more.</param>
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

        if (destination.Length < RoomForMost)
        {
            throw new ArgumentException("The destination is too short.", nameof(destination));
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

        (long whole, long fraction) = Math.DivRem(scaled, PowersOfTen[decimals]);
        Utf8Formatter.TryFormat(whole, destination[length..], out int wholeLength);
        length += wholeLength;
        if (decimals == 0)
        {
            return length;
        }

        destination[length++] = (byte)'.';
        Span<byte> digits = destination.Slice(length, decimals);
        for (int i = decimals - 1; i >= 0; i--)
        {
            (fraction, long digit) = Math.DivRem(fraction, 10);
            digits[i] = (byte)('0' + digit);
        }

        return Trimmed(destination, length + decimals, decimals, leastDecimals);
    }

    // Without the zeros at its end, and without the point where no decimal stays.
    private static int Trimmed(ReadOnlySpan<byte> text, int length, int decimals, int leastDecimals)
    {
        while (decimals > leastDecimals && text[length - 1] == '0')
        {
            length--;
            decimals--;
        }

        return decimals == 0 ? length - 1 : length;
    }

    private static int FormatLarge(double value, Span<byte> destination, int decimals, int leastDecimals)
    {
        if (!value.TryFormat(destination, out int length, string.Create(CultureInfo.InvariantCulture, $"F{decimals}"), CultureInfo.InvariantCulture))
        {
            throw new ArgumentException("The number does not fit.", nameof(destination));
        }

        return decimals == 0 ? length : Trimmed(destination, length, decimals, leastDecimals);
    }
}
