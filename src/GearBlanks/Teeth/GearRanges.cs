namespace GearBlanks.Teeth;

/// <summary>The ranges in which gears are made; each bound belongs to its range.</summary>
public static class GearRanges
{
    /// <summary>Fewest teeth.</summary>
    public const int LeastTeeth = 4;

    /// <summary>Most teeth.</summary>
    public const int MostTeeth = 1000;

    /// <summary>Least module, mm.</summary>
    public const double LeastModule = 0.05;

    /// <summary>Greatest module, mm.</summary>
    public const double GreatestModule = 50;

    /// <summary>Least profile shift coefficient.</summary>
    public const double LeastShift = -1;

    /// <summary>Greatest profile shift coefficient.</summary>
    public const double GreatestShift = 1.5;

    /// <summary>Least pressure angle, rad.</summary>
    public const double LeastPressureAngle = 5 * Math.PI / 180;

    /// <summary>Greatest pressure angle, rad.</summary>
    public const double GreatestPressureAngle = 45 * Math.PI / 180;

    // Turning degrees into radians and back may leave a bound by this much.
    private const double Rounding = 1e-12;

    // Bounds are shown to four decimals, rounded inwards, so that typing one in works.
    private const double Shown = 10_000;
    private const double DegreesInARadian = 180 / Math.PI;

    internal static void Require(GearData data)
    {
        Require("Tooth count", data.Teeth, LeastTeeth, MostTeeth);
        RequireTooth(data);
        if (data.TipDiameter is { } tip)
        {
            Require("Tip diameter, mm,", tip, 0, (2 * data.ReferenceDiameter) + (10 * data.Module));
        }

        if (data is RingData ring)
        {
            Require("Rim diameter, mm,", ring.RimDiameter, 0, 10 * (data.ReferenceDiameter + (10 * data.Module)));
            Require("Root fillet radius, mm,", ring.RootFilletRadius ?? 0, 0, 5 * data.Module);
        }
    }

    internal static void Require(RackBarData data)
    {
        RequireTooth(data);
        Require("Length of the rack, mm,", data.Length, 0, 10_000 * data.Module);
        Require("Distance of the back from the reference line, mm,", data.BackHeight, 0, 10_000 * data.Module);
        Require("Tip height of the rack, mm,", data.TipHeight ?? 0, -5 * data.Module, 5 * data.Module);
    }

    private static void RequireTooth(ToothData data)
    {
        Require("Module, mm,", data.Module, LeastModule, GreatestModule);
        Require("Profile shift coefficient", data.ProfileShift, LeastShift, GreatestShift);
        Require(
            "Pressure angle, degrees,", data.Rack.PressureAngle * DegreesInARadian,
            LeastPressureAngle * DegreesInARadian, GreatestPressureAngle * DegreesInARadian);
        Require("Addendum of the rack, modules,", data.Rack.Addendum, 0.1, 5);
        Require("Dedendum of the rack, modules,", data.Rack.Dedendum, 0.1, 5);
        Require("Fillet radius of the rack, modules,", data.Rack.FilletRadius, 0, 5);
        Require("Dedendum allowance of the rack, mm,", data.Rack.DedendumAllowance, 0, data.Module);
        Require("Thinning, mm,", data.Thinning, 0, data.Module * Math.PI / 2);
        if (data.Tip is { } tip)
        {
            RequireTip(tip, data.Module);
        }
    }

    private static void RequireTip(TipForm tip, double module)
    {
        Require("Tip round radius, mm,", tip.Round, 0, 5 * module);
        Require("Tip chamfer, mm,", tip.Chamfer, 0, 5 * module);
        Require("Tip relief, mm,", tip.Relief?.Amount ?? 0, 0, module / 2);
        Require("Start of the tip relief, mm,", tip.Relief?.Start ?? 0, -5 * module, (2 * MostTeeth * module) + (10 * module));
        if (tip.Round > 0 && tip.Chamfer > 0)
        {
            throw new GearGeometryException(
                "tip-round-and-chamfer", "A tip corner is rounded or chamfered, not both; chamfer, mm", tip.Chamfer, 0, "leave out the round or the chamfer");
        }
    }

    private static void Require(string what, double value, double least, double greatest)
    {
        if (!(value >= least - Rounding && value <= greatest + Rounding))
        {
            throw new GearGeometryException(
                "out-of-range", $"{what} is outside what can be made", value, value > greatest ? greatest : least,
                FormattableString.Invariant($"use {Math.Ceiling(least * Shown) / Shown:0.####} to {Math.Floor(greatest * Shown) / Shown:0.####}"));
        }
    }
}
