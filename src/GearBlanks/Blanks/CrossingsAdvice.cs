using GearBlanks.Findings;
using GearBlanks.Teeth;

namespace GearBlanks.Blanks;

/// <summary>Why windows do not fit, and which single change makes them fit.</summary>
internal static class CrossingsAdvice
{
    // Halvings of a range of some metres: to less than a nanometre.
    private const int Steps = 60;

    private const double Micrometre = 0.001;

    /// <summary>The refusal where the corners fill the depth between hub and rim, or there is none.</summary>
    public static GearGeometryException NoDepth(Crossings crossings, double rootRadius)
    {
        double depth = rootRadius - crossings.RimWidth - (crossings.HubDiameter / 2);
        return new GearGeometryException(
            "no-window", "Hub, rim and corners leave no room for windows; depth left between hub and rim, mm", depth, 2 * crossings.CornerRadius,
            Remedy(crossings, rootRadius));
    }

    /// <summary>The refusal where the corners do not fit between two arms.</summary>
    public static GearGeometryException Refusal(Crossings crossings, double rootRadius)
    {
        bool isSharp = WindowForm.Of(crossings with { CornerRadius = 0 }, rootRadius) is null;
        return isSharp
            ? new GearGeometryException(
                "arms-meet", "The arms meet before they reach hub and rim: no window is left between them; width of an arm, mm",
                Math.Max(crossings.ArmWidth, crossings.ArmWidthAtRim), 0, Remedy(crossings, rootRadius))
            : new GearGeometryException(
                "corners-too-wide", "The windows' corners are wider than the windows; corner radius, mm",
                crossings.CornerRadius, Nearest(radius => crossings with { CornerRadius = radius }, crossings.CornerRadius, 0, rootRadius) ?? 0,
                Remedy(crossings, rootRadius));
    }

    private static string Remedy(Crossings crossings, double rootRadius)
    {
        Crossings Corner(double radius) => crossings with { CornerRadius = radius };
        Crossings Hub(double diameter) => crossings with { HubDiameter = diameter };
        Crossings Rim(double width) => crossings with { RimWidth = width };
        Crossings Narrower(double share) => crossings with { ArmWidth = share * crossings.ArmWidth, ArmWidthAtRim = share * crossings.ArmWidthAtRim };
        string?[] ways =
        [
            Nearest(Corner, crossings.CornerRadius, 0, rootRadius) is { } corner ? $"a corner radius of {Words.Mm(corner)}" : null,
            Nearest(Narrower, 1, 0, rootRadius) is { } share ? ArmsOf(crossings, share) : null,
            FewerArms(crossings, rootRadius) is { } arms ? $"{arms} arms" : null,
            Nearest(Hub, crossings.HubDiameter, 0, rootRadius) is > 0 and var less ? $"a hub diameter of {Words.Mm(less)}" : null,
            Nearest(Hub, crossings.HubDiameter, 2 * rootRadius, rootRadius) is { } more ? $"a hub diameter of {Words.Mm(more)}" : null,
            Nearest(Rim, crossings.RimWidth, 0, rootRadius) is > 0 and var rim ? $"a rim width of {Words.Mm(rim)}" : null,
        ];
        string[] found = [.. ways.OfType<string>()];
        return found.Length == 0 ? "use a smaller hub, rim, arms and corner radius together, or no crossings" : "use " + string.Join(", or ", found);
    }

    private static string? ArmsOf(Crossings crossings, double share)
    {
        (double atHub, double atRim) = (RoundedDown(share * crossings.ArmWidth), RoundedDown(share * crossings.ArmWidthAtRim));
        return atHub <= 0 || atRim <= 0 ? null
            : atHub == atRim ? $"arms of {Words.Mm(atHub)}"
            : $"arms of {Words.Mm(atHub)} at the hub and {Words.Mm(atRim)} at the rim";
    }

    private static int? FewerArms(Crossings crossings, double rootRadius)
    {
        int arms = crossings.Arms - 1;
        while (arms >= Crossings.FewestArms && !Fits(crossings with { Arms = arms }, rootRadius))
        {
            arms--;
        }

        return arms >= Crossings.FewestArms ? arms : null;
    }

    // The nearest whole micrometre to what is given, on the way to an end, with which the windows fit; null where none does.
    private static double? Nearest(Func<double, Crossings> with, double given, double end, double rootRadius)
    {
        double fits = Enumerable.Range(1, Steps).Select(i => given + ((end - given) * i / Steps)).FirstOrDefault(value => Fits(with(value), rootRadius), double.NaN);
        if (double.IsNaN(fits))
        {
            return null;
        }

        double misses = given;
        for (int i = 0; i < Steps; i++)
        {
            double middle = (fits + misses) / 2;
            (fits, misses) = Fits(with(middle), rootRadius) ? (middle, misses) : (fits, middle);
        }

        double rounded = end < given ? RoundedDown(fits) : RoundedDown(fits) + Micrometre;
        return Fits(with(rounded), rootRadius) ? rounded : null;
    }

    private static double RoundedDown(double value) => Math.Floor(value / Micrometre) * Micrometre;

    private static bool Fits(Crossings crossings, double rootRadius) =>
        crossings is { HubDiameter: > 0, RimWidth: > 0, ArmWidth: > 0, ArmWidthAtRim: > 0 }
        && rootRadius - crossings.RimWidth - (crossings.HubDiameter / 2) > 2 * crossings.CornerRadius
        && WindowForm.Of(crossings, rootRadius) is not null;
}
