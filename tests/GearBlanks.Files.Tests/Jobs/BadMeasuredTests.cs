using GearBlanks.Files.Jobs;
using GearBlanks.Mechanisms;

namespace GearBlanks.Files.Tests.Jobs;

/// <summary>Each row spoils what a job says of measured teeth.</summary>
public class BadMeasuredTests
{
    private static readonly string Job = JobTexts.Pair.Replace("teeth = 20", "teeth = 20\nmeasured-span = 7.62\nspan-teeth = 3", StringComparison.Ordinal);

    /// <summary>What is replaced, by what; line, column, key of the one problem; pieces of what it says.</summary>
    public static TheoryData<string, string, int, int, string, string[]> Spoilt => new()
    {
        { "measured-span = 7.62", "measured-span = \"7.62\"", 18, 17, "sandwiches.layers.measured-span", ["unit is missing"] },
        { "measured-span = 7.62", "measured-span = 0", 18, 17, "sandwiches.layers.measured-span", ["too small"] },
        { "measured-span = 7.62", "measured-spam = 7.62", 18, 1, "sandwiches.layers.measured-spam", ["no such key", "nearest: measured-span"] },
        { "measured-span = 7.62", "measured-span = nan", 18, 17, "sandwiches.layers.measured-span", ["not a finite number"] },
        { "measured-span = 7.62\n", "", 18, 14, "sandwiches.layers.span-teeth", ["needs the number of teeth that it goes over, and the other way round"] },
        { "span-teeth = 3", "", 18, 17, "sandwiches.layers.measured-span", ["needs the number of teeth", "measured-span together with span-teeth"] },
        { "span-teeth = 3", "span-teeth = 3.5", 19, 14, "sandwiches.layers.span-teeth", ["not a whole number"] },
        { "span-teeth = 3", "span-teeth = 0", 19, 14, "sandwiches.layers.span-teeth", ["too small"] },
        { "span-teeth = 3", "span-teeth = 3\nmeasured-tooth-thickness = 1.55", 18, 17, "sandwiches.layers.measured-span", ["measure is given already"] },
        { "span-teeth = 3", "span-teeth = 3\nring = true\nrim-diameter = 30", 18, 17, "sandwiches.layers.measured-span", ["an external gear only", "measured-tooth-thickness"] },
        { "measured-span = 7.62\nspan-teeth = 3", "measured-tooth-thickness = -1", 18, 28, "sandwiches.layers.measured-tooth-thickness", ["too small"] },
        { "measured-span = 7.62\nspan-teeth = 3", "measured-tooth-thickness = [1, 2]", 18, 28, "sandwiches.layers.measured-tooth-thickness", ["not a length"] },
    };

    [Fact]
    public void The_job_itself_is_good()
    {
        JobGear gear = JobReader.Parse(Job, "pair.toml").Value!.Sandwiches[0].Layers.OfType<JobGear>().Single();
        Assert.Equal((null, 7.62, 3), (gear.Measured!.Thickness, gear.Measured.Span, gear.Measured.SpanTeeth));
    }

    [Theory]
    [MemberData(nameof(Spoilt))]
    public void Spoilt_jobs_are_told_where_they_are_spoilt(string good, string bad, int line, int column, string key, string[] says)
    {
        Assert.Contains(good, Job, StringComparison.Ordinal);
        var problem = Assert.Single(JobReader.Parse(Job.Replace(good, bad, StringComparison.Ordinal), "pair.toml").Problems);
        Assert.Equal((new Place("pair.toml", line, column), key), (problem.Place, problem.Key));
        Assert.All(says, piece => Assert.Contains(piece, $"{problem.Message} | {problem.Allowed} | nearest: {problem.Nearest}", StringComparison.Ordinal));
    }
}
