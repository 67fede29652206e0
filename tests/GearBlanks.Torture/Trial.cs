using System.Diagnostics;
using GearBlanks.Files.Jobs;
using GearBlanks.Files.Profiles;
using GearBlanks.Mechanisms;

namespace GearBlanks.Torture;

/// <summary>How far a spoilt job came.</summary>
internal enum End
{
    /// <summary>Its text was refused with problems.</summary>
    Unread,

    /// <summary>Its mechanism was refused with problems.</summary>
    Unresolved,

    /// <summary>It was checked.</summary>
    Checked,

    /// <summary>An exception, an answer without a word, or too long a wait.</summary>
    Failed,
}

/// <summary>One spoilt job on its way.</summary>
internal static class Trial
{
    private const string File = "torture.toml";
    private const int Repeats = 4;

    private static readonly TimeSpan Most = TimeSpan.FromSeconds(1);

    public static (End End, TimeSpan Took, string? Failure) Of(string text)
    {
        try
        {
            (End end, TimeSpan took) = Timed(text);

            // On a busy machine the wait may be another's fault: the least of several counts.
            for (int i = 0; i < Repeats && took > Most; i++)
            {
                took = Timed(text) is var (_, again) && again < took ? again : took;
            }

            return took > Most ? (End.Failed, took, FormattableString.Invariant($"takes {took.TotalSeconds:0.0} s")) : (end, took, null);
        }
#pragma warning disable CA1031 // Any exception at all is what is looked for.
        catch (Exception e)
#pragma warning restore CA1031
        {
            return (End.Failed, default, e.ToString());
        }
    }

    private static (End End, TimeSpan Took) Timed(string text)
    {
        long start = Stopwatch.GetTimestamp();
        End end = Walk(text);
        return (end, Stopwatch.GetElapsedTime(start));
    }

    private static End Walk(string text)
    {
        Outcome<Job> job = JobReader.Parse(text, File);
        if (job.Value is null)
        {
            return Refused(job.Problems.Length, End.Unread);
        }

        Outcome<Mechanism> mechanism = Resolver.Resolve(job.Value, ProfileFinder.BesideJob(File));
        if (mechanism.Value is null)
        {
            return Refused(mechanism.Problems.Length, End.Unresolved);
        }

        MechanismReport report = MechanismCheck.Of(mechanism.Value);
        return report.Findings.All(finding => double.IsFinite(finding.Figure))
            ? End.Checked
            : throw new InvalidOperationException("A finding has no number: " + report.Findings.First(finding => !double.IsFinite(finding.Figure)));
    }

    private static End Refused(int problems, End end) => problems > 0 ? end : throw new InvalidOperationException("Refused without a word.");
}
