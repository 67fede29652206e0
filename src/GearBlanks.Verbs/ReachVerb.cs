using System.Collections.Immutable;
using System.Globalization;
using GearBlanks.Blanks;
using GearBlanks.Blanks.Bores;
using GearBlanks.Files.Folders;
using GearBlanks.Files.Jobs;
using GearBlanks.Files.Profiles;
using GearBlanks.Findings;
using GearBlanks.Mechanisms;
using GearBlanks.Mechanisms.Reach;
using GearBlanks.Teeth;

namespace GearBlanks.Verbs;

/// <summary>Gears whose reach is asked for: those of a job, or one.</summary>
/// <param name="JobFile">The job file's name; null where one gear is given.</param>
/// <param name="Gear">The gear; null where a job is given. Where it would be written does not matter.</param>
/// <param name="Tool">Diameter of the beam or mill, mm; null for the machine's.</param>
/// <param name="Machine">Name of the machine; null for the job's.</param>
/// <param name="Folder">The folder that pictures and the files for a second tool go to; null for none.</param>
/// <param name="Output">How and how finely they are written.</param>
public sealed record ReachRequest(string? JobFile, GearRequest? Gear, double? Tool, string? Machine, string? Folder, OutputOptions Output);

/// <summary>What the tool reaches.</summary>
/// <param name="Title">The mechanism's title; null for one gear.</param>
/// <param name="Gears">Each gear.</param>
/// <param name="Cautions">What to mind when it is cut.</param>
public sealed record ReachResult(string? Title, ImmutableArray<GearReach> Gears, ImmutableArray<string> Cautions)
{
    /// <summary>Names of the files written, where any are.</summary>
    public ImmutableArray<string> Files { get; init; } = [];

    /// <summary>The findings on all gears, worst first.</summary>
    public ImmutableArray<Finding> Findings => [.. Gears.SelectMany(gear => gear.Findings).OrderByDescending(finding => finding.Level)];

    /// <summary>The worst level.</summary>
    public Level Verdict => Gears.Select(gear => gear.Verdict).DefaultIfEmpty(Level.Ok).Max();
}

/// <summary>Tells how far a beam or mill reaches into gears, and whether they still run free.</summary>
public static class ReachVerb
{
    private const string Caution =
        "The tool is taken to be as wide as told and to cut where it should: its wear, runout and bending are not checked. Cut a test piece and measure it.";

    /// <summary>Runs the verb.</summary>
    public static Outcome<ReachResult> Run(ReachRequest request)
    {
        if (request.JobFile is null == request.Gear is null)
        {
            return CommandLine.Problem(
                "JOB", request.JobFile, request.JobFile is null ? "Neither a job nor a gear is given" : "Both a job and a gear are given",
                "a job file, or the gear's numbers such as --module 1 --teeth 20");
        }

        try
        {
            if (request.Output.ProblemsAt(double.MaxValue) is [_, ..] coarse)
            {
                return coarse;
            }

            return request.JobFile is { } file ? OfJob(request, file) : OfGear(request, request.Gear!);
        }
        catch (GearGeometryException e)
        {
            return CommandLine.Problem(e.ShapeCase.StartsWith("cutter-", StringComparison.Ordinal) ? "--tool" : "gear", e);
        }
    }

    private static Outcome<ReachResult> OfJob(ReachRequest request, string file)
    {
        Outcome<JobText> text = JobReader.ReadText(file);
        Outcome<Mechanism> read = text.Value is null ? text.Problems : CheckVerb.Resolve(text.Value, request.Machine);
        if (read.Value is not { } mechanism)
        {
            return read.Problems;
        }

        if (mechanism.Gears.FirstOrDefault(gear => ToolFor(gear) is null) is { } untold)
        {
            return NoTool(mechanism.Machine, $"gear {untold.Name}");
        }

        return Written(request, mechanism.Machine, new ReachResult(
            mechanism.Title, ReachCheck.Of(mechanism, ToolFor, BuiltInRacks()),
            [.. mechanism.Machine.Cautions.Concat(mechanism.Gears.Select(gear => gear.Material).OfType<Material>().SelectMany(material => material.Cautions)).Distinct(), Caution]));

        double? ToolFor(MountedGear gear) => request.Tool ?? ReachCheck.ToolOf(mechanism.Machine, gear);
    }

    private static Outcome<ReachResult> OfGear(ReachRequest request, GearRequest asked)
    {
        ProfileFinder profiles = ProfileFinder.BesideJob("");
        Outcome<RackChoice> choice = RackChoice.Of(asked.Numbers);
        Outcome<Limits> limits = profiles.Limits(DefaultNames.Limits, CommandLine.Place);
        Outcome<Machine> machine = profiles.Machine(request.Machine ?? DefaultNames.Machine, CommandLine.Place);
        ImmutableArray<Problem> problems =
            [.. choice.Problems, .. limits.Problems, .. machine.Problems.Select(CheckVerb.AsMachineOption), .. asked.Shape.ProblemsWith(asked)];
        if (problems.Length > 0)
        {
            return problems;
        }

        if ((request.Tool ?? ReachCheck.ToolOf(machine.Value!, null)) is not { } tool)
        {
            return NoTool(machine.Value!, "the gear");
        }

        Toothing teeth = asked.Shape.Make(asked, choice.Value!);
        string name = string.Create(CultureInfo.InvariantCulture, $"z {teeth.Teeth} m {teeth.Module:0.####}");
        var blank = new Blank(name, teeth, 0, new Cutouts { Bore = asked.Bore is { } bore ? new RoundBore(bore) : null }, []);
        return Written(request, machine.Value!, new ReachResult(null, [ReachCheck.Of(blank, tool, limits.Value!)], [.. machine.Value!.Cautions, Caution]));
    }

    private static Outcome<ReachResult> Written(ReachRequest request, Machine machine, ReachResult result)
    {
        if (request.Folder is null)
        {
            return result;
        }

        Outcome<WrittenFolder> written = ReachFiles.Write(request.Folder, request.Output, machine, result);
        return written.Value is { } folder ? result with { Files = folder.Files } : written.Problems;
    }

    private static ImmutableArray<Problem> NoTool(Machine machine, string what) => CommandLine.Problem(
        "--tool", null, $"The machine profile {machine.Name} gives neither a mill's diameter nor a kerf for {what}, so the tool is not known",
        "--tool D, or a machine whose profile says it");

    internal static ImmutableArray<BasicRack> BuiltInRacks() =>
        [.. ProfileFinder.BuiltIn.Names(ProfileKind.Rack).Select(name => ProfileFinder.BuiltIn.Rack(name, CommandLine.Place).Value).OfType<BasicRack>()];
}
