using GearBlanks.Files.Jobs;
using GearBlanks.Mechanisms;

namespace GearBlanks.Files.Tests.Jobs;

/// <summary>Rings and racks as a job file gives them.</summary>
public sealed class RingAndRackJobTests
{
    private const string Job = """
        defaults = { module = 1, thickness = 3 }
        axes = [{ name = "middle", position = [0, 0] }, { name = "side", position = [10, 0] }, { name = "bar", position = [0, -20] }]
        sandwiches = [
          { name = "ring", axis = "middle", layers = [{ teeth = 60, ring = true, rim-diameter = 75, root-fillet = 0.2 }] },
          { name = "pinion", axis = "side", layers = [{ teeth = 40 }] },
          { name = "bar", axis = "bar", layers = [{ gear = "rack", rack-length = 100, back-height = 5, turned = 30 }, { washer = 1 }] },
        ]
        """;

    [Fact]
    public void Rings_and_racks_arrive_with_their_sizes()
    {
        var job = JobReader.Parse(Job, "job.toml").Value!;
        JobGear[] gears = [.. job.Sandwiches.SelectMany(sandwich => sandwich.Layers).OfType<JobGear>()];
        Assert.Equal(new JobRing(75, 0.2), gears[0].Ring);
        Assert.Equal((null, null), (gears[1].Ring, gears[1].RackBar));
        Assert.Equal((0, new JobRackBar(100, 5)), (gears[2].Teeth, gears[2].RackBar));
        Assert.Equal(Math.PI / 6, gears[2].Turned, 12);
    }

    [Theory]
    [InlineData("back-height = 5, ", "", "sandwiches.layers.back-height", "needs the distance of its back")]
    [InlineData("back-height = 5", "back-height = 5, bore = 3", "sandwiches.layers.bore", "does not take this key")]
    [InlineData("back-height = 5", "back-height = 5, teeth = 30", "sandwiches.layers.teeth", "does not take this key")]
    [InlineData("back-height = 5", "back-height = 5, rim-diameter = 30", "sandwiches.layers.rim-diameter", "does not take this key")]
    public void What_a_rack_lacks_or_does_not_take_is_told(string good, string bad, string key, string says)
    {
        var problem = JobReader.Parse(Job.Replace(good, bad, StringComparison.Ordinal), "job.toml").Problems[0];
        Assert.Equal(key, problem.Key);
        Assert.Contains(says, problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_gear_in_a_rack_s_sandwich_is_refused()
    {
        var text = Job.Replace("{ washer = 1 }", "{ gear = \"wheel\", teeth = 20 }", StringComparison.Ordinal);
        var problem = Assert.Single(JobReader.Parse(text, "job.toml").Problems);
        Assert.Equal(("sandwiches.layers.teeth", "a sandwich of its own for the rack"), (problem.Key, problem.Allowed));
    }

    [Fact]
    public void Racks_that_slide_together_lie_in_one_direction()
    {
        var text = Job.Replace("{ washer = 1 }", "{ gear = \"second\", rack-length = 50, back-height = 5, turned = 31 }", StringComparison.Ordinal);
        var problem = Assert.Single(JobReader.Parse(text, "job.toml").Problems);
        Assert.Equal("sandwiches.layers.turned", problem.Key);
        Assert.Single(JobReader.Parse(text.Replace("turned = 31", "turned = 30", StringComparison.Ordinal), "job.toml").Value!.Sandwiches[2].Layers, layer => layer is JobGear { Name: "second" });
    }

    [Fact]
    public void A_hand_on_a_rack_is_refused()
    {
        var text = Job + "\ndrive = { sandwich = \"pinion\", turn = \"1 h\" }\nhands = [{ name = \"pointer\", sandwich = \"bar\", turn = \"1 h\" }]";
        var problem = Assert.Single(JobReader.Parse(text, "job.toml").Problems);
        Assert.Equal("hands.sandwich", problem.Key);
    }
}
