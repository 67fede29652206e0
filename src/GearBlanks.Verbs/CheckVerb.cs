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

    internal static Outcome<MechanismReport> Run(JobText text)
    {
        Outcome<Job> job = JobReader.Parse(text.Text, text.File);
        if (job.Value is null)
        {
            return job.Problems;
        }

        Outcome<Mechanism> mechanism = Resolver.Resolve(job.Value, ProfileFinder.BesideJob(text.File));
        return mechanism.Value is null ? mechanism.Problems : MechanismCheck.Of(mechanism.Value);
    }
}
