using System.Collections.Immutable;
using GearBlanks.Findings;
using GearBlanks.Meshing;

namespace GearBlanks.Mechanisms;

/// <summary>A mesh with its real distance and wanted backlash, before its gears are worked out.</summary>
internal sealed record MeshPlan(JobMesh Job, GearPlan First, GearPlan Second, double DrawnDistance, double WantedBacklash, double ShareOfFirst)
{
    /// <summary>The distance the frame really has, mm: measured beats drawn.</summary>
    public double Distance => Job.MeasuredDistance ?? DrawnDistance;

    public static MeshPlan Of(JobMesh job, ImmutableDictionary<string, GearPlan> gears, JobDefaults defaults, Limits limits)
    {
        GearPlan first = gears[job.First];
        GearPlan second = gears[job.Second];
        return new MeshPlan(
            job, first, second,
            DistanceOf(first, second),
            job.Backlash ?? defaults.Backlash ?? (limits.WantedBacklash * first.Module),
            job.ShareOfFirst ?? limits.BacklashShareOfFirst);
    }

    // A gear's distance from a rack is its height over the reference line, negative at the back of it.
    private static double DistanceOf(GearPlan first, GearPlan second) =>
        first.RackPlace?.HeightOf(second.Axis.Position)
        ?? second.RackPlace?.HeightOf(first.Axis.Position)
        ?? first.Axis.Position.DistanceTo(second.Axis.Position);

    /// <exception cref="Teeth.GearGeometryException">The gears cannot mesh at this distance.</exception>
    public Mesh Mesh(ImmutableDictionary<string, MountedGear> gears)
    {
        MountedGear first = gears[Job.First];
        MountedGear second = gears[Job.Second];
        return new Mesh(
            Job.Name, first, second, GearPair.At(first.Meshing, second.Meshing, Distance), DrawnDistance, Job.MeasuredDistance, WantedBacklash);
    }
}
