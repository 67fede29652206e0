using System.Collections.Immutable;
using GearBlanks.Files.Jobs;
using GearBlanks.Files.Keys;
using GearBlanks.Files.Profiles;
using GearBlanks.Mechanisms;
using GearBlanks.Trains;

namespace GearBlanks.Verbs;

/// <summary>Checks a job's mechanism: read, resolve, compute.</summary>
public static class CheckVerb
{
    /// <summary>Runs the verb.</summary>
    /// <param name="jobFile">The job file's name.</param>
    /// <param name="at">A date at which the dial is read; null where none is asked for.</param>
    /// <param name="sections">Names of the meshes, sandwiches, gears and hands that are asked for.</param>
    public static Outcome<MechanismReport> Run(string jobFile, Moment? at = null, ImmutableArray<string> sections = default)
    {
        Outcome<JobText> text = JobReader.ReadText(jobFile);
        Outcome<MechanismReport> report = text.Value is null ? text.Problems : Run(text.Value);
        return report.Value is null ? report
            : Unknown(report.Value, sections) is { } unknown ? unknown
            : at is null ? report
            : Read(report.Value, at);
    }

    private static Outcome<MechanismReport>? Unknown(MechanismReport report, ImmutableArray<string> sections)
    {
        Mechanism mechanism = report.Mechanism;
        string[] names =
        [
            .. mechanism.Meshes.Select(mesh => mesh.Name), .. mechanism.Sandwiches.Select(sandwich => sandwich.Name),
            .. mechanism.Gears.Select(gear => gear.Name), .. mechanism.Hands.Select(hand => hand.Name),
        ];
        return sections.IsDefaultOrEmpty || sections.FirstOrDefault(name => !names.Contains(name)) is not { } unknown
            ? null
            : CommandLine.Problem(
                "--section", unknown, "The job has no mesh, sandwich, gear or hand of this name", "one of " + string.Join(", ", names.Distinct()), Nearest.To(unknown, names));
    }

    private static Outcome<MechanismReport> Read(MechanismReport report, Moment at) => DialPositions.At(report, at) is { } dial
        ? report with { Dial = dial }
        : CommandLine.Problem(
            "--at", at.Written, "The job does not say when its hands stand at their angles: positions at other dates follow from that",
            "a job with a date under the key \"set\" of its drive");

    internal static Outcome<MechanismReport> Run(JobText text, string? machine = null)
    {
        Outcome<Mechanism> mechanism = Resolve(text, machine);
        return mechanism.Value is null ? mechanism.Problems : MechanismCheck.Of(mechanism.Value);
    }

    /// <summary>The mechanism of a job, on another machine where one is named.</summary>
    internal static Outcome<Mechanism> Resolve(JobText text, string? machine)
    {
        Outcome<Job> job = JobReader.Parse(text.Text, text.File);
        if (job.Value is null)
        {
            return job.Problems;
        }

        var profiles = ProfileFinder.BesideJob(text.File);
        if (machine is not null && profiles.Machine(machine, CommandLine.Place) is { Value: null } unknown)
        {
            return unknown.Problems.Select(AsMachineOption).ToImmutableArray();
        }

        Job asked = machine is null ? job.Value : job.Value with { Defaults = job.Value.Defaults with { Machine = machine } };
        return Resolver.Resolve(asked, profiles);
    }

    /// <summary>A machine that is asked for on the command line is no key of a job.</summary>
    internal static Problem AsMachineOption(Problem problem) => problem.Place == CommandLine.Place ? problem with { Key = "--machine" } : problem;
}
