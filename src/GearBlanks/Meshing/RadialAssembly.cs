using GearBlanks.Teeth;

namespace GearBlanks.Meshing;

/// <summary>Whether a pinion can be put into a ring along the line of centres.</summary>
public static class RadialAssembly
{
    // With so many more teeth than the pinion's every ordinary ring lets it in.
    private const int MostDifference = 200;

    /// <summary>
    /// The smallest tooth count of a ring that still lets the pinion in along the line of centres, with the pair's pinion, backlash, profile shifts and
    /// thinnings, and tips as far from the reference circle as they are; null where none up to 200 teeth more than the pinion's does.
    /// </summary>
    /// <param name="pair">The pair.</param>
    public static int? LeastRingTeeth(RingPair pair)
    {
        double backlash = pair.CircumferentialBacklash;
        RingData data = pair.Ring.Data;
        double tip = (2 * pair.Ring.NominalTipRadius) - data.ReferenceDiameter;
        double rim = data.RimDiameter - data.ReferenceDiameter;

        // From above: below the least count smaller rings may happen to let the pinion in again with hardly any flank left.
        int? least = null;
        for (int teeth = Math.Min(pair.Pinion.Teeth + MostDifference, GearRanges.MostTeeth); teeth > pair.Pinion.Teeth; teeth--)
        {
            double reference = teeth * data.Module;
            if (!LetsIn(pair.Pinion, data with { Teeth = teeth, TipDiameter = reference + tip, RimDiameter = reference + rim }, backlash))
            {
                break;
            }

            least = teeth;
        }

        return least;
    }

    private static bool LetsIn(ExternalGear pinion, RingData data, double backlash)
    {
        try
        {
            RingGear ring = RingGear.Create(data);
            return ((RingPair)GearPair.At(pinion, ring, GearPair.DistanceFor(pinion, ring, backlash))).TrimmingClearance is null or >= 0;
        }
        catch (GearGeometryException)
        {
            return false;
        }
    }
}
