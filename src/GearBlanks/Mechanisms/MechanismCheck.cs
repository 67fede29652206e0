using GearBlanks.Blanks;
using GearBlanks.Findings;
using GearBlanks.Mechanisms.Conditions;
using GearBlanks.Mechanisms.Stacks;
using GearBlanks.Meshing;
using GearBlanks.Teeth;

namespace GearBlanks.Mechanisms;

/// <summary>Checks a whole mechanism: every gear, mesh, sandwich, train and hand.</summary>
public static class MechanismCheck
{
    /// <summary>The report on a mechanism.</summary>
    public static MechanismReport Of(Mechanism mechanism)
    {
        TrainReport train = TrainCheck.Of(mechanism);
        MeshedPhases? phases = train.IsLocked ? null : MeshedPhases.Of(mechanism);
        IEnumerable<Finding> findings = SideBySide.SelectMany(mechanism.Gears, gear => OnGear(gear, mechanism.Limits).Concat(LeastFeatureCheck.Of(gear, mechanism.Machine)))
            .Concat(SideBySide.SelectMany(mechanism.Meshes, mesh => OnMesh(mesh, mechanism.Limits).Concat(FaceOverlapCheck.Of(mesh, mechanism))))
            .Concat(phases is null ? [] : PhaseCheck.Of(mechanism, phases))
            .Concat(SandwichCheck.Of(mechanism))
            .Concat(SharedAxesCheck.Of(mechanism))
            .Concat(StackCheck.Of(mechanism))
            .Concat(train.Findings);
        (ConditionsReport? conditions, IEnumerable<Finding> underConditions) = ConditionsCheck.Of(mechanism);
        return new MechanismReport(
            mechanism, [.. findings.Concat(underConditions).OrderByDescending(finding => finding.Level)], train.Speeds, train.Hands)
        {
            Stack = StackCheck.Report(mechanism, phases),
            Conditions = conditions,
        };
    }

    private static IEnumerable<Finding> OnGear(MountedGear gear, Limits limits) =>
        ToothCheck.Of(gear.Toothing, Places.Gear(gear.Name), limits)
            .Concat(MeasuredTeeth.Check(gear, limits))
            .Concat(WallCheck.Of(gear.Blank, Places.Gear(gear.Name), limits));

    private static IEnumerable<Finding> OnMesh(Mesh mesh, Limits limits)
    {
        string place = Places.Mesh(mesh.Name);
        foreach (Finding finding in PairCheck.Of(mesh.Pair, mesh.First.Name, mesh.Second.Name, place, limits, mesh.WantedBacklash))
        {
            yield return finding;
        }

        double miss = mesh.Pair.CircumferentialBacklash - mesh.WantedBacklash;
        yield return Check.Of(
            "backlash-miss", place, Math.Abs(miss), limits.BacklashMiss.Times(mesh.Pair.First.Module), "mm",
            $"Difference between the backlash {Words.Mm(mesh.Pair.CircumferentialBacklash)} and the wanted {Words.Mm(mesh.WantedBacklash)}",
            _ => PairAdvice.Backlash(mesh.Pair, mesh.First.Name, mesh.WantedBacklash));

        if (mesh.MeasuredDistance is { } measured)
        {
            yield return Check.Of(
                "distance-disagreement", place, Math.Abs(measured - mesh.DrawnDistance), limits.DistanceDisagreement, "mm",
                $"Difference between the measured centre distance {Words.Mm(measured)} and the axes' {Words.Mm(mesh.DrawnDistance)}",
                _ => $"Measure again, or move an axis by {Words.Mm(Math.Abs(measured - mesh.DrawnDistance))}: the check uses the measured distance.");
        }
    }
}
