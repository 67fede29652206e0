using GearBlanks.Findings;
using GearBlanks.Teeth;

namespace GearBlanks.Blanks;

/// <summary>Sizes that cannot be, and the nearest that can, in whole micrometres.</summary>
internal static class Refusals
{
    // Less than a micrometre over a bound is rounding.
    private const double Rounding = 1e-6;

    // mm: a smaller round could not be told from rounding, nor be cut.
    private const double LeastCorner = 1e-6;

    /// <summary>A corner radius, mm: 0 for less than a nanometre.</summary>
    public static double Corner(double radius) => radius < LeastCorner ? 0 : radius;

    /// <summary>The greatest whole micrometre below a bound, in words.</summary>
    public static string Below(double bound) => Words.Mm((Math.Ceiling((bound * 1000) - Rounding) - 1) / 1000);

    /// <summary>The least whole micrometre over a bound, in words.</summary>
    public static string Over(double bound) => Words.Mm((Math.Floor((bound * 1000) + Rounding) + 1) / 1000);

    /// <exception cref="GearGeometryException">The size is not positive, or not finite.</exception>
    public static void RequirePositive(string what, double size)
    {
        if (!(size > 0 && double.IsFinite(size)))
        {
            throw new GearGeometryException("no-size", $"{what} is not a size; mm", size, 0, "use a finite size over 0 mm");
        }
    }

    /// <exception cref="GearGeometryException">The size is negative, or not finite.</exception>
    public static void RequireNotNegative(string what, double size)
    {
        if (!(size >= 0 && double.IsFinite(size)))
        {
            throw new GearGeometryException("no-size", $"{what} is negative or no number; mm", size, 0, "use a finite size of 0 mm or more");
        }
    }
}
