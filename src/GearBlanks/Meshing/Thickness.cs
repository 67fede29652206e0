using GearBlanks.Teeth;

namespace GearBlanks.Meshing;

/// <summary>Tooth thickness against backlash.</summary>
public static class Thickness
{
    /// <summary>
    /// The sum of both thinnings on the reference circles (lines), mm (arc), with which a pair has a circumferential backlash at a distance:
    /// (j - j0) m (z1 + z2) / (2 a), in a ring with z2 - z1, over a rack j - j0, with j0 the backlash at that distance without thinning. Negative where
    /// thicker teeth would be needed; 0 where the two do not mesh there. Exact: a thinned tooth has the same involutes, turned, so the loss as an
    /// angle is the same on every circle. Source: ISO 21771:2007, clause 7 (backlash); from memory.
    /// </summary>
    /// <param name="first">One; its thinning is not counted.</param>
    /// <param name="second">The other; its thinning is not counted.</param>
    /// <param name="distance">Centre distance, mm; with a rack the height of the gear's centre over the rack's reference line.</param>
    /// <param name="backlash">Circumferential backlash at the working circle, mm.</param>
    public static double TotalThinningFor(ToothData first, ToothData second, double distance, double backlash)
    {
        if (PairLayout.Objection(first, second) is not null)
        {
            return 0;
        }

        PairLayout layout = PairLayout.Of(first with { Thinning = 0 }, second with { Thinning = 0 });
        return distance < layout.LeastDistance ? 0 : (backlash - layout.BacklashAt(distance)) / layout.BacklashOfThinning(distance);
    }
}
