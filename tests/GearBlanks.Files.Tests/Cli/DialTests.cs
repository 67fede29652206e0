using System.Text.Json;
using GearBlanks.Files.Tests.Jobs;

namespace GearBlanks.Files.Tests.Cli;

/// <summary>Where hands stand at a date.</summary>
public class DialTests
{
    // The arm turns once in an hour counter-clockwise, the pointer a twelfth of that, from 12.5 degrees clockwise on.
    [Theory]
    [InlineData("2026-11-01T12:00:00Z", "25/2")]
    [InlineData("2026-11-01T15:00:00Z", "565/2")]
    [InlineData("2026-11-01T15:00:00+03:00", "25/2")]
    [InlineData("2026-11-01", "25/2")]
    [InlineData("2026-11-01T11:00", "85/2")]
    [InlineData("2126-11-01T12:00:01Z", "1499/120")]
    public void Positions_are_exact(string date, string angle)
    {
        JsonElement dial = Of(BadMotionTests.Arm, date).Json.GetProperty("dial");
        JsonElement hand = Assert.Single(dial.GetProperty("hands").EnumerateArray());
        Assert.Equal(("pointer", angle), (hand.GetProperty("name").GetString(), hand.GetProperty("exactAngle").GetString()));
        Assert.Equal(0, hand.GetProperty("ahead").GetDouble());
        Assert.Equal(date, dial.GetProperty("at").GetProperty("written").GetString());
        Assert.Equal(!date.EndsWith('Z') && !date.EndsWith("+03:00", StringComparison.Ordinal), dial.GetProperty("at").GetProperty("takenForUtc").GetBoolean());
    }

    [Fact]
    public void A_hand_that_should_turn_slower_runs_ahead()
    {
        JsonElement hand = Of(BadMotionTests.Arm.Replace("turn = \"12 h\"", "turn = \"24 h\"", StringComparison.Ordinal), "2026-11-02T12:00:00Z")
            .Json.GetProperty("dial").GetProperty("hands")[0];
        Assert.Equal(360, hand.GetProperty("ahead").GetDouble());
    }

    [Fact]
    public void A_date_without_an_offset_is_said_to_be_UTC()
    {
        using Desk desk = Desk.WithJob();
        File.WriteAllText(desk["arm.toml"], BadMotionTests.Arm);
        Ran ran = Ran.Of("check", desk["arm.toml"], "--at", "2026-12-24");
        Assert.Contains("at 2026-12-24 (taken for UTC)", ran.Output, StringComparison.Ordinal);
        Assert.Contains("from the setting 2026-11-01T12:00:00Z", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_the_option_there_is_no_dial() =>
        Assert.Equal(JsonValueKind.Null, Of(BadMotionTests.Arm, null).Json.GetProperty("dial").ValueKind);

    [Fact]
    public void A_job_without_a_setting_says_so()
    {
        Ran ran = Of(BadMotionTests.Arm.Replace("set = 2026-11-01T12:00:00Z\n", "", StringComparison.Ordinal), "2026-12-24");
        Assert.Equal(2, ran.Exit);
        Assert.Contains("does not say when its hands stand at their angles", ran.Errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("tomorrow", "This is not a date")]
    [InlineData("2027-02-29", "Nearest: 2027-02-28")]
    [InlineData("2027-13-01", "no such month")]
    [InlineData("2027-01-01T25:00", "no such time of day")]
    [InlineData("2027-01-01T23:59:60Z", "Leap seconds")]
    [InlineData("0000-01-01", "no year 0")]
    [InlineData("2027-01-01T00:00:00+99:00", "no such offset")]
    [InlineData("2027-01-01Z", "This is not a date")]
    [InlineData("", "This is not a date")]
    public void Dates_that_cannot_be_read_are_told(string date, string says)
    {
        Ran ran = Of(BadMotionTests.Arm, date);
        Assert.Equal(2, ran.Exit);
        Assert.Contains(says, ran.Errors, StringComparison.Ordinal);
        Assert.Contains("--at", ran.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Speeds_against_the_arm_and_lost_motion_are_told()
    {
        JsonElement json = Of(BadMotionTests.Arm, null).Json;
        JsonElement pair = json.GetProperty("speeds").EnumerateArray().Single(speed => speed.GetProperty("sandwich").GetString() == "pair");
        Assert.Equal(("23/12", "arm", "11/12"), (pair.GetProperty("speed").GetString(), pair.GetProperty("arm").GetString(), pair.GetProperty("againstArm").GetString()));
        JsonElement hand = json.GetProperty("hands")[0];
        Assert.Equal(0, hand.GetProperty("degreesAheadAYear").GetDouble());
        JsonElement lost = hand.GetProperty("lostMotion");
        double[] plays = [.. lost.GetProperty("meshes").EnumerateArray().Select(mesh => mesh.GetProperty("degrees").GetDouble())];
        Assert.Equal(2, plays.Length);
        Assert.Equal(plays.Sum(), lost.GetProperty("worstCase").GetDouble(), 1e-12);
        Assert.Equal(Math.Sqrt(plays.Sum(play => play * play)), lost.GetProperty("rootSumSquare").GetDouble(), 1e-12);
        Assert.Equal(2 * plays.Sum(), lost.GetProperty("worstCaseMinutes").GetDouble(), 1e-12);
    }

    private static Ran Of(string job, string? date)
    {
        using Desk desk = Desk.WithJob();
        File.WriteAllText(desk["arm.toml"], job);
        return date is null ? Ran.Of("check", desk["arm.toml"], "--json") : Ran.Of("check", desk["arm.toml"], "--at", date, "--json");
    }
}
