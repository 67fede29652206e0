using Fractions;
using GearBlanks.Trains;

namespace GearBlanks.Tests.Trains;

/// <summary>Errors of hands.</summary>
public sealed class HandTimingTests
{
    [Fact]
    public void A_hand_that_takes_longer_is_slow_and_positive() =>
        Assert.Equal(100, new HandTiming(new Fraction(10_001), new Fraction(10_000)).ErrorPpm);

    [Fact]
    public void A_hand_that_takes_less_is_fast_and_negative() =>
        Assert.Equal(-100, new HandTiming(new Fraction(9_999), new Fraction(10_000)).ErrorPpm);

    [Fact]
    public void An_exact_hand_is_never_a_degree_out()
    {
        var timing = new HandTiming(new Fraction(86_400), new Fraction(172_800, 2));
        Assert.Equal(0, timing.ErrorPpm);
        Assert.Null(timing.SecondsToOneDegree);
    }

    [Theory]
    [InlineData(3_601, 3_600)]
    [InlineData(3_599, 3_600)]
    [InlineData(86_400, 3_600)]
    public void After_that_time_the_two_angles_differ_by_one_degree(int period, int wanted)
    {
        var timing = new HandTiming(new Fraction(period), new Fraction(wanted));
        double seconds = timing.SecondsToOneDegree!.Value;
        Assert.Equal(1, Math.Abs((360 * seconds / period) - (360 * seconds / wanted)), 1e-9);
    }

    [Theory]
    [InlineData(3_601, 3_600, -1)]
    [InlineData(3_599, 3_600, 1)]
    public void Degrees_a_year_are_those_that_add_up_at_one_degree_a_time(int period, int wanted, int sign)
    {
        var timing = new HandTiming(new Fraction(period), new Fraction(wanted));
        Assert.Equal(sign, timing.DegreesAYear * timing.SecondsToOneDegree!.Value / (365.25 * 86_400), 1e-12);
        Assert.Equal(0, new HandTiming(new Fraction(wanted), new Fraction(wanted)).DegreesAYear);
    }

    [Fact]
    public void Fractions_longer_than_any_double_are_told_as_well()
    {
        Fraction wanted = Fraction.Pow(new Fraction(18, 17), 400);
        var timing = new HandTiming(wanted * new Fraction(10_001, 10_000), wanted);
        Assert.Equal(100, timing.ErrorPpm, 1e-9);
        Assert.Equal(1, timing.SecondsToOneDegree!.Value / (10_001 * Math.Pow(18.0 / 17, 400) / 360), 1e-12);
    }

    [Fact]
    public void Periods_beyond_any_double_are_not_nothing()
    {
        var timing = new HandTiming(Fraction.Pow(new Fraction(1000), 120), new Fraction(60));
        Assert.False(double.IsNaN(timing.ErrorPpm));
        Assert.True(timing.ErrorPpm > 1e300);
        Assert.Equal(60.0 / 360, timing.SecondsToOneDegree!.Value, 1e-12);
    }
}
