using Gaussian = MathNet.Numerics.Distributions.Normal;

namespace GearBlanks.Meshing.Builds;

/// <summary>
/// How quantities are spread between their limits, seen from their middle in half ranges: uniform, or normal with a third of the half range as standard
/// deviation, cut off at the limits. Drawn by its quantiles in equal steps, straight between them, so that no draw lies beyond a limit.
/// </summary>
internal sealed class Spread
{
    private const int Bits = 10;
    private const int Steps = 1 << Bits;
    private const double Cut = 3;
    private const int Rest = 32 - Bits;

    private readonly (double From, double Rise)[] _pieces;

    private Spread(Func<double, double> quantile)
    {
        double[] quantiles = new double[Steps + 1];
        for (int i = 0; i <= Steps; i++)
        {
            // Symmetric to the last bit, and exactly on the limits.
            double q = i == 0 ? -1 : 2 * i == Steps ? 0 : quantile((double)Math.Min(i, Steps - i) / Steps);
            quantiles[i] = 2 * i > Steps ? -quantiles[Steps - i] : q;
        }

        _pieces = [.. Enumerable.Range(0, Steps).Select(i => (quantiles[i], (quantiles[i + 1] - quantiles[i]) / (1u << Rest)))];
        Variance = Enumerable.Range(0, Steps).Sum(i => Square(quantiles[i], quantiles[i + 1])) / Steps;
    }

    /// <summary>Every value as likely as another.</summary>
    public static Spread Uniform { get; } = MakeUniform();

    /// <summary>Normal, cut off at three standard deviations.</summary>
    public static Spread Normal { get; } = MakeNormal();

    /// <summary>The uniform one, made anew.</summary>
    internal static Spread MakeUniform() => new(share => (2 * share) - 1);

    /// <summary>The normal one, made anew.</summary>
    internal static Spread MakeNormal() => new(share =>
    {
        double outside = Gaussian.CDF(0, 1, -Cut);
        return Gaussian.InvCDF(0, 1, outside + (share * (1 - (2 * outside)))) / Cut;
    });

    /// <summary>Variance of what is drawn, in half ranges squared.</summary>
    public double Variance { get; }

    /// <summary>The draw of 32 random bits, from -1 to 1.</summary>
    public double At(uint bits)
    {
        (double from, double rise) = _pieces[bits >> Rest];
        return from + (rise * (int)(bits & ((1u << Rest) - 1)));
    }

    // Mean of the square on a straight piece.
    private static double Square(double from, double to) => ((from * from) + (from * to) + (to * to)) / 3;
}
