using GearBlanks.Findings;

namespace GearBlanks.Tests.Findings;

/// <summary>Verdicts on figures.</summary>
public sealed class LimitTests
{
    private static readonly Limit All = TestLimits.Between(1, 2, 3, 4);

    [Theory]
    [InlineData(double.NegativeInfinity, Level.Fails, 1)]
    [InlineData(0.999999, Level.Fails, 1)]
    [InlineData(1 - 1e-10, Level.Tight, 2)]
    [InlineData(1, Level.Tight, 2)]
    [InlineData(1.999999, Level.Tight, 2)]
    [InlineData(2 - 1e-10, Level.Ok, 2)]
    [InlineData(2, Level.Ok, 2)]
    [InlineData(3, Level.Ok, 2)]
    [InlineData(3 + 1e-10, Level.Ok, 2)]
    [InlineData(3.000001, Level.Tight, 3)]
    [InlineData(4, Level.Tight, 3)]
    [InlineData(4 + 1e-10, Level.Tight, 3)]
    [InlineData(4.000001, Level.Fails, 4)]
    [InlineData(double.PositiveInfinity, Level.Fails, 4)]
    public void Around_each_bound(double figure, Level level, double bound) => Assert.Equal((level, (double?)bound), All.Judge(figure));

    [Fact]
    public void A_sum_that_equals_its_bound_but_for_rounding_is_not_beyond_it() =>
        Assert.Equal(Level.Ok, TestLimits.Between(null, null, 0.3, null).Judge(0.1 + 0.2).Level);

    [Theory]
    [InlineData(-1e300)]
    [InlineData(0)]
    [InlineData(1e300)]
    public void A_missing_bound_never_bites(double figure) =>
        Assert.Equal((Level.Ok, null), TestLimits.Between(null, null, null, null).Judge(figure));

    [Fact]
    public void An_ok_figure_shows_the_bound_there_is()
    {
        Assert.Equal(5, TestLimits.Between(5, null, 6, null).Judge(5.5).Bound);
        Assert.Equal(6, TestLimits.Between(null, null, 6, 7).Judge(5.5).Bound);
        Assert.Equal(7, TestLimits.Between(null, null, null, 7).Judge(5.5).Bound);
    }

    [Fact]
    public void What_is_not_a_number_is_refused() => Assert.Throws<ArgumentException>(() => All.Judge(double.NaN));

    [Fact]
    public void Times_takes_every_bound_along() =>
        Assert.Equal(TestLimits.Between(0.5, 1, null, 2), TestLimits.Between(1, 2, null, 4).Times(0.5));
}
