using GearBlanks.Teeth;

namespace GearBlanks.Meshing;

/// <summary>Tooth thickness against backlash.</summary>
public static class Thickness
{
    /// <summary>
    /// The sum of both gears' thinnings on their reference circles, mm (arc), with which a pair has a circumferential backlash at a distance:
    /// (j - j0) m (z1 + z2) / (2 a), with j0 the backlash at that distance without thinning. Negative where thicker teeth would be needed;
    /// 0 where the pair has no line of action there. Exact: a thinned tooth has the same involutes, turned, so the loss as an angle is the same
    /// on every circle. Source: ISO 21771:2007, clause 7 (backlash); from memory.
    /// </summary>
    /// <param name="first">First gear; its thinning is not counted.</param>
    /// <param name="second">Second gear; its thinning is not counted.</param>
    /// <param name="distance">Centre distance, mm.</param>
    /// <param name="backlash">Circumferential backlash at the working circle, mm.</param>
    public static double TotalThinningFor(GearData first, GearData second, double distance, double backlash)
    {
        double alpha = first.Rack.PressureAngle;
        double sum = first.ReferenceDiameter + second.ReferenceDiameter;
        double cosine = sum * Math.Cos(alpha) / (2 * distance);
        if (cosine > 1)
        {
            return 0;
        }

        double unthinned = 2 * distance * (InvoluteFunction.Inv(Math.Acos(cosine)) - InvoluteFunction.Inv(alpha)
            - (2 * (first.ProfileShift + second.ProfileShift) * Math.Tan(alpha) / (first.Teeth + second.Teeth)));
        return (backlash - unthinned) * sum / (2 * distance);
    }
}
