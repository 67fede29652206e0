using GearBlanks.Teeth;

namespace GearBlanks.Trains.Closing;

/// <summary>How far a tip may reach at a distance.</summary>
internal static class TipFitting
{
    // On the grid of hundredths of a millimetre, as people write them.
    private const double Grid = 100;

    /// <summary>
    /// The tip diameter, of a rack tip height, with a clearance from the mate's root circle, mm, on the safe side of the grid of hundredths; null where the mate has no root or
    /// the job gives the tip.
    /// </summary>
    public static double? Longest(ToothData one, ToothData mate, double distance, double clearance)
    {
        if (one is GearData { TipDiameter: not null } or RackBarData { TipHeight: not null } || RootOf(mate) is not { } root)
        {
            return null;
        }

        return (one, mate) switch
        {
            (RingData, _) => Math.Ceiling(2 * (distance + root + clearance) * Grid) / Grid,
            (_, RingData) => Math.Floor(2 * (root - distance - clearance) * Grid) / Grid,
            (RackBarData, _) => Math.Floor((distance - root - clearance) * Grid) / Grid,
            _ => Math.Floor(2 * (distance - root - clearance) * Grid) / Grid,
        };
    }

    /// <summary>The numbers with a tip that is no longer than one; a shorter one stays.</summary>
    public static ToothData NoLonger(ToothData data, double longest)
    {
        bool isLonger = data switch
        {
            RingData ring => longest > TipOf(ring),
            GearData gear => longest < TipOf(gear),
            RackBarData bar => longest < (bar.TipHeight ?? (bar.Module * (bar.Rack.Addendum + bar.ProfileShift))),
            _ => false,
        };
        return isLonger ? data.WithTip(longest) : data;
    }

    private static double TipOf(GearData gear) => gear.TipDiameter
        ?? gear.ReferenceDiameter + (2 * (gear is RingData ? -1 : 1) * gear.Module * (gear.Rack.Addendum + gear.ProfileShift));

    // Radius of the root circle, of a rack height of the root line.
    private static double? RootOf(ToothData data)
    {
        try
        {
            return Toothing.Of(data) switch
            {
                RackBar bar => bar.RootHeight,
                Gear gear => gear.RootRadius,
                _ => null,
            };
        }
        catch (GearGeometryException)
        {
            return null;
        }
    }
}
