namespace GearBlanks.Teeth;

/// <summary>For a gear that cannot exist: the profile shift nearest to the one asked for with which it could.</summary>
internal static class NearestShift
{
    private const double Step = 0.01;

    /// <summary>A piece of advice, or null where no profile shift in the range helps. A pointed tooth exists, but is advised only where nothing else does.</summary>
    public static string? Advice(GearData data) =>
        (Find(data, form => form.TipRadius == form.NominalTipRadius) ?? Find(data, _ => true)) is { } shift
            ? FormattableString.Invariant($"the nearest profile shift that works is {shift:+0.00;-0.00;0.00}")
            : null;

    private static double? Find(GearData data, Predicate<ToothForm> suits)
    {
        for (int i = 1; i <= (GearRanges.GreatestShift - GearRanges.LeastShift) / Step; i++)
        {
            foreach (double x in (double[])[Nearby(data, i), Nearby(data, -i)])
            {
                if (x is >= GearRanges.LeastShift and <= GearRanges.GreatestShift && Exists(data with { ProfileShift = x }, suits))
                {
                    return x;
                }
            }
        }

        return null;
    }

    // On the grid of hundredths, so that the advice can be typed in and works.
    private static double Nearby(GearData data, int steps) =>
        Math.Round((steps > 0 ? Math.Floor(data.ProfileShift / Step) : Math.Ceiling(data.ProfileShift / Step)) + steps) / 100;

    private static bool Exists(GearData data, Predicate<ToothForm> suits)
    {
        try
        {
            return suits(ToothForm.Of(data));
        }
        catch (GearGeometryException)
        {
            return false;
        }
    }
}
