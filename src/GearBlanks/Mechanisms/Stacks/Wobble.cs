namespace GearBlanks.Mechanisms.Stacks;

/// <summary>How a sandwich can lean and shift on the spindle that it runs on.</summary>
/// <param name="Sandwich">Its name.</param>
/// <param name="Clearance">Greatest clearance of its bores, mm of diameter.</param>
/// <param name="Length">Bearing length, mm: from the lowest to the highest place where its bores or its tube touch the spindle.</param>
/// <param name="Middle">Height of the bearing's middle, mm.</param>
internal sealed record Wobble(string Sandwich, double Clearance, double Length, double Middle)
{
    /// <summary>The wobble of every sandwich that runs on a spindle with a clearance; the spindle itself is taken as upright.</summary>
    public static Dictionary<string, Wobble> Of(Stack stack) => Fit.Of(stack)
        .Where(fit => fit is { IsKnown: true, Seat: JobSeat.Runs, Sandwich: not null } && fit.GreatestClearance > 0)
        .GroupBy(fit => fit.Sandwich!)
        .ToDictionary(fits => fits.Key, fits =>
        {
            double bottom = fits.Min(fit => fit.Bearing.Bottom);
            double top = fits.Max(fit => fit.Bearing.Top);
            return new Wobble(fits.Key, fits.Max(fit => fit.GreatestClearance), top - bottom, (top + bottom) / 2);
        });

    /// <summary>How far a rim goes up or down, mm: c r / L.</summary>
    public double Swing(double radius) => Clearance * radius / Length;

    /// <summary>How far the middle of a gear at a height can go aside, mm: half the clearance within the bearing, more beyond its ends.</summary>
    public double Shift(double height) => Clearance / 2 * Math.Max(1, Math.Abs(height - Middle) * 2 / Length);
}
