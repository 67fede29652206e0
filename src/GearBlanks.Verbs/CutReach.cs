using GearBlanks.Findings;
using GearBlanks.Mechanisms;
using GearBlanks.Mechanisms.Reach;

namespace GearBlanks.Verbs;

/// <summary>What a mill, or a beam that stays off roots, makes of a check that takes teeth as they are drawn.</summary>
internal static class CutReach
{
    /// <summary>The check with what the tools leave standing among its findings; as it is where there is nothing to add.</summary>
    /// <param name="report">The check.</param>
    /// <param name="gears">The gears as they are written.</param>
    /// <exception cref="Teeth.GearGeometryException">A tool finds no way along a gear's teeth: cutter-stuck, cutter-wider-than-ring.</exception>
    public static MechanismReport With(MechanismReport report, IEnumerable<WrittenGear> gears)
    {
        Dictionary<string, double?> tools = gears.ToDictionary(gear => gear.Name, ToolOf);
        Finding[] found = [.. ReachCheck.Of(report.Mechanism, gear => tools[gear.Name], ReachVerb.BuiltInRacks()).SelectMany(gear => gear.Findings)];
        return found.Length == 0 ? report : report with { Findings = [.. report.Findings.Concat(found).OrderByDescending(finding => finding.Level)] };
    }

    // The diameter asked for goes before the profile's; a beam that reaches the root leaves teeth as they are drawn.
    private static double? ToolOf(WrittenGear gear) =>
        gear.Kerf.Tool is null && !gear.MissesRoot ? null
        : gear.Kerf.Kerf is { } kerf ? Math.Max(kerf.X, kerf.Y)
        : gear.Kerf.Tool;
}
