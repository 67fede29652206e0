using GearBlanks.Files.Jobs;
using GearBlanks.Files.Profiles;
using GearBlanks.Mechanisms;
using GearBlanks.Trains;

namespace GearBlanks.Files.Tests.Jobs;

/// <summary>Each row spoils one piece of a good job with an arm and says what must be told of it, and where.</summary>
public class BadMotionTests
{
    /// <summary>An arm, a fixed wheel, a carried pair and a setting: line numbers count from its first line.</summary>
    internal const string Arm =
        """
        title = "Through an arm"
        [defaults]
        module = 1
        thickness = 2
        [[axes]]
        name = "column"
        position = [0, 0]
        [[axes]]
        name = "rider"
        from = "column"
        distance = 23
        direction = 90
        carried-by = "arm"
        [[sandwiches]]
        name = "ground"
        axis = "column"
        fixed = true
        layers = [{ teeth = 22 }]
        [[sandwiches]]
        name = "arm"
        axis = "column"
        layers = [{ washer = 2 }]
        [[sandwiches]]
        name = "pair"
        axis = "rider"
        layers = [{ gear = "lower", teeth = 24 }, { gear = "upper", teeth = 23 }]
        [[sandwiches]]
        name = "pointer"
        axis = "column"
        layers = [{ teeth = 23 }]
        [[meshes]]
        gears = ["ground", "lower"]
        [[meshes]]
        gears = ["upper", "pointer"]
        [drive]
        sandwich = "arm"
        turn = "1 h"
        sense = "counter-clockwise"
        set = 2026-11-01T12:00:00Z
        [[hands]]
        name = "pointer"
        sandwich = "pointer"
        turn = "12 h"
        angle = 12.5

        """;

    private const string Set = "set = 2026-11-01T12:00:00Z";

    private const string First = "[[drives]]\nsandwich = \"arm\"\nturn = \"1 h\"\n";

    /// <summary>What is replaced, by what; line, column, key of the one problem; pieces of what it says.</summary>
    public static TheoryData<string, string, int, int, string, string[]> Spoilt => new()
    {
        // Arms
        { "carried-by = \"arm\"", "carried-by = \"army\"", 13, 14, "axes.carried-by", ["no sandwich of this name", "\"ground\", \"arm\", \"pair\", \"pointer\"", "nearest: arm"] },
        { "carried-by = \"arm\"", "carried-by = 3", 13, 14, "axes.carried-by", ["not text in quotes"] },
        { "carried-by = \"arm\"", "carried-by = \"\"", 13, 14, "axes.carried-by", ["name is empty"] },
        { "carried-by = \"arm\"", "caried-by = \"arm\"", 13, 1, "axes.caried-by", ["no such key", "nearest: carried-by"] },
        { "carried-by = \"arm\"", "carried-by = \"pair\"", 13, 14, "axes.carried-by", ["turns on this axis, so it cannot carry it"] },
        { "position = [0, 0]", "position = [0, 0]\ncarried-by = \"pair\"", 8, 14, "axes.carried-by", ["carried in a circle", "\"column\" by \"pair\", \"rider\" by \"arm\""] },

        // What is fixed
        { "fixed = true", "fixed = 1", 17, 9, "sandwiches.fixed", ["neither true nor false"] },
        { "fixed = true", "fixd = true", 17, 1, "sandwiches.fixd", ["no such key", "nearest: fixed"] },
        { "axis = \"rider\"", "axis = \"rider\"\nfixed = true", 26, 9, "sandwiches.fixed", ["carried by \"arm\", which turns"] },
        { "[drive]\nsandwich = \"arm\"", "[drive]\nsandwich = \"ground\"", 36, 12, "drive.sandwich", ["is fixed: nothing can drive it"] },

        // Drives
        { "sense = \"counter-clockwise\"", "sense = \"anticlockwise\"", 38, 9, "drive.sense", ["none of the choices", "\"clockwise\", \"counter-clockwise\""] },
        { "sense = \"counter-clockwise\"", "sense = -1", 38, 9, "drive.sense", ["not text"] },
        { "[[hands]]", "[[drives]]\nsandwich = \"pointer\"\nturn = \"12 h\"\n[[hands]]", 40, 1, "drives", ["drive is given already", "either [drive] or [[drives]]"] },
        { "[drive]", "[drives]", 35, 1, "drives", ["single table", "[[drives]] with double brackets"] },
        { "[drive]", First + "[[drives]]", 39, 12, "drives.sandwich", ["driven already (line 35)"] },
        { "[drive]\nsandwich = \"arm\"", First + Set + "\n[[drives]]\nsandwich = \"pointer\"", 43, 7, "drives.set", ["setting is given already"] },
        { "[drive]\nsandwich = \"arm\"", "[[drives]]\nsandwich = \"amr\"", 36, 12, "drives.sandwich", ["no sandwich of this name", "nearest: arm"] },
        { "[drive]\nsandwich = \"arm\"", "[[drives]]", 35, 1, "drives.sandwich", ["\"sandwich\" is missing"] },
        { "[drive]\nsandwich = \"arm\"\nturn = \"1 h\"", "[[drives]]\nsandwich = \"arm\"\nturn = \"-1 h\"", 37, 8, "drives.turn", ["out of range"] },

        // The setting
        { Set, "set = \"2026-11-01T12:00:00Z\"", 39, 7, "drive.set", ["text, not a date: leave the quotes out"] },
        { Set, "set = \"soon\"", 39, 7, "drive.set", ["not a date", "2026-11-01T18:30:00+01:00"] },
        { Set, "set = 20261101", 39, 7, "drive.set", ["not a date"] },
        { Set, "set = 12:00:00", 39, 7, "drive.set", ["not a date"] },
        { Set, "set = true", 39, 7, "drive.set", ["not a date"] },
        { Set, "seet = 2026-11-01", 39, 1, "drive.seet", ["no such key", "nearest: set"] },

        // Angles of hands
        { "angle = 12.5", "angle = \"12\"", 44, 9, "hands.angle", ["text, not a number"] },
        { "angle = 12.5", "angle = 361", 44, 9, "hands.angle", ["too large", "from -360 to 360 degrees", "nearest: 360"] },
        { "angle = 12.5", "angle = nan", 44, 9, "hands.angle", ["not a finite number"] },
        { "angle = 12.5", "angle = 2026-11-01", 44, 9, "hands.angle", ["not a number"] },
    };

    [Fact]
    public void The_job_itself_is_good()
    {
        var job = JobReader.Parse(Arm, "arm.toml").Value!;
        Assert.Equal("arm", job.Axes[1].CarriedBy);
        Assert.True(job.Sandwiches[0].IsFixed);
        Assert.Equal(Sense.CounterClockwise, job.Drive!.Sense);
        Assert.Equal(new Fractions.Fraction(25, 2), job.Hands[0].Angle);
        Assert.Equal("2026-11-01T12:00:00Z", job.Setting!.Written);
    }

    [Theory]
    [MemberData(nameof(Spoilt))]
    public void Spoilt_jobs_are_told_where_they_are_spoilt(string good, string bad, int line, int column, string key, string[] says)
    {
        Assert.Contains(good, Arm, StringComparison.Ordinal);
        var outcome = JobReader.Parse(Arm.Replace(good, bad, StringComparison.Ordinal), "arm.toml");
        Assert.Null(outcome.Value);
        var problem = Assert.Single(outcome.Problems);
        Assert.Equal((new Place("arm.toml", line, column), key), (problem.Place, problem.Key));
        Assert.All(says, piece => Assert.Contains(piece, $"{problem.Message} | {problem.Allowed} | nearest: {problem.Nearest}", StringComparison.Ordinal));
    }

    [Fact]
    public void A_rack_carries_no_axis_and_is_not_carried()
    {
        var arm = Arm.Replace("layers = [{ washer = 2 }]", "layers = [{ gear = \"bar\", rack-length = 40, back-height = 4 }]", StringComparison.Ordinal);
        Assert.Contains(JobReader.Parse(arm, "arm.toml").Problems, p => p.Key == "axes.carried-by" && p.Message.Contains("carries no axis", StringComparison.Ordinal));
        var carried = Arm.Replace("layers = [{ gear = \"lower\", teeth = 24 }, { gear = \"upper\", teeth = 23 }]", "layers = [{ gear = \"lower\", rack-length = 40, back-height = 4 }, { gear = \"upper\", rack-length = 40, back-height = 4 }]", StringComparison.Ordinal);
        var problem = Assert.Single(JobReader.Parse(carried, "arm.toml").Problems);
        Assert.Equal((new Place("arm.toml", 25, 8), "sandwiches.axis"), (problem.Place, problem.Key));
        Assert.Contains("slides along the frame", problem.Message, StringComparison.Ordinal);
    }

    // Days and times that do not exist: whichever reader sees them first, they are told in their line.
    [Theory]
    [InlineData("2026-02-30")]
    [InlineData("2026-13-01")]
    [InlineData("0000-11-01")]
    [InlineData("2026-00-10")]
    [InlineData("2026-11-01T24:00:00Z")]
    [InlineData("2026-11-01T12:60:00Z")]
    [InlineData("2026-11-01T12:00:60Z")]
    [InlineData("2026-11-01T12:00:00+25:00")]
    [InlineData("2026-11-1")]
    [InlineData("1/11/2026")]
    [InlineData("11.11.2026")]
    public void Dates_that_do_not_exist_are_told(string date)
    {
        var outcome = JobReader.Parse(Arm.Replace(Set, $"set = {date}", StringComparison.Ordinal), "arm.toml");
        Assert.Null(outcome.Value);
        Assert.Equal(39, outcome.Problems[0].Place.Line);
    }

    [Theory]
    [InlineData("2026-11-01", true, 1793491200)]
    [InlineData("2026-11-01T12:00:00", true, 1793534400)]
    [InlineData("2026-11-01T12:00:00Z", false, 1793534400)]
    [InlineData("2026-11-01 12:00:00Z", false, 1793534400)]
    [InlineData("2026-11-01T12:00:00.250+01:30", false, 1793529000.25)]
    [InlineData("1969-12-31T23:59:59-00:00", false, -1)]
    public void Dates_are_read_exactly_and_without_an_offset_as_UTC(string date, bool isTakenForUtc, double seconds)
    {
        var moment = JobReader.Parse(Arm.Replace(Set, $"set = {date}", StringComparison.Ordinal), "arm.toml").Value!.Setting!;
        Assert.Equal((date, isTakenForUtc, seconds), (moment.Written, moment.IsTakenForUtc, moment.Seconds.ToDouble()));
    }

    [Fact]
    public void Whatever_is_read_is_checked_without_harm()
    {
        var random = new Random(20261101);
        var mutator = new JobMutator([Arm], [Arm]);
        var checkedJobs = 0;
        for (var run = 0; run < 3000; run++)
        {
            if (JobReader.Parse(mutator.Next(random), "m.toml").Value is { } job && Resolver.Resolve(job, ProfileFinder.BuiltIn).Value is { } mechanism)
            {
                var report = MechanismCheck.Of(mechanism);
                Assert.Equal(mechanism.Drive is null ? 0 : mechanism.Sandwiches.Length, report.Speeds.Length);
                _ = DialPositions.At(report, Moment.Of("", 2027, 1, 1, 0, 0));
                checkedJobs++;
            }
        }

        Assert.True(checkedJobs > 30, $"{checkedJobs} jobs");
    }

    [Fact]
    public void A_great_many_arms_in_a_circle_are_told_once()
    {
        var text = "title = 'x'\n" + string.Concat(Enumerable.Range(0, 3000).Select(i =>
            $"[[axes]]\nname = 'a{i}'\nposition = [{i}, 0]\ncarried-by = 's{(i + 1) % 3000}'\n[[sandwiches]]\nname = 's{i}'\naxis = 'a{i}'\nlayers = [{{ washer = 1 }}]\n"));
        var problem = Assert.Single(JobReader.Parse(text, "x.toml").Problems);
        Assert.Contains("carried in a circle", problem.Message, StringComparison.Ordinal);
    }
}
