namespace GearBlanks.Teeth;

/// <summary>For a gear that cannot exist: the profile shift nearest to the one asked for with which it could.</summary>
internal static class NearestShift
{
    private const double Step = 0.01;

    /// <summary>A piece of advice, or null where no profile shift in the range helps.</summary>
    public static string? Advice(GearData data)
    {
        for (int i = 1; i <= (GearRanges.GreatestShift - GearRanges.LeastShift) / Step; i++)
        {
            foreach (double x in (double[])[Nearby(data, i), Nearby(data, -i)])
            {
                if (x is >= GearRanges.LeastShift and <= GearRanges.GreatestShift && Exists(data with { ProfileShift = x }))
                {
                    return FormattableString.Invariant($"the nearest profile shift that works is {x:+0.00;-0.00;0.00}");
                }
            }
        }

        return null;
    }

    // On the grid of hundredths, so that the advice can be typed in and works.
    private static double Nearby(GearData data, int steps) =>
        Math.Round((steps > 0 ? Math.Floor(data.ProfileShift / Step) : Math.Ceiling(data.ProfileShift / Step)) + steps) / 100;

    private static bool Exists(GearData data)
    {
        try
        {
            _ = ToothForm.Of(data);
            return true;
        }
        catch (GearGeometryException)
        {
            return false;
        }
    }
}
