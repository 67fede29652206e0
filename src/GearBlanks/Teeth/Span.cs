namespace GearBlanks.Teeth;

/// <summary>
/// The base tangent length of an external gear: the distance over several teeth between two parallel faces that touch the flanks, as a caliper measures it.
/// Source: ISO 21771:2007, clause 8 (from memory): W = m cos alpha ((k - 1/2) pi + z inv alpha) + 2 xE m sin alpha.
/// </summary>
public static class Span
{
    /// <summary>Base tangent length over a number of teeth, mm.</summary>
    /// <param name="gear">The gear.</param>
    /// <param name="teeth">Teeth k between the faces, 1 or more and fewer than the gear has.</param>
    /// <exception cref="ArgumentOutOfRangeException">There are no such teeth.</exception>
    public static double Over(GearData gear, int teeth)
    {
        Require(gear, teeth);
        return Math.Cos(gear.Rack.PressureAngle) * (gear.ToothThickness + Rest(gear, teeth));
    }

    /// <summary>Tooth thickness on the reference circle that makes a base tangent length, mm (arc).</summary>
    /// <param name="gear">The gear, whatever its own thickness.</param>
    /// <param name="span">Base tangent length, mm.</param>
    /// <param name="teeth">Teeth k between the faces, 1 or more and fewer than the gear has.</param>
    /// <exception cref="ArgumentOutOfRangeException">There are no such teeth.</exception>
    public static double ThicknessOf(GearData gear, double span, int teeth)
    {
        Require(gear, teeth);
        return (span / Math.Cos(gear.Rack.PressureAngle)) - Rest(gear, teeth);
    }

    /// <summary>Radius at which both faces touch where they touch alike, mm: the root of rb^2 + (W/2)^2.</summary>
    public static double ContactRadius(GearData gear, double span) => double.Hypot(gear.BaseRadius, span / 2);

    /// <summary>The tooth count whose faces touch nearest to the middle of the flanks, at the radius r + x m.</summary>
    public static int BestCount(GearData gear)
    {
        double middle = Math.Max(gear.BaseRadius, (gear.ReferenceDiameter / 2) + (gear.ProfileShift * gear.Module));
        double span = 2 * Math.Sqrt((middle * middle) - (gear.BaseRadius * gear.BaseRadius));
        double basePitch = Math.PI * gear.Module * Math.Cos(gear.Rack.PressureAngle);
        return Math.Clamp((int)Math.Round(1 + ((span - Over(gear, 1)) / basePitch), MidpointRounding.AwayFromZero), 1, gear.Teeth - 1);
    }

    // All of the length but one tooth's thickness, laid on the reference circle.
    private static double Rest(GearData gear, int teeth) =>
        gear.Module * (((teeth - 1) * Math.PI) + (gear.Teeth * InvoluteFunction.Inv(gear.Rack.PressureAngle)));

    private static void Require(GearData gear, int teeth)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(teeth, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(teeth, gear.Teeth);
    }
}
