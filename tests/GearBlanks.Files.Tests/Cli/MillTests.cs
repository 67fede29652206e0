using System.Text.Json;
using GearBlanks.Files.Tests.Jobs;

namespace GearBlanks.Files.Tests.Cli;

/// <summary>Jobs cut on a mill: what it does not reach counts in the verdict, and the files say what it is.</summary>
public sealed class MillTests
{
    private static readonly string Dial = Job("tide-dial");
    private static readonly string FirstPair = Job("first-pair");

    /// <summary>What reach finds, cut finds too: on the path of the tool's centre, and where a shop makes that path.</summary>
    [Theory]
    [InlineData("end-mill-1mm")]
    [InlineData("desktop-mill")]
    public void A_pair_that_a_mill_leaves_jammed_fails(string machine)
    {
        using Desk desk = Desk.WithJob();
        Ran cut = Ran.Of("cut", Dial, "--machine", machine, "--out", desk["out"], "--json");
        Ran reach = Ran.Of("reach", Dial, "--machine", machine, "--json");
        Assert.Equal((1, 1), (cut.Exit, reach.Exit));
        string[] failing = [.. Failing(cut.Json.GetProperty("check").GetProperty("findings"))];
        Assert.NotEmpty(failing);
        Assert.Equal(reach.Json.GetProperty("gears").EnumerateArray().SelectMany(gear => Failing(gear.GetProperty("findings"))).Order(), failing.Order());

        // As with every check that fails, the files are there and say so.
        Assert.All(Directory.EnumerateFiles(desk["out"], "*.dxf"), file => Assert.True(NoteReader.Says(File.ReadAllText(file), "CHECK FAILS")));
        Assert.Contains("as a tool of 1 mm leaves it is -", File.ReadAllText(desk["out/manifest.json"]), StringComparison.Ordinal);
    }

    /// <summary>The advice: a tool of at most 0.85 mm.</summary>
    [Fact]
    public void A_thinner_mill_leaves_it_running()
    {
        using Desk desk = Desk.WithJob();
        Ran cut = Ran.Of("cut", Dial, "--machine", "end-mill-0-8mm", "--out", desk["out"], "--json");
        Assert.Equal(0, cut.Exit);
        Assert.Contains(cut.Json.GetProperty("check").GetProperty("findings").EnumerateArray(), finding => finding.GetProperty("name").GetString() == "as-cut-clearance");
    }

    /// <summary>A beam that follows the root leaves teeth as they are drawn; one that stays off it is held against the mate.</summary>
    [Theory]
    [InlineData("0.2", false)]
    [InlineData("1", true)]
    public void A_beam_counts_where_it_stays_off_the_root(string kerf, bool counts)
    {
        using Desk desk = Desk.WithJob();
        Ran cut = Ran.Of("cut", Dial, "--kerf", kerf, "--out", desk["out"], "--json");
        Assert.Equal(counts, cut.Json.GetProperty("check").GetProperty("findings").EnumerateArray().Any(finding => finding.GetProperty("name").GetString() == "as-cut-clearance"));
        Assert.Equal(counts ? 1 : 0, cut.Exit);
    }

    [Fact]
    public void A_mill_is_no_beam_and_its_tabs_are_told_as_they_stand()
    {
        using Desk desk = Desk.WithJob();
        Ran cut = Ran.Of("cut", FirstPair, "--machine", "end-mill-1mm", "--out", desk["out"], "--json");
        string[] remarks = [.. cut.Json.GetProperty("remarks").EnumerateArray().Select(remark => remark.GetString()!)];
        Assert.Contains(remarks, remark => remark.Contains("end mill", StringComparison.Ordinal));
        Assert.DoesNotContain(remarks, remark => remark.Contains("beam", StringComparison.Ordinal));
        string narrow = Assert.Single(remarks, remark => remark.StartsWith("pinion: The tabs are ", StringComparison.Ordinal))["pinion: The tabs are ".Length..].Split(" wide")[0];
        Assert.True(NoteReader.Says(File.ReadAllText(desk["out/pinion.dxf"]), $"starts on tips, line leads 1 mm, 3 tabs {narrow}"));
        Assert.True(NoteReader.Says(File.ReadAllText(desk["out/wheel.dxf"]), "starts on tips, line leads 1 mm, 3 tabs 0.6 mm"));
    }

    private static IEnumerable<string> Failing(JsonElement findings) => findings.EnumerateArray()
        .Where(finding => finding.GetProperty("level").GetString() == "fails")
        .Select(finding => $"{finding.GetProperty("name")} {finding.GetProperty("place")} {finding.GetProperty("message")}");

    private static string Job(string name) => Path.Combine(Repository.Root, "profiles", "jobs", $"{name}.toml");
}
