using System.Text.Json;
using GearBlanks.Files.Tests.Jobs;

namespace GearBlanks.Files.Tests.Cli;

/// <summary>The verb <c>reach</c> from outside.</summary>
public sealed class ReachTests
{
    private static string FirstPair => Path.Combine(Repository.Root, "profiles", "jobs", "first-pair.toml");

    [Fact]
    public void One_gear_as_json()
    {
        JsonElement gear = Assert.Single(Json("reach", "--module", "1", "--teeth", "20", "--tool", "1", "--json").GetProperty("gears").EnumerateArray());
        Assert.Equal("z 20 m 1", gear.GetProperty("name").GetString());

        // Worked out for ISO 53 type A before the code, to three decimals: 1.144 and 0.899 modules.
        Assert.Equal(1.144, gear.GetProperty("rootTouchingTool").GetDouble(), 0.00051);
        Assert.Equal(0.899, gear.GetProperty("wholeFilletTool").GetDouble(), 0.00051);
        Assert.Equal(JsonValueKind.Null, gear.GetProperty("runningFreeTool").ValueKind);
        Assert.Contains("no mate", gear.GetProperty("whyNoRunningFreeTool").GetString(), StringComparison.Ordinal);
        Assert.InRange(gear.GetProperty("uncutDepth").GetDouble(), 0.001, 0.01);
        Assert.Equal(20 * gear.GetProperty("uncutAreaPerGap").GetDouble(), gear.GetProperty("uncutArea").GetDouble(), 1e-12);
    }

    [Fact]
    public void A_job_cut_with_too_large_a_mill_fails_and_says_which_would_do()
    {
        (int exit, string output, _) = Ran.Of("reach", FirstPair, "--tool", "1.2");
        Assert.Equal(1, exit);
        Assert.Contains("as-cut-clearance", output, StringComparison.Ordinal);
        Assert.Contains("Use a tool of at most 1.15 mm", output, StringComparison.Ordinal);
        (exit, output, _) = Ran.Of("reach", FirstPair, "--tool", "1.15");
        Assert.Equal(0, exit);
        Assert.DoesNotContain("fails  ", output, StringComparison.Ordinal);
    }

    [Fact]
    public void The_machine_gives_the_tool()
    {
        JsonElement gears = Json("reach", FirstPair, "--machine", "desktop-mill", "--json").GetProperty("gears");
        Assert.All(gears.EnumerateArray(), gear => Assert.Equal(1.0, gear.GetProperty("tool").GetDouble()));
    }

    [Fact]
    public void A_bore_narrower_than_the_tool_is_refused_by_name()
    {
        (int exit, string output, _) = Ran.Of("reach", "--module", "1", "--teeth", "20", "--bore", "2", "--tool", "2.5");
        Assert.Equal(1, exit);
        Assert.Contains("hole-reach", output, StringComparison.Ordinal);
        Assert.Contains("bore", output, StringComparison.Ordinal);
        Assert.Contains("2 mm", output, StringComparison.Ordinal);
    }

    // What stands behind the verb, what must be told, and a part of what is allowed or advised.
    public static TheoryData<string[], string, string> Wrong { get; } = new()
    {
        { [], "Neither a job nor a gear", "--teeth" },
        { ["no-such.toml"], "no-such.toml", "" },
        { ["FIRST", "--teeth", "20"], "Both a job and a gear", "job file" },
        { ["FIRST"], "--tool", "machine" },
        { ["FIRST", "--tool", "0"], "--tool", "100" },
        { ["FIRST", "--tool", "-1"], "--tool", "100" },
        { ["FIRST", "--tool", "nan"], "--tool", "" },
        { ["FIRST", "--tool", "101"], "--tool", "100" },
        { ["FIRST", "--tool"], "--tool", "D" },
        { ["FIRST", "--tool", "1", "--machine", "desktop-mil"], "--machine", "desktop-mill" },
        { ["FIRST", "--tol", "1"], "--tol", "--tool" },
        { ["FIRST", "second.toml", "--tool", "1"], "second.toml", "" },
        { ["--module", "1", "--teeth", "3", "--tool", "1"], "--teeth", "4" },
        { ["--module", "1", "--tool", "1"], "--teeth", "" },
        { ["--module", "1", "--teeth", "20", "--rack", "iso-53-x", "--tool", "1"], "--rack", "iso-53" },
        { ["--module", "1", "--teeth", "40", "--ring", "--rim-diameter", "50", "--tool", "39"], "cutter-wider-than-ring", "smaller cutter" },
        { ["--module", "1", "--teeth", "20", "--machine", "no-mill", "--tool", "1"], "--machine", "desktop-mill" },
    };

    [Theory]
    [MemberData(nameof(Wrong))]
    public void Wrong_input_is_told(string[] words, string told, string allowed)
    {
        (int exit, string output, string error) = Ran.Of(["reach", .. words.Select(word => word == "FIRST" ? FirstPair : word)]);
        Assert.Equal(2, exit);
        Assert.Empty(output);
        Assert.Contains(told, error, StringComparison.Ordinal);
        Assert.Contains(allowed, error, StringComparison.Ordinal);
    }

    private static JsonElement Json(params string[] words)
    {
        (int exit, string output, _) = Ran.Of(words);
        Assert.Equal(0, exit);
        using var json = JsonDocument.Parse(output);
        Assert.Equal("gearblanks.reach/1", json.RootElement.GetProperty("schema").GetString());
        return json.RootElement.Clone();
    }
}
