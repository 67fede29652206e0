using GearBlanks.Meshing.Builds;
using Gaussian = MathNet.Numerics.Distributions.Normal;

namespace GearBlanks.Tests.Meshing.Builds;

public sealed class SpreadTests
{
    // Of a normal quantity cut off at k deviations: 1 - 2 k phi(k) / (2 Phi(k) - 1), in squared deviations (textbooks on the truncated normal distribution).
    [Fact]
    public void VariancesAreThoseOfTheDistributions()
    {
        double cut = 1 - (6 * Gaussian.PDF(0, 1, 3) / ((2 * Gaussian.CDF(0, 1, 3)) - 1));
        Assert.Equal(cut / 9, Spread.Normal.Variance, 3e-5);
        Assert.Equal(1.0 / 3, Spread.Uniform.Variance, 1e-12);
    }

    [Fact]
    public void DrawsNeverPassTheLimits()
    {
        foreach (Spread spread in (Spread[])[Spread.Uniform, Spread.Normal])
        {
            Assert.Equal(-1, spread.At(0));
            Assert.InRange(spread.At(uint.MaxValue), 0.99, 1);
            double last = -1;
            for (uint bits = 0; bits < uint.MaxValue - 65521; bits += 65521)
            {
                double now = spread.At(bits);
                Assert.InRange(now, last, 1);
                last = now;
            }
        }
    }

    [Theory]
    [InlineData(0.1)]
    [InlineData(0.5)]
    [InlineData(0.842)]
    [InlineData(0.999)]
    public void ANormalDrawIsTheQuantileOfItsShare(double share)
    {
        double outside = Gaussian.CDF(0, 1, -3);
        double quantile = Gaussian.InvCDF(0, 1, outside + (share * (1 - (2 * outside)))) / 3;
        Assert.Equal(quantile, Spread.Normal.At((uint)(share * uint.MaxValue)), 3e-4);
        Assert.Equal((2 * share) - 1, Spread.Uniform.At((uint)(share * uint.MaxValue)), 1e-8);
    }
}
