using System.Collections.Immutable;
using GearBlanks.Cutting.Reach;
using GearBlanks.Files.Drawings;
using GearBlanks.Files.Jobs;
using GearBlanks.Files.Keys;
using GearBlanks.Files.Profiles;
using GearBlanks.Findings;
using GearBlanks.Mechanisms;
using GearBlanks.Mechanisms.Reach;
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
    // Of the base pitch: neighbours among modules and diametral pitches differ by less, other pressure angles by more.
    private const double OnePitch = 0.02;

    /// <summary>The limits of the job, or the usual ones.</summary>
    public required RollLimits Limits { get; init; }

    /// <summary>True where the gear that was named first is the second one: a rack.</summary>
    public bool IsTurned { get; init; }

    /// <summary>Two drawings.</summary>
    public static Outcome<RolledPair> OfDrawings(RollAsked asked)
    {
        Outcome<DrawnGear> first = DrawingReader.Read(asked.First!, new DrawingChoice(asked.FirstCentre, "--centre-a", asked.Layers));
        Outcome<DrawnGear> second = DrawingReader.Read(asked.Second!, new DrawingChoice(asked.SecondCentre, "--centre-b", asked.Layers));
        if (first.Value is null || second.Value is null)
        {
            return first.Problems.AddRange(second.Problems);
        }

        Outcome<Limits> limits = ProfileFinder.BesideJob("").Limits(DefaultNames.Limits, CommandLine.Place);
        if (limits.Value is null)
        {
            return limits.Problems;
        }

        (string one, string other) = (Path.GetFileName(asked.First!), Path.GetFileName(asked.Second!));
        (one, other) = one == other ? (one + " (A)", other + " (B)") : (one, other);
        try
        {
            // A rack is rolled as the driven one, whichever is named first.
            bool isTurned = first.Value.Rack is not null && second.Value.Rack is null;
            string[] remarks = isTurned ? [$"{other} drives: a rack is rolled as the driven one."] : [];
            (RollGear a, RollGear b) = (Made(one, first.Value), Made(other, second.Value));
            var pair = new RolledPair(
                $"{one} and {other}", isTurned ? b : a, isTurned ? a : b, asked.Distance!.Value,
                [.. first.Value.Remarks.Select(remark => $"{one}: {remark}"), .. second.Value.Remarks.Select(remark => $"{other}: {remark}"), .. remarks])
            {
                IsTurned = isTurned,
                Limits = limits.Value.Roll,
            };
            return asked.AnyPitch || Math.Abs(pair.First.BasePitch - pair.Second.BasePitch) <= OnePitch * pair.First.BasePitch ? pair : OtherPitch(pair);
        }
        catch (GearGeometryException e)
        {
            return CommandLine.Problem("roll", e);
        }
    }

    private static RollGear Made(string name, DrawnGear drawn) => drawn.Rack is var (root, tip)
        ? RollGear.OfRack(name, drawn.Teeth, root, tip)
        : RollGear.OfPath(name, drawn.Teeth, drawn.IsRing);

    private static ImmutableArray<Problem> OtherPitch(RolledPair pair) => CommandLine.Problem(
        "roll", null,
        $"The pitches do not match: base pitch {Words.Mm(pair.First.BasePitch)} of {pair.First.Name} ({pair.First.Teeth} teeth), {Words.Mm(pair.Second.BasePitch)} of {pair.Second.Name} ({pair.Second.Teeth} teeth)",
        "gears of one module and pressure angle, drawn in the units that they say; --any-pitch rolls these as they are");

    /// <summary>A mesh of a job at the distance that the frame really has.</summary>
    public static Outcome<RolledPair> OfJob(string file, RollAsked asked)
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

        Outcome<Mesh> mesh = MeshOf(mechanism.Value, asked.Mesh, file);
        return mesh.Value is null ? mesh.Problems : Of(mesh.Value, asked, mechanism.Value);
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

    private static Outcome<RolledPair> Of(Mesh mesh, RollAsked asked, Mechanism mechanism)
    {
        Machine machine = mechanism.Machine;
        bool isTurned = mesh.First.Toothing is RackBar;
        (MountedGear first, MountedGear second) = isTurned ? (mesh.Second, mesh.First) : (mesh.First, mesh.Second);
        string[] remarks = isTurned ? [$"{first.Name} drives: a rack is rolled as the driven one."] : [];
        if (asked.AsCut && new[] { first, second }.FirstOrDefault(gear => ToolFor(gear, asked, machine) is null) is { } untold)
        {
            return CommandLine.Problem(
                "--tool", null, $"The machine profile {machine.Name} gives neither a mill's diameter nor a kerf for gear {untold.Name}, so the tool is not known", "--tool D, or a machine whose profile says it");
        }

        try
        {
            string[] cut = asked.AsCut ? [.. new[] { first, second }.Select(gear => $"{gear.Name}: as a tool of {Words.Mm(ToolFor(gear, asked, machine)!.Value)} leaves it.")] : [];
            return new RolledPair(
                $"mesh {mesh.Name}", Made(first, asked, machine), Made(second, asked, machine), asked.Distance ?? mesh.Pair.CentreDistance, [.. remarks, .. cut])
            {
                IsTurned = isTurned,
                Limits = mechanism.Limits.Roll,
            };
        }
        catch (GearGeometryException e)
        {
            return CommandLine.Problem(e.ShapeCase.StartsWith("cutter-", StringComparison.Ordinal) ? "--tool" : "roll", e);
        }
    }

    private static double? ToolFor(MountedGear gear, RollAsked asked, Machine machine) => asked.Tool ?? ReachCheck.ToolOf(machine, gear);

    private static RollGear Made(MountedGear gear, RollAsked asked, Machine machine) => RollGear.Of(
        gear.Name, gear.Toothing, asked.AsCut ? CutterReach.Outline(gear.Toothing, ToolFor(gear, asked, machine)!.Value / 2) : null);
}
