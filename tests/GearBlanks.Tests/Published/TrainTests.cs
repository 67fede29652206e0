using System.Collections.Immutable;
using Fractions;
using GearBlanks.Trains;

namespace GearBlanks.Tests.Published;

/// <summary>Trains whose ratios are printed, and the dial's two periods.</summary>
public sealed class TrainTests
{
    // National Oceanography Centre, National Tidal and Sea Level Facility, list of tidal constituents (GLOUP): speed of M2, degrees an hour.
    private static readonly Fraction SpeedOfM2 = Fraction.FromDecimal(28.9841042m);

    // Explanatory Supplement to the Astronomical Almanac (Chapront): mean synodic month at 2000.0, days; from memory.
    // NASA Goddard Space Flight Center (F. Espenak), Phases of the Moon 2001-2100, prints 29.530588, cut off and not rounded.
    private static readonly Fraction SynodicMonth = Fraction.FromDecimal(29.5305888531m);

    // mathgui.de, continued fractions, version 2.1, moon-phase gear: 18/8 times 15/8 is the convergent 135/32 of 29.53059 days in weeks.
    [Fact]
    public void Moon_of_two_steps() => Assert.Equal(new Fraction(135, 32), Last((18, 8), (15, 8)));

    // The same place prints "122 years to one day": exactly it is 122.50, which the course truncates.
    [Fact]
    public void Moon_of_two_steps_keeps_time_for_122_years()
    {
        Fraction wanted = Fraction.FromDecimal(29.53059m) / 7;
        var timing = new HandTiming(Last((18, 8), (15, 8)), wanted);
        Assert.Equal("122", Math.Floor(1 / (Math.Abs(timing.ErrorPpm) * 1e-6) / 365.24).ToString(System.Globalization.CultureInfo.InvariantCulture));
    }

    // R. W. Gosper on the math-fun mailing list, "10,000 year gear train": the printed product of the printed teeth.
    [Fact]
    public void Moon_of_three_steps() => Assert.Equal(
        29.5350888532671m, Math.Round(Last((293, 12), (149, 83), (157, 233)).Abs().ToDecimal(), 13));

    // The message means 29.53058853 days, which these teeth miss: a tooth count is probably misprinted. The error has to be told truly.
    [Fact]
    public void Moon_of_three_steps_misses_its_target() => Assert.Equal(
        152.3953, new HandTiming(Last((293, 12), (149, 83), (157, 233)).Abs(), Fraction.FromDecimal(29.53058853m)).ErrorPpm, 1e-4);

    // Industrial Press, Machinery's Handbook, 20th to 29th eds., metric threads with a 63-tooth gear; from memory: 80/63 for 1.27, -0.0125 %.
    [Fact]
    public void Sixty_three_for_a_hundred_and_twenty_seven() => Printed.Shows(
        "-0.0125", new HandTiming(Last((80, 63)).Abs(), new Fraction(127, 100)).ErrorPpm / 10_000);

    // A. Brocot, Calcul des rouages par approximation, 1862, first example; from memory: 191/23 is nearly 108/13.
    [Fact]
    public void One_hundred_and_eight_thirteenths_nearly_is_191_twenty_thirds()
    {
        var timing = new HandTiming(Last((108, 13)).Abs(), new Fraction(191, 23));
        Assert.Equal(1_000_000.0 / (191 * 13), timing.ErrorPpm, 1e-9);
    }

    [Fact]
    public void The_tide_hand_is_36_ppm_slow()
    {
        // A lunar day brings two turns of M2. The figure beside the sources, worked out apart: 36.34374 ppm.
        HandTiming tide = Timing(Last((24, 59), (57, 24)), 2 * 360 / SpeedOfM2 * 3600);
        Printed.Shows("36", tide.ErrorPpm);
        Assert.Equal(36.34374270, tide.ErrorPpm, 1e-6);
    }

    [Fact]
    public void The_moon_hand_is_28_ppm_slow() =>
        Printed.Shows("28", Timing(Last((24, 59), (57, 24), (13, 87), (19, 81)), SynodicMonth * 86_400).ErrorPpm);

    // The list's last digit is worth 1.5e-6 days. It also prints MSF = S2 - M2 as 1.0158958 degrees an hour: it turns twice in a synodic month.
    [Fact]
    public void The_two_sources_agree_on_the_month() =>
        Assert.Equal(SynodicMonth.ToDouble(), 2 * 360 / (30 - SpeedOfM2.ToDouble()) / 24, 2e-6);

    private static HandTiming Timing(Fraction speed, Fraction wanted) => new(86_400 / speed, wanted);

    // Speed of the last body of a chain of steps, driver and driven.
    private static Fraction Last(params (int Driver, int Driven)[] steps)
    {
        ImmutableArray<TrainMesh> meshes = [.. steps.Select((step, i) => new TrainMesh($"step {i}", i, i + 1, step.Driver, step.Driven))];
        return Train.Solve(steps.Length + 1, meshes, 0).Speeds[^1]!.Value;
    }
}
