using System.Globalization;
using GearBlanks.Findings;

namespace GearBlanks.Tests.Findings;

/// <summary>Numbers in sentences.</summary>
public sealed class WordsTests
{
    [Theory]
    [InlineData(0, "mm", "0 mm")]
    [InlineData(1e-9, "mm", "0 mm")]
    [InlineData(-1e-9, "mm", "0 mm")]
    [InlineData(0.0000042, "mm", "0.000004 mm")]
    [InlineData(-0.00954, "mm", "-0.00954 mm")]
    [InlineData(0.01, "mm", "0.01 mm")]
    [InlineData(0.03249, "mm", "0.032 mm")]
    [InlineData(-1.2346, "", "-1.235")]
    [InlineData(1.5, "", "1.5")]
    [InlineData(1234567.8, "ppm", "1234567.8 ppm")]
    public void Figures(double value, string unit, string words) => Assert.Equal(words, Words.Figure(value, unit));

    [Theory]
    [InlineData(0, "0")]
    [InlineData(1e-13, "0")]
    [InlineData(-1e-13, "0")]
    [InlineData(0.001, "+0.01")]
    [InlineData(-0.001, "-0.01")]
    [InlineData(0.1, "+0.10")]
    [InlineData(0.29, "+0.29")]
    [InlineData(-1.231, "-1.24")]
    public void Changes_are_rounded_away_from_zero(double value, string words) => Assert.Equal(words, Words.Change(value));

    [Fact]
    public void Nought_has_no_sign()
    {
        Assert.Equal("0", Words.Figure(-0.0, ""));
        Assert.Equal("0 mm", Words.Mm(-0.0));
        Assert.Equal("0", Words.Change(-0.0));
    }

    [Theory]
    [InlineData(0, "0 seconds")]
    [InlineData(1.5, "1.5 seconds")]
    [InlineData(119.9, "119.9 seconds")]
    [InlineData(120, "2 minutes")]
    [InlineData(5400, "90 minutes")]
    [InlineData(7200, "2 hours")]
    [InlineData(86_400, "24 hours")]
    [InlineData(172_800, "2 days")]
    [InlineData(86_400 * 79.08, "79.1 days")]
    public void Times_take_the_unit_that_suits(double seconds, string words) => Assert.Equal(words, Words.Time(seconds));

    [Fact]
    public void Lists()
    {
        Assert.Equal("", Words.List([]));
        Assert.Equal("a", Words.List(["a"]));
        Assert.Equal("a and b", Words.List(["a", "b"]));
        Assert.Equal("a, b and c", Words.List(["a", "b", "c"]));
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("ar-SA")]
    [InlineData("fa-IR")]
    public void The_reader_s_culture_changes_nothing(string name)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(name);
            Assert.NotEqual("-1.5", (-1.5).ToString(CultureInfo.CurrentCulture));
            Assert.Equal("-1.5 mm", Words.Mm(-1.5));
            Assert.Equal("-1.50", Words.Change(-1.5));
            Assert.Equal("1.5 seconds", Words.Time(1.5));
            Assert.Equal(
                "W is -1.5, below the limit -0.5.",
                Check.Of("w", "p", -1.5, TestLimits.Between(-0.5, null, null, null), "", "W", _ => null).Message);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
