using System.Text.RegularExpressions;
using GearBlanks.Files.Tests.Jobs;
using GearBlanks.Findings;

namespace GearBlanks.Files.Tests.Cli;

/// <summary>Every finding can be explained.</summary>
public sealed partial class ExplainTests
{
    /// <summary>Names of findings stand in the kernel's code as the first argument of what makes one.</summary>
    [Fact]
    public void Every_finding_that_the_kernel_makes_has_an_explanation()
    {
        string[] made = [.. Directory.EnumerateFiles(Path.Combine(Repository.Root, "src", "GearBlanks"), "*.cs", SearchOption.AllDirectories)
            .Where(file => !file.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal))
            .SelectMany(file => Making().Matches(File.ReadAllText(file)).Select(match => match.Groups[1].Value)).Distinct().Order(StringComparer.Ordinal)];
        Assert.True(made.Length > 25, $"{made.Length} found");
        Assert.Empty(made.Except(Explanations.All.Keys));
    }

    [Fact]
    public void Each_is_told_in_words_and_as_json()
    {
        foreach (Explanation one in Explanations.All.Values)
        {
            (int exit, string output, _) = Ran.Of("explain", one.Name);
            Assert.Equal(0, exit);
            Assert.All((string[])[one.Name, one.Meaning, one.Formula, one.Source, .. one.Remedies], words => Assert.Contains(words, output, StringComparison.Ordinal));
            Assert.NotEmpty(one.Remedies);
            (exit, output, _) = Ran.Of("explain", one.Name, "--json");
            Assert.Equal(0, exit);
            using var json = System.Text.Json.JsonDocument.Parse(output);
            Assert.Equal(one.Meaning, json.RootElement.GetProperty("meaning").GetString());
        }
    }

    [Fact]
    public void Another_name_is_told_with_the_nearest()
    {
        (int exit, _, string error) = Ran.Of("explain", "filet-clearance");
        Assert.Equal(2, exit);
        Assert.Contains("fillet-clearance", error, StringComparison.Ordinal);
    }

    [GeneratedRegex("(?:Check\\.Of|Check\\.Worded|new Finding|new|new PairFigure)\\(\\s*\"([a-z]+(?:-[a-z]+)+)\",\\s*(?:place|Places|[0-9]|side|body|one|pair|mesh|gear)")]
    private static partial Regex Making();
}
