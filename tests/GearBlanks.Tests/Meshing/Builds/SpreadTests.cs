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

    /// <summary>Made anew, each draws the quantiles of its distribution: Simpson's rule over the density, and no table.</summary>
    [Fact]
    public void Quantiles_are_those_of_the_densities()
    {
        Spread uniform = Spread.MakeUniform();
        Spread normal = Spread.MakeNormal();
        double whole = Area(-3, 3);
        for (int i = 0; i <= 1024; i++)
        {
            uint bits = (uint)Math.Min(uint.MaxValue, (long)i << 22);
            double share = bits / 4294967296.0;
            Assert.Equal((2 * share) - 1, uniform.At(bits), 1e-9);

            // The first and the last step span a tail in which the density is small: there the straight line is coarse.
            double drawn = normal.At(bits);
            Assert.Equal(share, Area(-3, 3 * drawn) / whole, 1e-6);
        }

        Assert.Equal((-1, -1), (uniform.At(0), normal.At(0)));
        Assert.Equal(0, normal.At(1u << 31));
        Assert.InRange(normal.At(uint.MaxValue), 0.99, 1);
        Assert.Equal(-normal.At(1u << 28), normal.At((uint)(uint.MaxValue - (1L << 28) + 1)), 1e-12);
        Assert.Equal(1.0 / 3, uniform.Variance, 1e-12);

        // Cut off at c deviations: 1 - 2 c phi(c) / (Phi(c) - Phi(-c)), a ninth of it in half ranges.
        double density = Math.Exp(-4.5) / Math.Sqrt(2 * Math.PI);
        Assert.Equal((1 - (6 * density / whole)) / 9, normal.Variance, 3e-5);

        static double Area(double from, double to)
        {
            const int steps = 600;
            double h = (to - from) / steps;
            double sum = 0;
            for (int i = 0; i <= steps; i++)
            {
                double x = from + (i * h);
                sum += Math.Exp(-x * x / 2) * (i is 0 or steps ? 1 : i % 2 == 1 ? 4 : 2);
            }

            return sum * h / 3 / Math.Sqrt(2 * Math.PI);
        }
    }
}
