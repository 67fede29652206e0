using GearBlanks.Teeth;

namespace GearBlanks.Meshing;

/// <summary>The path of contact on either side of the pitch point.</summary>
internal static class Approach
{
    /// <summary>
    /// Share of the path of contact before the pitch point, 0 to 1, where flanks slide into one another; 0 where there is no contact. Source: ISO 21771:2007,
    /// clause 5 (approach and recess path); from memory.
    /// </summary>
    /// <param name="pair">The pair.</param>
    /// <param name="firstDrives">True where the first one drives the second.</param>
    public static double Share(GearPair pair, bool firstDrives)
    {
        (double start, double end) = pair.PathOfContact;
        if (end <= start)
        {
            return 0;
        }

        (Gear measured, bool isFirst) = Measured(pair);
        double pitchPoint = Math.Clamp(measured.BaseRadius * Math.Tan(pair.WorkingPressureAngle), start, end);
        return (firstDrives == isFirst ? pitchPoint - start : end - pitchPoint) / (end - start);
    }

    // From whose base circle the path is measured: contact runs from its root to its tip where it drives.
    private static (Gear Gear, bool IsFirst) Measured(GearPair pair) => pair switch
    {
        RingPair ring => (ring.Pinion, ReferenceEquals(ring.Pinion, ring.First)),
        RackPair rack => (rack.Gear, ReferenceEquals(rack.Gear, rack.First)),
        _ => ((Gear)pair.First, true),
    };
}
