using GearBlanks.Findings;
using MathNet.Numerics.RootFinding;

namespace GearBlanks.Teeth;

/// <summary>What there is to say of one gear's teeth: undercut, tip thickness, a pointed tip.</summary>
public static class ToothCheck
{
    /// <summary>The findings on teeth of any kind.</summary>
    public static IEnumerable<Finding> Of(Toothing teeth, string place, Limits limits) => teeth is ExternalGear gear ? Of(gear, place, limits) : [];

    /// <summary>The findings on a gear's teeth.</summary>
    /// <param name="gear">The gear.</param>
    /// <param name="place">What it is called in findings, for example <c>gear day wheel</c>.</param>
    /// <param name="limits">The limits.</param>
    public static IEnumerable<Finding> Of(ExternalGear gear, string place, Limits limits)
    {
        double m = gear.Module;
        yield return Check.Of(
            "undercut-depth", place, gear.Undercut?.Depth ?? 0, limits.UndercutDepth.Times(m), "mm",
            "Depth of undercut on each flank", _ => UndercutAdvice(gear));
        if (gear.IsPointed)
        {
            yield return new Finding(
                "pointed-tip", place, Level.Fails, 2 * gear.NominalTipRadius, 2 * gear.TipRadius, "mm", "geometry of the involute",
                $"The flanks meet in a point at diameter {Words.Mm(2 * gear.TipRadius)}, inside the tip diameter {Words.Mm(2 * gear.NominalTipRadius)}.",
                TipAdvice(gear, limits.TipThickness.Times(m)));
        }
        else
        {
            yield return Check.Of(
                "tip-thickness", place, gear.TipThickness, limits.TipThickness.Times(m), "mm",
                "Tooth thickness at the tip", _ => TipAdvice(gear, limits.TipThickness.Times(m)));
        }
    }

    /// <summary>
    /// The least profile shift coefficient, thinning included, without undercut: h - z sin^2(alpha) / 2 with h = hfP - rho fP (1 - sin alpha).
    /// Source: ISO 21771:2007, clause 5 (limit of undercut), for a rounded rack; from memory.
    /// </summary>
    public static double LeastShiftWithoutUndercut(GearData data)
    {
        double sine = Math.Sin(data.Rack.PressureAngle);
        double dedendum = data.Rack.Dedendum + (data.Rack.DedendumAllowance / data.Module);
        double forGenerating = dedendum - (data.Rack.FilletRadius * (1 - sine)) - (data.Teeth * sine * sine / 2);
        return forGenerating + data.ProfileShift - data.GeneratingShift;
    }

    private static string UndercutAdvice(ExternalGear gear)
    {
        double least = LeastShiftWithoutUndercut(gear.Data);
        if (least > GearRanges.GreatestShift)
        {
            return "No profile shift in the range avoids it: use more teeth, or accept the weaker neck.";
        }

        double change = Math.Ceiling((least - gear.Data.ProfileShift) * 100) / 100;
        return $"Raise the profile shift by {Words.Change(change)} to {Words.Figure(Math.Ceiling(least * 100) / 100, "")}"
            + ", and lower the mate's by as much to keep the distance, or accept the weaker neck.";
    }

    // The tip diameter at which the land reaches its comfortable bound, rounded down so that typing it in is enough.
    private static string? TipAdvice(ExternalGear gear, Limit thickness)
    {
        double wanted = thickness.TightBelow ?? thickness.FailsBelow ?? 0;
        double Excess(double radius) => (2 * radius * gear.HalfAngleAt(radius)) - wanted;
        if (Excess(gear.FormRadius) <= 0 || Excess(gear.TipRadius) >= 0)
        {
            return "Lower the profile shift or the thinning.";
        }

        double radius = Brent.FindRoot(Excess, gear.FormRadius, gear.TipRadius, 1e-9, 100);
        double diameter = Math.Floor(radius * 2 * 100) / 100;
        return $"Lower the tip diameter to {Words.Mm(diameter)}, or lower the profile shift.";
    }
}
