using System.Collections.Immutable;
using System.Text;
using GearBlanks.Files.Folders;
using GearBlanks.Files.Jobs;
using GearBlanks.Files.Profiles;
using GearBlanks.Findings;
using GearBlanks.Mechanisms;
using GearBlanks.Meshing;
using GearBlanks.Teeth;
using GearBlanks.Trains.Closing;

namespace GearBlanks.Verbs;

/// <summary>A search for profile shifts, as a command line gives it.</summary>
/// <param name="JobFile">The job file's name.</param>
/// <param name="Rule">How sums of profile shifts are split.</param>
/// <param name="Held">Names of the gears that keep their profile shifts.</param>
/// <param name="ShortensTips">True where tips that reach too deep may be shortened.</param>
/// <param name="Writes">True to put the numbers into the job file.</param>
public sealed record ShiftRequest(string JobFile, ShiftRule Rule, ImmutableArray<string> Held, bool ShortensTips, bool Writes)
{
    /// <summary>True where gears that no shifts suit may take another module.</summary>
    public bool ChangesModule { get; init; }
}

/// <summary>A mesh with the profile shifts that were found.</summary>
/// <param name="Name">Its name.</param>
/// <param name="First">Name of one gear.</param>
/// <param name="Second">Name of the other.</param>
/// <param name="ProfileShift">Their profile shift coefficients.</param>
/// <param name="Pair">The pair; null where such gears cannot exist.</param>
/// <param name="Wanted">Wanted circumferential backlash, mm.</param>
public sealed record ShiftedMesh(string Name, string First, string Second, (double First, double Second) ProfileShift, GearPair? Pair, double Wanted);

/// <summary>Gears that meshes connect, with the profile shifts that were found.</summary>
/// <param name="Meshes">The meshes.</param>
/// <param name="Tips">Tip diameters that were shortened, mm, by gear.</param>
/// <param name="Level">Ok, tight, or fails where there is no answer.</param>
/// <param name="Obstacles">What stands in the way.</param>
/// <param name="Nearest">What would work.</param>
public sealed record ShiftedGroup(
    ImmutableArray<ShiftedMesh> Meshes, ImmutableArray<(string Gear, double Diameter)> Tips, Level Level, ImmutableArray<string> Obstacles, ImmutableArray<string> Nearest)
{
    /// <summary>The module that the gears take instead of their own, mm; null where they keep it.</summary>
    public double? Module { get; init; }
}

/// <summary>The answer.</summary>
/// <param name="Title">The mechanism's title.</param>
/// <param name="Groups">One for each set of connected gears.</param>
/// <param name="WrittenFile">The job file, where it was changed; null where it was not.</param>
public sealed record ShiftResult(string Title, ImmutableArray<ShiftedGroup> Groups, string? WrittenFile)
{
    /// <summary>The worst level.</summary>
    public Level Verdict => Groups.Select(group => group.Level).DefaultIfEmpty(Level.Ok).Max();
}

/// <summary>Finds profile shifts with which every mesh of a job has its wanted backlash at its real distance.</summary>
public static class ShiftVerb
{
    /// <summary>Runs the verb.</summary>
    public static Outcome<ShiftResult> Run(ShiftRequest request)
    {
        Outcome<JobText> text = JobReader.ReadText(request.JobFile);
        if (text.Value is null)
        {
            return text.Problems;
        }

        Outcome<Job> job = JobReader.Parse(text.Value.Text, request.JobFile);
        if (job.Value is null)
        {
            return job.Problems;
        }

        JobGear[] gears = [.. job.Value.Sandwiches.SelectMany(sandwich => sandwich.Layers.OfType<JobGear>())];
        if (request.Held.FirstOrDefault(name => gears.All(gear => gear.Name != name)) is { } unknown)
        {
            return CommandLine.Problem(
                "--hold", unknown, "The job has no gear of this name", "a gear of the job", Files.Keys.Nearest.To(unknown, gears.Select(gear => gear.Name)));
        }

        Outcome<ClosingTask> task = Resolver.Closing(job.Value, ProfileFinder.BesideJob(request.JobFile), request.Rule, request.Held, request.ShortensTips);
        if (task.Value is null)
        {
            return task.Problems;
        }

        ImmutableArray<ClosedGroup> groups = Closer.Solve(task.Value with { ChangesModule = request.ChangesModule });
        var result = new ShiftResult(job.Value.Title, [.. groups.Select(group => Told(group, task.Value))], null);
        return request.Writes && result.Verdict != Level.Fails ? Written(text.Value, gears, groups, task.Value, result) : result;
    }

    private static ShiftedGroup Told(ClosedGroup group, ClosingTask task)
    {
        return new ShiftedGroup(
            [.. group.Meshes.Select(mesh => Mesh(task.Meshes[mesh]))],
            [.. group.Gears.Zip(group.Data)
                .Where(pair => pair.Second is GearData { TipDiameter: not null } && pair.Second is GearData now && task.Gears[pair.First].Data is GearData { TipDiameter: null })
                .Select(pair => (task.Gears[pair.First].Name, ((GearData)pair.Second).TipDiameter!.Value))],
            group.Level, group.Obstacles, group.Nearest)
        {
            Module = ModuleOf(group.Gears[0], group.Data[0], task),
        };

        ShiftedMesh Mesh(ClosingMesh mesh)
        {
            ToothData first = DataOf(mesh.First);
            ToothData second = DataOf(mesh.Second);
            return new ShiftedMesh(
                mesh.Name, task.Gears[mesh.First].Name, task.Gears[mesh.Second].Name, (first.ProfileShift, second.ProfileShift),
                Pair(first, second, mesh.Distance), mesh.Backlash);
        }

        ToothData DataOf(int gear) => group.Data[group.Gears.IndexOf(gear)];
    }

    // Null where a gear keeps its own.
    private static double? ModuleOf(int gear, ToothData now, ClosingTask task) => now.Module != task.Gears[gear].Data.Module ? now.Module : null;

    private static GearPair? Pair(ToothData first, ToothData second, double distance)
    {
        try
        {
            return GearPair.At(Toothing.Of(first), Toothing.Of(second), distance);
        }
        catch (GearGeometryException)
        {
            return null;
        }
    }

    // What was read must still stand there: an edit made meanwhile is not lost.
    private static Outcome<ShiftResult> Written(JobText text, JobGear[] gears, ImmutableArray<ClosedGroup> groups, ClosingTask task, ShiftResult result)
    {
        IEnumerable<GearEdit> edits =
            from grouped in groups
            from pair in grouped.Gears.Zip(grouped.Data)
            where !task.Gears[pair.First].IsHeld
            select new GearEdit(
                gears[pair.First].Place, pair.Second.ProfileShift,
                pair.Second is GearData { TipDiameter: { } tip } && task.Gears[pair.First].Data is GearData { TipDiameter: null } ? tip : null,
                ModuleOf(pair.First, pair.Second, task));
        Outcome<JobText> edited = JobEditor.WithNumbers(text, edits);
        if (edited.Value is null)
        {
            return edited.Problems;
        }

        if (JobReader.ReadText(text.File) is not { Value: { } now } || now.Text != text.Text)
        {
            return CommandLine.Problem("JOB", text.File, "The job file was changed meanwhile, so it was left as it is", "the same command again");
        }

        Outcome<WrittenFile> written = SingleFile.Write(text.File, Encoding.UTF8.GetBytes(edited.Value.Text), mustBeNew: false);
        return written.Value is null ? written.Problems : result with { WrittenFile = text.File };
    }
}
