namespace GearBlanks.Teeth;

/// <summary>For a number that does not work: the nearest in an interval that does, on the coarsest decimal grid that holds one.</summary>
internal static class NearestWorking
{
    private const int Samples = 100;
    private const int Halvings = 60;
    private const int FewestDecimals = 3;
    private const int MostDecimals = 6;

    /// <summary>The number; null where none of the samples works.</summary>
    /// <param name="build">Throws <see cref="GearGeometryException"/> where a number does not work.</param>
    /// <param name="asked">The number that does not.</param>
    /// <param name="from">One end of the interval.</param>
    /// <param name="to">The other end.</param>
    public static double? Of(Action<double> build, double asked, double from, double to)
    {
        double step = (to - from) / Samples;
        double[] working = [.. Enumerable.Range(0, Samples).Select(i => from + ((i + 0.5) * step)).Where(value => Works(build, value))];
        if (working.Length == 0)
        {
            return null;
        }

        double good = working.MinBy(value => Math.Abs(value - asked));
        double bad = Math.Abs(asked - good) <= Math.Abs(step) ? asked : good + (Math.Sign(asked - good) * Math.Abs(step));
        for (int i = 0; i < Halvings; i++)
        {
            double middle = (good + bad) / 2;
            (good, bad) = Works(build, middle) ? (middle, bad) : (good, middle);
        }

        return OnGrid(build, good, Math.Sign(good - asked));
    }

    /// <summary>True where a shape exists.</summary>
    public static bool Works(Action build)
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

    private static bool Works(Action<double> build, double value) => Works(() => build(value));

    // Rounded away from what was asked for, so that typing it in works.
    private static double? OnGrid(Action<double> build, double value, int away)
    {
        for (int decimals = FewestDecimals; decimals <= MostDecimals; decimals++)
        {
            double grid = Math.Pow(10, decimals);
            double rounded = (away < 0 ? Math.Floor(value * grid) : Math.Ceiling(value * grid)) / grid;
            if (Works(build, rounded))
            {
                return rounded;
            }
        }

        return null;
    }
}
