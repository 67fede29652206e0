using System.Collections.Immutable;
using GearBlanks.Files.Jobs;
using GearBlanks.Files.Keys;
using GearBlanks.Files.Profiles;
using GearBlanks.Mechanisms;
using GearBlanks.Rolling;
using GearBlanks.Teeth;

namespace GearBlanks.Verbs;

/// <summary>Two gears found, before they are rolled.</summary>
/// <param name="Name">What the pair is called.</param>
/// <param name="First">The one that drives; never a rack.</param>
/// <param name="Second">The other.</param>
/// <param name="Distance">Distance of the axes, mm.</param>
/// <param name="Remarks">What there is to say of them.</param>
internal sealed record RolledPair(string Name, RollGear First, RollGear Second, double Distance, ImmutableArray<string> Remarks)
{
    /// <summary>A mesh of a job at the distance that the frame really has.</summary>
    public static Outcome<RolledPair> OfJob(string file, string? name)
    {
        Outcome<Job> job = JobReader.Read(file);
        if (job.Value is null)
        {
            return job.Problems;
        }

        Outcome<Mechanism> mechanism = Resolver.Resolve(job.Value, ProfileFinder.BesideJob(file));
        if (mechanism.Value is null)
        {
            return mechanism.Problems;
        }

        Outcome<Mesh> mesh = MeshOf(mechanism.Value, name, file);
        return mesh.Value is null ? mesh.Problems : Of(mesh.Value);
    }

    private static Outcome<Mesh> MeshOf(Mechanism mechanism, string? name, string file)
    {
        string[] names = [.. mechanism.Meshes.Select(mesh => mesh.Name)];
        return (name, mechanism.Meshes) switch
        {
            (_, []) => CommandLine.Problem("--job", file, "This job has no mesh to roll", "a job in which gears mesh"),
            (null, [var only]) => only,
            (null, _) => CommandLine.Problem("--mesh", null, "This job has several meshes: say which is to be rolled", string.Join(", ", names)),
            _ => mechanism.Meshes.FirstOrDefault(mesh => mesh.Name == name) is { } found
                ? found
                : CommandLine.Problem("--mesh", name, "This job has no mesh of that name", string.Join(", ", names), Nearest.To(name, names)),
        };
    }

    private static Outcome<RolledPair> Of(Mesh mesh)
    {
        bool isTurned = mesh.First.Toothing is RackBar;
        (MountedGear first, MountedGear second) = isTurned ? (mesh.Second, mesh.First) : (mesh.First, mesh.Second);
        try
        {
            return new RolledPair(
                $"mesh {mesh.Name}", RollGear.Of(first.Name, first.Toothing), RollGear.Of(second.Name, second.Toothing), mesh.Pair.CentreDistance,
                isTurned ? [$"{first.Name} drives: a rack is rolled as the driven one."] : []);
        }
        catch (GearGeometryException e)
        {
            return CommandLine.Problem("roll", e);
        }
    }
}
