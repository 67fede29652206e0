using GearBlanks.Teeth;

namespace GearBlanks.Meshing;

/// <summary>Tip diameters chosen for a pair rather than for each gear alone.</summary>
public static class TipRule
{
    /// <summary>
    /// Both gears with the tip diameters that keep the rack's tip clearance at a distance: ha1 = (haP + y - x2) m and ha2 = (haP + y - x1) m, with
    /// y = (a - m (z1 + z2) / 2) / m. Source: JGMA/KHK practice for profile-shifted pairs, Gear Technical Reference, Table 4.3; from memory.
    /// </summary>
    /// <param name="first">First gear.</param>
    /// <param name="second">Second gear.</param>
    /// <param name="distance">Centre distance, mm.</param>
    public static (GearData First, GearData Second) WithClearance(GearData first, GearData second, double distance)
    {
        double apart = (distance - ((first.ReferenceDiameter + second.ReferenceDiameter) / 2)) / first.Module;
        return (With(first, second, apart), With(second, first, apart));
    }

    private static GearData With(GearData gear, GearData mate, double apart) => gear with
    {
        TipDiameter = gear.ReferenceDiameter + (2 * gear.Module * (gear.Rack.Addendum + apart - mate.ProfileShift)),
    };
}
