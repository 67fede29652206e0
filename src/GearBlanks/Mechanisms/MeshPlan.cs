using System.Collections.Immutable;
using GearBlanks.Findings;
using GearBlanks.Meshing;
using GearBlanks.Teeth;

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
            first.Axis.Position.DistanceTo(second.Axis.Position),
            job.Backlash ?? defaults.Backlash ?? (limits.WantedBacklash * first.Module),
            job.ShareOfFirst ?? limits.BacklashShareOfFirst);
    }

    /// <exception cref="GearGeometryException">The gears cannot mesh at this distance.</exception>
    public Mesh Mesh(ImmutableDictionary<string, MountedGear> gears)
    {
        MountedGear first = gears[Job.First];
        MountedGear second = gears[Job.Second];
        return new Mesh(
            Job.Name, first, second, GearPair.At((ExternalGear)first.Blank.Gear, (ExternalGear)second.Blank.Gear, Distance), DrawnDistance, Job.MeasuredDistance, WantedBacklash);
    }
}
