using System.Text.RegularExpressions;
using GearBlanks.Files.Tests.Jobs;

namespace GearBlanks.Torture;

/// <summary>What is spoilt, and what it is spoilt with.</summary>
internal static partial class Sources
{
    /// <summary>The demonstration jobs and those of the tests, of which one has every key.</summary>
    public static IReadOnlyList<string> Jobs(string repository) =>
    [
        .. Directory.EnumerateFiles(Path.Combine(repository, "profiles", "jobs"), "*.toml").Order(StringComparer.Ordinal).Select(File.ReadAllText),
        JobTexts.Pair, JobTexts.Compact, JobTexts.Full,
    ];

    /// <summary>Every key and every value that the pages of keys show, and lines with both.</summary>
    public static IReadOnlyList<string> Fragments(string repository)
    {
        string page = File.ReadAllText(Path.Combine(repository, "profiles", "jobs", "KEYS.md"));
        string[] keys = [.. Key().Matches(page).Select(match => match.Groups[1].Value).Distinct().Order(StringComparer.Ordinal)];
        string[] values = [.. Value().Matches(page).Select(match => match.Value).Distinct().Order(StringComparer.Ordinal), "3", "0.5", "true", "[1, 2]"];
        return [.. keys, .. values, .. keys.SelectMany(key => values.Select(value => $"{key} = {value}\n"))];
    }

    [GeneratedRegex("`([a-z.-]+)`")]
    private static partial Regex Key();

    [GeneratedRegex("\"[^\"\n]{1,20}\"")]
    private static partial Regex Value();
}
