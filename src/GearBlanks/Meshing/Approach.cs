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
        if (pair.ContactEnds is not var (root, tip) || tip.FromPitchPoint <= root.FromPitchPoint)
        {
            return 0;
        }

        // Contact runs from the root to the tip of an external gear that drives: of a pair's second one where the first is a ring or a rack.
        (double start, double end) = (root.FromPitchPoint, tip.FromPitchPoint);
        double pitchPoint = Math.Clamp(0, start, end);
        return (firstDrives == pair.First is ExternalGear ? pitchPoint - start : end - pitchPoint) / (end - start);
    }
}
