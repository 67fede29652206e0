namespace GearBlanks.Teeth;

/// <summary>For teeth that cannot exist: the profile shift nearest to the one asked for with which they could.</summary>
internal static class NearestShift
{
    private const double Step = 0.01;

    /// <summary>A piece of advice, or null where no profile shift in the range helps. A pointed tooth exists, but is advised only where nothing else does.</summary>
    /// <param name="asked">The profile shift that does not work.</param>
    /// <param name="isPointed">Whether the teeth are pointed with another; throws where they cannot exist.</param>
    public static string? Advice(double asked, Func<double, bool> isPointed) =>
        Find(asked, isPointed) is { } shift
            ? FormattableString.Invariant($"the nearest profile shift that works is {shift:+0.00;-0.00;0.00}")
            : null;

    private static double? Find(double asked, Func<double, bool> isPointed)
    {
        double? pointed = null;
        for (int i = 1; i <= (GearRanges.GreatestShift - GearRanges.LeastShift) / Step; i++)
        {
            foreach (double x in (double[])[Nearby(asked, i), Nearby(asked, -i)])
            {
                bool? answer = x is >= GearRanges.LeastShift and <= GearRanges.GreatestShift ? Try(isPointed, x) : null;
                if (answer == false)
                {
                    return x;
                }

                pointed ??= answer is null ? null : x;
            }
        }

        return pointed;
    }

    // On the grid of hundredths, so that the advice can be typed in and works.
    private static double Nearby(double asked, int steps) =>
        Math.Round((steps > 0 ? Math.Floor(asked / Step) : Math.Ceiling(asked / Step)) + steps) / 100;

    private static bool? Try(Func<double, bool> isPointed, double shift)
    {
        try
        {
            return isPointed(shift);
        }
        catch (GearGeometryException)
        {
            return null;
        }
    }
}
