using GearBlanks.Teeth;

namespace GearBlanks.Tests.Teeth;

/// <summary>The nearest number that works, for conditions whose answer is known.</summary>
public sealed class NearestTests
{
    [Theory]
    [InlineData(1, 0, 1, 3, 0, 0.7321, 0.732)]
    [InlineData(0, 0, 1, 3, 0.2677, 1, 0.268)]
    [InlineData(1, 0, 1, 1, 0, 0.7321, 0.7)]
    [InlineData(0.9, 0, 1, 3, 0.4, 0.51, 0.51)]
    [InlineData(0.1, 0, 1, 3, 0.4, 0.51, 0.4)]
    [InlineData(5, 2, 10, 2, 7.123, 9, 7.13)]
    [InlineData(5, 10, 2, 2, 7.123, 9, 7.13)]
    [InlineData(0, -3, 0, 3, -2, -1.23456, -1.235)]
    [InlineData(0.35, 0, 0.5, 2, 0.450001, 0.456, 0.451)]
    public void The_end_of_what_works_on_the_coarsest_grid_that_has_one(double asked, double from, double to, int decimals, double low, double high, double expected) =>
        Assert.Equal(expected, NearestWorking.Of(value => value >= low && value <= high, asked, from, to, decimals)!.Value, 1e-12);

    [Fact]
    public void Nothing_where_nothing_works_or_no_grid_holds_it()
    {
        Assert.Null(NearestWorking.Of(_ => false, 0.5, 0, 1));
        Assert.Null(NearestWorking.Of(value => value is > 0.4100000001 and < 0.4100000002, 0.5, 0, 1));
        Assert.Null(NearestWorking.Of(value => Math.Abs(value - 0.41) < 1e-12 && value != 0.41, 0.5, 0, 1));
        Assert.True(NearestWorking.Exists(() => { }));
        Assert.False(NearestWorking.Exists(() => throw new GearGeometryException("x", "x", 0, 0, null)));
    }

    /// <summary>Of two stretches the nearer one is taken.</summary>
    [Fact]
    public void The_nearer_stretch_counts() =>
        Assert.Equal(0.62, NearestWorking.Of(value => value is < 0.2 or > 0.62, 0.5, 0, 1, 2)!.Value, 0.0101);

    [Theory]
    [InlineData(0.123, 0.5, 9, 9, "the nearest profile shift that works is +0.50")]
    [InlineData(0.123, -9, -0.3, 9, "the nearest profile shift that works is -0.30")]
    [InlineData(0.127, 0.125, 9, 9, "the nearest profile shift that works is +0.13")]
    [InlineData(-0.127, -9, -0.125, 9, "the nearest profile shift that works is -0.13")]
    [InlineData(0.4, 1.5, 9, 9, "the nearest profile shift that works is +1.50")]
    [InlineData(1.5, -9, -1, 9, "the nearest profile shift that works is -1.00")]
    [InlineData(-1, 1.5, 9, 9, "the nearest profile shift that works is +1.50")]
    [InlineData(0.123, 1.51, 9, 9, null)]
    [InlineData(0.123, -9, -1.01, 9, null)]
    [InlineData(0.123, 0.2, 9, 0.7, "the nearest profile shift that works is +0.70")]
    [InlineData(0.123, 0.2, 9, 99, "the nearest profile shift that works is +0.20")]
    public void The_nearest_shift_that_works(double asked, double low, double high, double soundFrom, string? expected) =>
        Assert.Equal(expected, NearestShift.Advice(asked, x => x >= low - 1e-12 && x <= high + 1e-12
            ? soundFrom < 9 ? x < soundFrom - 1e-12 : soundFrom > 9
            : throw new GearGeometryException("x", "x", 0, 0, null)));
}
