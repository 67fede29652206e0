using CsCheck;
using GearBlanks.Meshing;

namespace GearBlanks.Tests.Meshing;

/// <summary>The search for the least number of steps, against trying every one.</summary>
public sealed class LeastStepsTests
{
    // Falling lines and curves, bent either way, some with an end beyond which there is nothing.
    [Fact]
    public void It_finds_what_trying_every_step_finds() =>
        Gen.Select(Gen.Double[0.01, 3], Gen.Double[1, 400], Gen.Double[0.4, 2.5], Gen.Int[1, 300], Gen.Int[1, 500]).Sample(
            (atZero, root, bend, most, end) =>
            {
                int tries = 0;
                double Miss(int steps) => steps >= root ? 0 : atZero * (1 - Math.Pow(steps / root, bend));
                int? found = LeastSteps.Of(atZero, most, steps =>
                {
                    Assert.InRange(steps, 1, most);
                    tries++;
                    return steps > end ? null : Miss(steps);
                });
                int? least = Enumerable.Range(1, Math.Min(most, end)).Where(steps => Miss(steps) <= 1e-9).Select(steps => (int?)steps).FirstOrDefault();
                Assert.Equal(least, found);
                Assert.InRange(tries, 1, 40);
            },
            iter: 3000, threads: 1);

    [Theory]
    [InlineData(100, 0.0007, 143)]
    [InlineData(1, 0.03, 34)]
    [InlineData(10, 20, 1)]
    public void A_straight_line_takes_few_tries(double atZero, double slope, int most)
    {
        most = Math.Max(most, (int)Math.Ceiling(atZero / slope));
        int tries = 0;
        Assert.Equal((int)Math.Ceiling(atZero / slope), LeastSteps.Of(atZero, most, steps =>
        {
            tries++;
            return Math.Max(0, atZero - (slope * steps));
        }));
        Assert.InRange(tries, 1, 4);
    }

    [Fact]
    public void What_grows_or_stays_at_the_first_step_is_given_up_at_once()
    {
        int tries = 0;
        Assert.Null(LeastSteps.Of(1, 100, steps => tries++ < 0 ? null : 1 + (steps * 0.1)));
        Assert.Null(LeastSteps.Of(1, 100, _ => tries++ < 0 ? null : 1));
        Assert.Equal(2, tries);
    }

    [Fact]
    public void What_there_is_not_at_all_is_not_found() => Assert.Null(LeastSteps.Of(1, 100, _ => null));

    [Fact]
    public void What_lies_beyond_the_most_is_not_found() => Assert.Null(LeastSteps.Of(1, 9, steps => 1 - (steps * 0.1)));

    // A cliff: no secant helps, halving does.
    [Fact]
    public void A_cliff_is_found_by_halving()
    {
        int tries = 0;
        Assert.Equal(777, LeastSteps.Of(1, 1000, steps =>
        {
            tries++;
            return steps >= 777 ? 0 : 1 - (steps * 1e-7);
        }));
        Assert.InRange(tries, 1, 60);
    }
}
