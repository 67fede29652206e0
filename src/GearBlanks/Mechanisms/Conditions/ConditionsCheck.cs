using System.Collections.Immutable;
using GearBlanks.Findings;
using GearBlanks.Meshing;
using GearBlanks.Meshing.Builds;

namespace GearBlanks.Mechanisms.Conditions;

/// <summary>What the conditions make of a mechanism: every mesh at its bounds, and many random builds.</summary>
internal static class ConditionsCheck
{
    public static (ConditionsReport? Report, IEnumerable<Finding> Findings) Of(Mechanism mechanism)
    {
        if (mechanism.Conditions is not { } plan)
        {
            return (null, []);
        }

        Spread spread = plan.Builds.IsNormal ? Spread.Normal : Spread.Uniform;
        BuildTally tally = BuildRun.Of(plan.Train, spread, plan.Builds.Seed, plan.Builds.Count);
        ImmutableDictionary<string, string> drivers = Drivers.Of(mechanism);
        ImmutableArray<MeshConditions> meshes = [.. mechanism.Meshes.Select((mesh, i) =>
            Under(mesh, plan.Train.Meshes[i].Build, plan.Overlaps[i], spread, tally.Meshes[i], tally.Builds, drivers.GetValueOrDefault(mesh.Name)))];
        var report = new ConditionsReport(
            tally.Builds, plan.Builds.Seed, plan.Builds.IsNormal, Share(tally.Binding, tally.Builds), Share(tally.Rattling, tally.Builds), plan.Standard, meshes);
        IEnumerable<Finding> findings = mechanism.Meshes
            .SelectMany((mesh, i) => ConditionsFindings.OnMesh(mesh, meshes[i], plan.Train.Meshes[i].Build, plan.Builds, mechanism.Limits))
            .Concat(plan.GradeMisses.Select(miss => ConditionsFindings.OnGrade(miss.Gear, miss.Miss, plan.IsOutsideStandard)));
        return (report, findings);
    }

    private static double Share(int count, int of) => (double)count / of;

    private static MeshConditions Under(
        Mesh mesh, MeshBuild build, double? overlap, Spread spread, MeshTally tally, int builds, string? driver)
    {
        (double least, double greatest) = build.Bounds();
        ImmutableArray<Contribution> contributions = build.Contributions(spread);
        (double near, double far) = build.ActingDistances(mesh.Pair);
        bool isFirst = driver == mesh.First.Name;
        return new MeshConditions(
            mesh.Name, least, build.AsDrawn, greatest, build.Mean(spread), 3 * Math.Sqrt(contributions.Sum(one => one.Deviation * one.Deviation)),
            new DrawnBuilds(tally.Least, tally.Most, tally.Sum / builds, tally.Deviation(builds)), Share(tally.Binding, builds), Share(tally.Rattling, builds), At(mesh.Pair, near), At(mesh.Pair, far), overlap,
            driver is null ? null : Approach.Share(mesh.Pair, isFirst), driver is not null && Drivers.IsStepUp(mesh, isFirst), contributions);
    }

    private static MeshAtDistance At(GearPair pair, double distance)
    {
        if (distance < pair.Layout.LeastDistance)
        {
            return new MeshAtDistance(distance, null, null, null);
        }

        GearPair at = GearPair.At(pair.First, pair.Second, distance);
        return new MeshAtDistance(distance, at.ContactRatio, at.FirstTipClearance, at.SecondTipClearance);
    }
}
