using System.Collections.Immutable;
using GearBlanks.Files.Jobs;
using GearBlanks.Files.Profiles;
using GearBlanks.Mechanisms;

namespace GearBlanks.Verbs;

/// <summary>Checks a job's mechanism: read, resolve, compute.</summary>
public static class CheckVerb
{
    /// <summary>Runs the verb.</summary>
    /// <param name="jobFile">The job file's name.</param>
    public static Outcome<MechanismReport> Run(string jobFile)
    {
        Outcome<JobText> text = JobReader.ReadText(jobFile);
        return text.Value is null ? text.Problems : Run(text.Value);
    }

    internal static Outcome<MechanismReport> Run(JobText text, string? machine = null)
    {
        Outcome<Job> job = JobReader.Parse(text.Text, text.File);
        if (job.Value is null)
        {
            return job.Problems;
        }

        var profiles = ProfileFinder.BesideJob(text.File);
        if (machine is not null && profiles.Machine(machine, CommandLine.Place) is { Value: null } unknown)
        {
            return unknown.Problems.Select(problem => problem.Place == CommandLine.Place ? problem with { Key = "--machine" } : problem).ToImmutableArray();
        }

        Job asked = machine is null ? job.Value : job.Value with { Defaults = job.Value.Defaults with { Machine = machine } };
        Outcome<Mechanism> mechanism = Resolver.Resolve(asked, profiles);
        return mechanism.Value is null ? mechanism.Problems : MechanismCheck.Of(mechanism.Value);
    }
}
