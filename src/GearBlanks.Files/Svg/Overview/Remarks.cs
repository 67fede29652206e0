using GearBlanks.Findings;
using GearBlanks.Mechanisms;

namespace GearBlanks.Files.Svg.Overview;

/// <summary>What is said in sentences under the table.</summary>
internal static class Remarks
{
    public static string Verdict(MechanismReport report)
    {
        int fails = report.Findings.Count(finding => finding.Level == Level.Fails);
        int tight = report.Findings.Count(finding => finding.Level == Level.Tight);
        return (fails, tight) switch
        {
            (0, 0) => "All checks pass.",
            (0, _) => FormattableString.Invariant($"No check fails; tight: {tight}."),
            _ => FormattableString.Invariant($"Checks that fail: {fails}; tight: {tight}."),
        };
    }

    public static IEnumerable<string> Failing(MechanismReport report) => report.Findings
        .Where(finding => finding.Level == Level.Fails)
        .Select(finding => $"{finding.Name}, {finding.Place}: {finding.Message}");

    public static IEnumerable<string> OutOfPhase(Mechanism mechanism) => MeshedPhases.Of(mechanism).OutOfPhase
        .Select(gap => $"{gap.Mesh.Name}: drawn {Words.Mm(Math.Abs(gap.Offset))} beside the gap, because other meshes already hold both gears.");

    public static IEnumerable<string> Carried(Mechanism mechanism) => mechanism.Axes
        .Where(axis => axis.CarriedBy is not null)
        .Select(axis => $"{axis.Name}, carried by {axis.CarriedBy}");

    public static IEnumerable<string> Hands(MechanismReport report) => report.Hands.Select(hand => hand.Timing is { } timing
        ? $"{hand.Hand.Name}, on {hand.Hand.Sandwich}: {Error(timing.ErrorPpm)}{Drift(timing.SecondsToOneDegree)}"
        : $"{hand.Hand.Name}, on {hand.Hand.Sandwich}: not driven");

    private static string Error(double ppm) => ppm == 0
        ? "exact"
        : $"{Words.Figure(Math.Abs(ppm), "ppm")} {(ppm > 0 ? "slow" : "fast")}";

    private static string Drift(double? seconds) => seconds is { } drift
        ? $", one degree out after {Words.Time(drift)}"
        : "";
}
