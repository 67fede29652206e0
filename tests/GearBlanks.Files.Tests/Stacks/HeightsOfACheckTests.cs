using System.Text.Json;
using GearBlanks.Files.Tests.Cli;
using GearBlanks.Files.Tests.Jobs;

namespace GearBlanks.Files.Tests.Stacks;

/// <summary>What the check of a job prints of its stack, for people and as JSON.</summary>
public sealed class HeightsOfACheckTests
{
    private static readonly string Dial = Path.Combine(Repository.Root, "profiles", "jobs", "tide-dial.toml");

    [Fact]
    public void Heights_are_printed_on_request()
    {
        Ran ran = Ran.Of("check", Dial, "--heights");
        string[] lines = ran.Output.Split('\n');
        string[] row = Assert.Single(lines, line => line.Contains("gear lay wheel 57", StringComparison.Ordinal) && line.Contains("8.000", StringComparison.Ordinal))
            .Split(' ', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(["first", "lay", "gear", "lay", "wheel", "57", "6.000", "8.000", "0.060"], row);
        Assert.Contains(lines, line => line.Contains("wrong ones", StringComparison.Ordinal));
        Assert.Contains(lines, line => line.Contains("mm beside", StringComparison.Ordinal));
        Assert.DoesNotContain("frame plate", Ran.Of("check", Dial).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_job_without_heights_says_so()
    {
        using Desk desk = Desk.WithJob();
        Assert.Contains("gives no heights", Ran.Of("check", desk["pair.toml"], "--heights").Output, StringComparison.Ordinal);
        JsonElement json = Ran.Of("check", desk["pair.toml"], "--json").Json;
        Assert.Equal(0, json.GetProperty("heights").GetArrayLength());
        Assert.Equal(2, json.GetProperty("clocking").GetArrayLength());
    }

    [Fact]
    public void Json_has_every_field()
    {
        JsonElement json = Ran.Of("check", Dial, "--json").Json;
        JsonElement[] heights = [.. json.GetProperty("heights").EnumerateArray()];
        double[] from = [.. heights.Select(row => row.GetProperty("from").GetDouble())];
        Assert.Equal(from.Order(), from);
        JsonElement plate = heights[0];
        Assert.Equal(JsonValueKind.Null, plate.GetProperty("sandwich").ValueKind);
        Assert.Equal(("plate frame plate", -3, 0), (plate.GetProperty("part").GetString(), plate.GetProperty("from").GetDouble(), plate.GetProperty("to").GetDouble()));
        JsonElement wheel = heights.Single(row => row.GetProperty("part").GetString() == "gear lay wheel 57");
        Assert.Equal(("first lay", 0.04, 0.06), (
            wheel.GetProperty("sandwich").GetString(), Math.Round(wheel.GetProperty("fromTolerance").GetDouble(), 9), Math.Round(wheel.GetProperty("toTolerance").GetDouble(), 9)));

        // 57 teeth and three screws from 60 degrees: 57/3 is whole, and twice 60 degrees are 19 teeth.
        JsonElement gear = json.GetProperty("clocking").EnumerateArray().Single(one => one.GetProperty("gear").GetString() == "lay wheel 57");
        Assert.Equal((3, 0, false), (gear.GetProperty("ways").GetInt32(), gear.GetProperty("wrongWays").GetInt32(), gear.GetProperty("flipsUnseen").GetBoolean()));
        Assert.Equal(60, gear.GetProperty("firstScrew").GetDouble(), 1e-9);
        Assert.Equal(("first lay", 0), (gear.GetProperty("sandwich").GetString(), gear.GetProperty("turned").GetDouble()));
        Assert.InRange(gear.GetProperty("angle").GetDouble(), 0, 360);

        JsonElement teeth = json.GetProperty("facingTeeth")[0];
        Assert.Equal(("day to first lay", "day wheel", "lay wheel 59"), (
            teeth.GetProperty("mesh").GetString(), teeth.GetProperty("toothOf").GetString(), teeth.GetProperty("gapOf").GetString()));
        Assert.Equal((11, 1, 2), (teeth.GetProperty("tooth").GetInt32(), teeth.GetProperty("before").GetInt32(), teeth.GetProperty("after").GetInt32()));

        // The day wheel stands at 0: its eleventh tooth at 150 degrees, where the first lay is.
        Assert.Equal(0, teeth.GetProperty("offset").GetDouble(), 1e-6);
    }
}
