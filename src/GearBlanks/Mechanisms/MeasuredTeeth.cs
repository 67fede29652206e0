using GearBlanks.Findings;
using GearBlanks.Teeth;

namespace GearBlanks.Mechanisms;

/// <summary>Teeth as they were measured: they mesh as measured, and are drawn as the job says.</summary>
internal static class MeasuredTeeth
{
    /// <summary>The drawn teeth with the measured thickness: made by the generating shift, as thinning is.</summary>
    /// <exception cref="GearGeometryException">The base tangent cannot be measured over so many teeth, or no such teeth exist.</exception>
    public static Toothing Of(Toothing drawn, JobMeasuredTeeth measured) =>
        drawn.WithThickness(measured.Thickness ?? ThicknessOf(drawn, measured.Span!.Value, measured.SpanTeeth));

    /// <summary>The finding on how far measured and drawn teeth differ; none where nothing was measured.</summary>
    public static IEnumerable<Finding> Check(MountedGear gear, Limits limits)
    {
        if (gear.Measured is { } measured)
        {
            yield return Findings.Check.Of(
                "tooth-thickness-disagreement", Places.Gear(gear.Name), Math.Abs(measured.ToothThickness - gear.Toothing.ToothThickness), limits.ToothThicknessDisagreement, "mm",
                $"Difference between the measured tooth thickness {Words.Mm(measured.ToothThickness)} and the drawn {Words.Mm(gear.Toothing.ToothThickness)}",
                _ => $"Measure again, or draw the teeth so: {Drawn(gear.Toothing.Data, measured.ToothThickness)}. The check uses the measured teeth.");
        }
    }

    private static string Drawn(ToothData data, double thickness)
    {
        ToothData same = data.WithThickness(thickness);
        string shift = same.ProfileShift == data.ProfileShift ? "" : FormattableString.Invariant($"profile-shift = {same.ProfileShift:0.####}, ");
        return $"{shift}thinning = {Words.Mm(same.Thinning)}";
    }

    private static double ThicknessOf(Toothing drawn, double span, int teeth)
    {
        if (drawn is not ExternalGear gear)
        {
            throw new GearGeometryException("span-inside", "A base tangent is measured over the teeth of an external gear only; length, mm", span, 0, "give measured-tooth-thickness");
        }

        int best = Span.BestCount(gear.Data);
        if (teeth >= gear.Teeth)
        {
            throw new GearGeometryException("span-too-wide", "The base tangent cannot go over all teeth of the gear; teeth", teeth, gear.Teeth - 1, $"measure over {best} teeth");
        }

        // Where the faces touch depends on what was measured, so a length that is read wrongly shows here too.
        double radius = Span.ContactRadius(gear.Data, span);
        return radius < gear.FormRadius || radius > gear.TipFormRadius
            ? throw new GearGeometryException(
                "span-beside-flank", $"Over {teeth} teeth this length touches beside the flanks; radius where it touches, mm", radius, radius < gear.FormRadius ? gear.FormRadius : gear.TipFormRadius,
                FormattableString.Invariant($"measure over {best} teeth, which is {Span.Over(gear.Data, best):0.####} mm as drawn"))
            : Span.ThicknessOf(gear.Data, span, teeth);
    }
}
