using GearBlanks.Teeth;

namespace GearBlanks.Meshing;

/// <summary>Tip diameters chosen for a pair rather than for each gear alone.</summary>
public static class TipRule
{
    /// <summary>
    /// Both gears with the tip diameters that keep the rack's tip clearance at a distance: ha1 = (haP + y - x2) m and ha2 = (haP + y - x1) m, with
    /// y = (a - m (z1 + z2) / 2) / m. Source: JGMA/KHK practice for profile-shifted pairs, Gear Technical Reference, Table 4.3; from memory.
    /// A pinion and its ring keep the same clearance with (haP - y - x) m and y = (a - m (z2 - z1) / 2) / m; worked out here, no source.
    /// </summary>
    /// <param name="first">First gear.</param>
    /// <param name="second">Second gear.</param>
    /// <param name="distance">Centre distance, mm.</param>
    /// <exception cref="GearGeometryException">The two do not mesh at any distance.</exception>
    public static (GearData First, GearData Second) WithClearance(GearData first, GearData second, double distance)
    {
        PairLayout layout = PairLayout.Of(first, second);
        double reference = ((Side(first) * first.ReferenceDiameter) + (Side(second) * second.ReferenceDiameter)) / 2;
        double apart = layout.Sense * (distance - (layout.Sense * reference)) / first.Module;
        return (With(first, second, apart), With(second, first, apart));

        double Side(GearData gear) => gear is RingData ? -1 : 1;
    }

    private static GearData With(GearData gear, GearData mate, double apart)
    {
        double addendum = gear.Module * (gear.Rack.Addendum + apart - mate.ProfileShift);
        return gear with { TipDiameter = gear.ReferenceDiameter + (gear is RingData ? -2 * addendum : 2 * addendum) };
    }
}
