using GearBlanks.Findings;

namespace GearBlanks.Tests.Findings;

/// <summary>Sentences of findings.</summary>
public sealed class CheckTests
{
    private static readonly Limit Limit = TestLimits.Between(0.1, 0.2, 0.4, 0.5);

    [Theory]
    [InlineData(0.3, Level.Ok, "Width of the slot is 0.3 mm.")]
    [InlineData(0.15, Level.Tight, "Width of the slot is 0.15 mm, below the comfortable 0.2 mm.")]
    [InlineData(0.05, Level.Fails, "Width of the slot is 0.05 mm, below the limit 0.1 mm.")]
    [InlineData(0.45, Level.Tight, "Width of the slot is 0.45 mm, above the comfortable 0.4 mm.")]
    [InlineData(-1, Level.Fails, "Width of the slot is -1 mm, below the limit 0.1 mm.")]
    [InlineData(0.6, Level.Fails, "Width of the slot is 0.6 mm, above the limit 0.5 mm.")]
    public void Say_the_figure_and_the_bound_that_it_breaks(double figure, Level level, string message)
    {
        Finding finding = Of(figure, "mm");
        Assert.Equal((level, message, figure), (finding.Level, finding.Message, finding.Figure));
        Assert.Equal(("slot", "gear a", "mm", Limit.Source), (finding.Name, finding.Place, finding.Unit, finding.Source));
    }

    [Theory]
    [InlineData(0.19999)]
    [InlineData(0.1999999)]
    [InlineData(0.40000004)]
    [InlineData(0.0999996)]
    [InlineData(0.50002)]
    public void Never_say_that_a_figure_is_beyond_itself(double figure)
    {
        string[] words = Of(figure, "").Message.TrimEnd('.').Split(' ');
        Assert.NotEqual(words[5].TrimEnd(','), words[^1]);
    }

    [Fact]
    public void A_figure_just_short_of_its_bound_shows_where_it_falls_short()
    {
        Assert.Equal("Width of the slot is 0.19999 mm, below the comfortable 0.2 mm.", Of(0.19999, "mm").Message);
        Finding touching = Check.Of("w", "p", -4e-9, TestLimits.Between(0, null, null, null), "mm", "Wall", _ => null);
        Assert.Equal("Wall is between -0.000001 and 0 mm, below the limit 0 mm.", touching.Message);
    }

    [Fact]
    public void Ask_for_advice_with_the_comfortable_bound_and_only_where_it_is_needed()
    {
        Assert.Null(Of(0.3, "mm").Advice);
        Assert.Equal("to 0.2", Of(0.15, "mm").Advice);
        Assert.Equal("to 0.2", Of(0.05, "mm").Advice);
        Assert.Equal("to 0.4", Of(0.6, "mm").Advice);
    }

    private static Finding Of(double figure, string unit) =>
        Check.Of("slot", "gear a", figure, Limit, unit, "Width of the slot", bound => FormattableString.Invariant($"to {bound}"));
}
