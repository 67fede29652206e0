using GearBlanks.Findings;

namespace GearBlanks.Rolling;

/// <summary>What there is to say of a roll.</summary>
public static class RollCheck
{
    private const string Source = "geometry";
    private const double DegreesInARadian = 180 / Math.PI;

    /// <summary>The findings, worst first.</summary>
    /// <param name="report">The roll.</param>
    /// <param name="place">What was rolled, in words.</param>
    /// <param name="limits">The limits.</param>
    public static IReadOnlyList<Finding> Of(RollReport report, string place, RollLimits limits)
    {
        Limit depth = limits.Interference.Times(report.Request.Second.Pitch * report.WorkingRadius / Math.PI);
        return [.. new[] { Lost(report, place), InTheWay(report, place, depth), Play(report, place, depth), Pitch(report, place, limits.Pitch) }
            .OrderByDescending(finding => finding.Level)];
    }

    private static Finding Lost(RollReport report, string place) => report.LostAt is { } turn
        ? new Finding("roll-contact", place, Level.Fails, Degrees(turn), null, "degrees", Source,
            $"With {report.Request.First.Name} turned by {Words.Figure(Degrees(turn), "degrees")} no tooth stops the other gear any more.",
            Closer(report))
        : new Finding("roll-contact", place, Level.Ok, 0, null, "degrees", Source, "There is always a tooth that drives.", null);

    private static Finding InTheWay(RollReport report, string place, Limit limit)
    {
        (Level level, double? bound) = limit.Judge(report.Interference?.Depth ?? 0);
        return report.Interference is { } found
            ? new Finding("roll-interference", place, level, found.Depth, bound, "mm", limit.Source,
                $"{What(report, found)} by {Words.Mm(found.Depth)}, at tooth {found.Tooth} of {report.Request.First.Name}, radius {Words.Mm(found.FirstRadius)} on it and {(report.Request.Second.Kind == RollKind.Rack ? "height" : "radius")} {Words.Mm(found.SecondRadius)} on {report.Request.Second.Name}, turned by {Words.Figure(Degrees(found.Turn), "degrees")}.",
                level == Level.Ok ? null : Remedy(report, found))
            : new Finding("roll-interference", place, level, 0, bound, "mm", limit.Source, "Nothing is in the way of the flanks.", null);
    }

    private static Finding Play(RollReport report, string place, Limit limit)
    {
        double least = report.Backlash.Least * report.WorkingRadius;
        bool isKnown = report.LostAt is null && double.IsFinite(least);
        Level level = isKnown ? limit.Judge(Math.Max(0, -least)).Level : Level.Ok;
        return new Finding("roll-backlash", place, level, double.IsFinite(least) ? least : 0, 0, "mm", limit.Source,
            !double.IsFinite(least) ? "Where nothing touches there is no backlash to tell."
                : level == Level.Ok ? $"The least circumferential backlash of the roll is {Words.Mm(least)}."
                : report.Interference is { Kind: not RollObstacle.Flanks } ? $"What is in the way leaves no play: the least circumferential backlash of the roll is {Words.Mm(least)}."
                : $"The teeth are wider than their gaps: the least circumferential backlash of the roll is {Words.Mm(least)}.",
            level == Level.Ok ? null
                : report.Interference is { Kind: not RollObstacle.Flanks } ? "Mend what is in the way first: then the flanks tell their play."
                : Apart(report, -least));
    }

    // Pairs of one design have one base pitch; drawings may not.
    private static Finding Pitch(RollReport report, string place, Limit limit)
    {
        (RollGear first, RollGear second) = (report.Request.First, report.Request.Second);
        double difference = Math.Abs(first.BasePitch - second.BasePitch) / second.BasePitch;
        return Check.Of(
            "roll-pitch", place, double.IsFinite(difference) ? difference : 0, limit, "", $"Difference of the base pitches, {Words.Mm(first.BasePitch)} and {Words.Mm(second.BasePitch)}, as a share",
            _ => "Roll gears of one module and pressure angle: at every change of teeth one of them jumps by this difference.");
    }

    private static string What(RollReport report, RollInterference found) => found.Kind switch
    {
        RollObstacle.Fillet => "A tip digs into the other gear's fillet",
        RollObstacle.Root => "A tip reaches below the other gear's root",
        _ => "A tooth is wider than its gap",
    };

    private static string Remedy(RollReport report, RollInterference found) => found.Kind switch
    {
        RollObstacle.Fillet => $"Round or shorten the tips so that they clear by {Words.Mm(Words.RoundedUp(found.Depth))}, or cut the roots deeper or with a smaller tool.",
        RollObstacle.Root => $"{Opening(report)} the distance by {Words.Mm(Words.RoundedUp(found.Depth))}, or shorten the tips by as much.",
        _ => Apart(report, -report.Backlash.Least * report.WorkingRadius),
    };

    // 2 tan alpha_w of play for each mm of distance, alpha_w from the base pitch over the pitch on the working circle.
    private static string Apart(RollReport report, double missing)
    {
        double pitch = report.Request.Second.Pitch * report.WorkingRadius;
        double cosine = Math.Clamp(report.Request.Second.BasePitch / pitch, 0, 0.999);
        double change = missing * cosine / (2 * Math.Sqrt((1 - cosine) * (1 + cosine)));
        return report.DoubleFlank is { } tight && double.IsFinite(tight.Least)
            ? $"Set the distance to {Words.Mm(tight.Least)}, at which the pair just turns, or {(IsRing(report) ? "less" : "more")}."
            : $"{Opening(report)} the distance by about {Words.Mm(Words.RoundedUp(change))}, or thin the teeth by {Words.Mm(Words.RoundedUp(missing))} in all.";
    }

    private static string Opening(RollReport report) => IsRing(report) ? "Close" : "Open";

    private static string Closer(RollReport report) =>
        $"{(IsRing(report) ? "Open" : "Close")} the distance, or use longer tips, until the path of contact is longer than a base pitch, {Words.Mm(report.Request.First.BasePitch)}.";

    private static bool IsRing(RollReport report) => report.Request.First.Kind == RollKind.Ring || report.Request.Second.Kind == RollKind.Ring;

    private static double Degrees(double turn) => turn * DegreesInARadian;
}
