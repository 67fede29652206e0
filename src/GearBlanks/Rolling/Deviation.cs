namespace GearBlanks.Rolling;

/// <summary>A deviation over a roll: greatest less least.</summary>
/// <param name="Total">Over the whole roll.</param>
/// <param name="ToothToTooth">The greatest over any one pitch.</param>
public readonly record struct Deviation(double Total, double ToothToTooth)
{
    /// <summary>The deviation of a series; NaN where a value is missing.</summary>
    /// <param name="values">The series.</param>
    /// <param name="window">Steps of one pitch.</param>
    internal static Deviation Of(ReadOnlySpan<double> values, int window)
    {
        int[] lows = new int[values.Length];
        int[] highs = new int[values.Length];
        (int lowStart, int lowEnd, int highStart, int highEnd) = (0, 0, 0, 0);
        (double least, double greatest, double pitch) = (double.PositiveInfinity, double.NegativeInfinity, 0);
        for (int i = 0; i < values.Length; i++)
        {
            double value = values[i];
            if (!double.IsFinite(value))
            {
                return new Deviation(double.NaN, double.NaN);
            }

            (least, greatest) = (Math.Min(least, value), Math.Max(greatest, value));
            while (lowEnd > lowStart && values[lows[lowEnd - 1]] >= value)
            {
                lowEnd--;
            }

            while (highEnd > highStart && values[highs[highEnd - 1]] <= value)
            {
                highEnd--;
            }

            (lows[lowEnd++], highs[highEnd++]) = (i, i);
            lowStart += lows[lowStart] < i - window ? 1 : 0;
            highStart += highs[highStart] < i - window ? 1 : 0;
            pitch = Math.Max(pitch, values[highs[highStart]] - values[lows[lowStart]]);
        }

        return new Deviation(greatest - least, pitch);
    }
}
