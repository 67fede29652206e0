using System.Globalization;
using GearBlanks.Findings;

namespace GearBlanks.Teeth;

/// <summary>What there is to say of the teeth of one gear, ring or rack: undercut, tip thickness, a pointed tip.</summary>
public static class ToothCheck
{
    /// <summary>The findings on teeth of any kind: undercut, which only external ones have, and the tip.</summary>
    /// <param name="teeth">The gear, ring or rack.</param>
    /// <param name="place">What it is called in findings, for example <c>gear day wheel</c>.</param>
    /// <param name="limits">The limits.</param>
    public static IEnumerable<Finding> Of(Toothing teeth, string place, Limits limits)
    {
        double m = teeth.Module;
        if (teeth is ExternalGear gear)
        {
            yield return Check.Of(
                "undercut-depth", place, gear.Undercut?.Depth ?? 0, limits.UndercutDepth.Times(m), "mm",
                "Depth of undercut on each flank", _ => UndercutAdvice(gear));
        }

        Limit thickness = limits.TipThickness.Times(m);
        var advice = new TipAdvice(teeth, thickness.TightBelow ?? thickness.FailsBelow ?? 0);
        yield return teeth.IsPointed
            ? Pointed(teeth, place, advice)
            : Check.Of("tip-thickness", place, teeth.TipThickness, thickness, "mm", "Tooth thickness at the tip", _ => advice.Sentence());
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

    private static Finding Pointed(Toothing teeth, string place, TipAdvice advice)
    {
        (double asked, double point, string words) = teeth switch
        {
            RingGear ring => (2 * ring.NominalTipRadius, 2 * ring.TipRadius, "at diameter {0}, outside the tip diameter {1}"),
            Gear gear => (2 * gear.NominalTipRadius, 2 * gear.TipRadius, "at diameter {0}, inside the tip diameter {1}"),
            RackBar bar => (bar.NominalTipHeight, bar.TipHeight, "at height {0}, below the tip height {1}"),
            _ => throw new InvalidOperationException("Teeth of an unknown kind."),
        };
        string where = string.Format(CultureInfo.InvariantCulture, words, Words.Mm(point), Words.Mm(asked));
        return new Finding(
            "pointed-tip", place, Level.Fails, asked, point, "mm", "geometry of the involute", $"The flanks meet in a point {where}.", advice.Sentence());
    }
}
