namespace GearBlanks.Teeth;

/// <summary>For a number that does not work: the nearest in an interval that does, on the coarsest decimal grid that holds one.</summary>
internal static class NearestWorking
{
    private const int Samples = 50;
    private const int Halvings = 60;
    private const int MostDecimals = 6;

    // Finer than the finest grid.
    private const double Fine = 1e-8;

    /// <summary>The number; null where none of the samples works.</summary>
    /// <param name="works">Whether a number does.</param>
    /// <param name="asked">The number that does not.</param>
    /// <param name="from">One end of the interval.</param>
    /// <param name="to">The other end.</param>
    /// <param name="decimals">Fewest decimals to round to.</param>
    public static double? Of(Func<double, bool> works, double asked, double from, double to, int decimals = 3)
    {
        double step = (to - from) / Samples;
        double[] working = [.. Enumerable.Range(0, Samples).Select(i => from + ((i + 0.5) * step)).Where(works)];
        if (working.Length == 0)
        {
            return null;
        }

        double good = working.MinBy(value => Math.Abs(value - asked));
        double bad = Math.Abs(asked - good) <= Math.Abs(step) ? asked : good + (Math.Sign(asked - good) * Math.Abs(step));
        for (int i = 0; i < Halvings && Math.Abs(good - bad) > Fine; i++)
        {
            double middle = (good + bad) / 2;
            (good, bad) = works(middle) ? (middle, bad) : (good, middle);
        }

        return OnGrid(works, good, good < asked, decimals);
    }

    /// <summary>True where a shape exists.</summary>
    public static bool Exists(Action build)
    {
        try
        {
            build();
            return true;
        }
        catch (GearGeometryException)
        {
            return false;
        }
    }

    // Rounded away from what was asked for, so that typing it in works.
    private static double? OnGrid(Func<double, bool> works, double value, bool down, int decimals)
    {
        for (; decimals <= MostDecimals; decimals++)
        {
            double grid = Math.Pow(10, decimals);
            double rounded = (down ? Math.Floor(value * grid) : Math.Ceiling(value * grid)) / grid;
            if (works(rounded))
            {
                return rounded;
            }
        }

        return null;
    }
}
