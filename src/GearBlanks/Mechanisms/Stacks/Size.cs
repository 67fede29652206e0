using GearBlanks.Mechanisms.Fits;

namespace GearBlanks.Mechanisms.Stacks;

/// <summary>A diameter with what it may measure, mm.</summary>
/// <param name="Nominal">As drawn.</param>
/// <param name="Least">The least it may be.</param>
/// <param name="Greatest">The greatest it may be.</param>
/// <param name="IsKnown">True where it was measured or has a class: otherwise it is taken as drawn.</param>
internal sealed record Size(double Nominal, double Least, double Greatest, bool IsKnown)
{
    /// <summary>The size of a bore or a spindle: measured beats its class, which beats drawn.</summary>
    public static Size Of(double nominal, ToleranceClass? tolerance, double? measured)
    {
        if (measured is { } size)
        {
            return new Size(nominal, size, size, true);
        }

        if (tolerance is null)
        {
            return new Size(nominal, nominal, nominal, false);
        }

        (double lower, double upper) = tolerance.Deviations(nominal);
        return new Size(nominal, nominal + lower, nominal + upper, true);
    }
}
