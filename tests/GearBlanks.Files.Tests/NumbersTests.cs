using System.Globalization;
using CsCheck;

namespace GearBlanks.Files.Tests;

public class NumbersTests
{
    [Theory]
    [InlineData(0, 9, 1, "0.0")]
    [InlineData(-4e-10, 9, 1, "0.0")]
    [InlineData(-6e-10, 9, 1, "-0.000000001")]
    [InlineData(1, 9, 1, "1.0")]
    [InlineData(1, 9, 0, "1")]
    [InlineData(10, 0, 0, "10")]
    [InlineData(-12.5, 9, 1, "-12.5")]
    [InlineData(0.1, 9, 1, "0.1")]
    [InlineData(1.000000001, 9, 1, "1.000000001")]
    [InlineData(2.9999999999, 9, 1, "3.0")]
    [InlineData(0.000001, 6, 0, "0.000001")]
    [InlineData(1e15, 9, 1, "1000000000000000.0")]
    [InlineData(-1e15, 9, 0, "-1000000000000000")]
    [InlineData(0.414213562373095, 12, 1, "0.414213562373")]
    public void Numbers_are_fixed_point(double value, int decimals, int least, string text) =>
        Assert.Equal(text, Numbers.ToText(value, decimals, least));

    [Fact]
    public void Negative_zero_is_zero() => Assert.Equal("0.0", Numbers.ToText(double.NegativeZero, 9, 1));

    /// <summary>Against the platform's own fixed-point formatting, which rounds the exact value; ours rounds after scaling.</summary>
    [Fact]
    public void Numbers_agree_with_the_platform_to_the_last_decimal() =>
        Gen.Select(Gen.Double[-2e7, 2e7], Gen.Int[0, Numbers.MostDecimals]).Sample((value, decimals) =>
        {
            double read = double.Parse(Numbers.ToText(value, decimals), CultureInfo.InvariantCulture);
            double wanted = double.Parse(value.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
            double roundingOfProduct = 2 * Math.BitIncrement(Math.Abs(value)) - (2 * Math.Abs(value));
            Assert.Equal(value, read, (0.5 * Math.Pow(10, -decimals)) + roundingOfProduct);
            Assert.Equal(wanted, read, (1.01 * Math.Pow(10, -decimals)) + roundingOfProduct);
        });

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    public void Culture_does_not_matter(string culture)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo(culture);
            Assert.NotEqual("-1234.5", (-1234.5).ToString("N1", CultureInfo.CurrentCulture));
            Assert.Equal("-1234.5", Numbers.ToText(-1234.5, 9));
            Assert.Equal("-1000000000000000.5", Numbers.ToText(-1000000000000000.5, 9));
            Assert.True(Numbers.TryParse("-1234.5", out double read));
            Assert.Equal(-1234.5, read);
            Assert.False(Numbers.TryParse("-1234,5", out _));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Theory]
    [InlineData("1.5", true)]
    [InlineData("-1e-3", true)]
    [InlineData(".5", true)]
    [InlineData("1,5", false)]
    [InlineData("1.234,5", false)]
    [InlineData("", false)]
    [InlineData("NaN", false)]
    [InlineData("Infinity", false)]
    [InlineData("1e999", false)]
    [InlineData(" 1", false)]
    public void Only_plain_finite_numbers_are_read(string text, bool isNumber) => Assert.Equal(isNumber, Numbers.TryParse(text, out _));

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void What_is_not_finite_is_not_written(double value) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Numbers.ToText(value, 9));

    [Fact]
    public void Too_many_decimals_are_refused() => Assert.Throws<ArgumentOutOfRangeException>(() => Numbers.ToText(1, 13));

    [Theory]
    [InlineData(1, 23)]
    [InlineData(1e200, 100)]
    public void Too_short_a_destination_is_refused(double value, int length) =>
        Assert.Throws<ArgumentException>(() => Numbers.Format(value, new byte[length], 9));
}
