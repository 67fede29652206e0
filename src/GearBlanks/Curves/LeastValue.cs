namespace GearBlanks.Curves;

/// <summary>The least value of a continuous function: equal samples, then a golden section search about the least of them.</summary>
internal static class LeastValue
{
    // Of the range: the function is least there, so that where it is smooth the square of it is all that is lost.
    private const double Accuracy = 1e-7;

    private static readonly double Golden = (Math.Sqrt(5) - 1) / 2;

    /// <summary>The least value between two arguments, and where it is.</summary>
    /// <param name="function">The function.</param>
    /// <param name="from">The first argument.</param>
    /// <param name="to">The last.</param>
    /// <param name="samples">Steps that are fine enough to tell its dips apart.</param>
    public static (double At, double Value) Of(Func<double, double> function, double from, double to, int samples)
    {
        double step = (to - from) / samples;
        (int best, double sampled) = (0, double.PositiveInfinity);
        for (int i = 0; i <= samples; i++)
        {
            double value = function(from + (i * step));
            (best, sampled) = value < sampled ? (i, value) : (best, sampled);
        }

        (double At, double Value) least = (from + (best * step), sampled);
        (double low, double high) = (from + (Math.Max(0, best - 1) * step), from + (Math.Min(samples, best + 1) * step));
        double left = high - (Golden * (high - low));
        double right = low + (Golden * (high - low));
        (double atLeft, double atRight) = (function(left), function(right));
        while (Math.Abs(high - low) > Accuracy * Math.Abs(to - from))
        {
            if (atLeft < atRight)
            {
                least = atLeft < least.Value ? (left, atLeft) : least;
                (high, right, atRight) = (right, left, atLeft);
                left = high - (Golden * (high - low));
                atLeft = function(left);
            }
            else
            {
                least = atRight < least.Value ? (right, atRight) : least;
                (low, left, atLeft) = (left, right, atRight);
                right = low + (Golden * (high - low));
                atRight = function(right);
            }
        }

        return least;
    }
}
