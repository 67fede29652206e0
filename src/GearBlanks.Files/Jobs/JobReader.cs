using GearBlanks.Files.Keys;
using GearBlanks.Files.Profiles;
using GearBlanks.Files.Toml;
using GearBlanks.Mechanisms;

namespace GearBlanks.Files.Jobs;

/// <summary>Reads job files. Whatever a person can write wrongly comes back as a problem, never as an exception.</summary>
public static class JobReader
{
    /// <summary>Reads a job file.</summary>
    /// <param name="file">File name, as the user gave it.</param>
    /// <returns>The job, or all its problems in the order of the file.</returns>
    public static Outcome<Job> Read(string file)
    {
        ArgumentNullException.ThrowIfNull(file);
        var problems = new ProblemList();
        return TextFile.Read(file, problems) is { } text ? Parse(text, file) : problems.InOrder();
    }

    /// <summary>Reads a job file's text only, so that what was read can be told from what stands there later.</summary>
    /// <param name="file">File name, as the user gave it.</param>
    /// <returns>The text, or why it cannot be had.</returns>
    public static Outcome<JobText> ReadText(string file)
    {
        ArgumentNullException.ThrowIfNull(file);
        var problems = new ProblemList();
        return TextFile.Read(file, problems) is { } text ? new JobText(file, text) : problems.InOrder();
    }

    /// <summary>Reads a job from its text.</summary>
    /// <param name="text">The text of a job file.</param>
    /// <param name="file">The name that problems give as its file; profiles are looked for beside it.</param>
    /// <returns>The job, or all its problems in the order of the text.</returns>
    public static Outcome<Job> Parse(string text, string file)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(file);
        var problems = new ProblemList();
        if (TomlSource.Read(text, file, problems) is not { } table)
        {
            return problems.InOrder();
        }

        var entries = new KeyReader(problems).Read(table, JobKeys.File);
        JobChecks.Check(entries, problems);
        ProfileChecks.Check(entries, ProfileFinder.BesideJob(file), problems);
        return problems.IsEmpty ? JobBuilder.Build(entries, file) : problems.InOrder();
    }
}
