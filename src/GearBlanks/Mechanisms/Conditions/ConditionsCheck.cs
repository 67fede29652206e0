using System.Collections.Immutable;
using GearBlanks.Findings;
using GearBlanks.Meshing;
using GearBlanks.Meshing.Builds;
using GearBlanks.Teeth;

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
        ImmutableArray<MeshConditions> meshes = SideBySide.Select(mechanism.Meshes, (mesh, i) =>
            Under(mesh, plan.Train.Meshes[i].Build, plan.Overlaps[i], spread, tally.Meshes[i], tally.Builds, drivers.GetValueOrDefault(mesh.Name)));
        var report = new ConditionsReport(
            tally.Builds, plan.Builds.Seed, plan.Builds.IsNormal, Share(tally.Binding, tally.Builds), Share(tally.Rattling, tally.Builds), plan.Standard, meshes);
        IEnumerable<Finding> findings = SideBySide
            .SelectMany(mechanism.Meshes.Index(), at => ConditionsFindings.OnMesh(at.Item, meshes[at.Index], plan.Train.Meshes[at.Index].Build, plan.Builds, mechanism.Limits))
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
            new DrawnBuilds(tally.Least, tally.Most, tally.Sum / builds, tally.Deviation(builds)), Share(tally.Binding, builds), Share(tally.Rattling, builds), At(mesh.Pair, build, near, -1), At(mesh.Pair, build, far, 1), overlap,
            driver is null ? null : Approach.Share(mesh.Pair, isFirst), driver is not null && Drivers.IsStepUp(mesh, isFirst), contributions);
    }

    // The thickest teeth go with the end of the distances that takes play away.
    private static MeshAtDistance At(GearPair pair, MeshBuild build, double distance, int side)
    {
        (double first, double second) = build.Thicker(side * pair.Layout.Sense);
        if (distance == pair.CentreDistance && first == 0 && second == 0)
        {
            return new MeshAtDistance(distance, pair);
        }

        try
        {
            return new MeshAtDistance(distance, GearPair.At(Thicker(pair.First, first), Thicker(pair.Second, second), distance));
        }
        catch (GearGeometryException)
        {
            return new MeshAtDistance(distance, null);
        }
    }

    private static Toothing Thicker(Toothing one, double by) => by == 0 ? one : one.WithThickness(one.ToothThickness + by);
}
