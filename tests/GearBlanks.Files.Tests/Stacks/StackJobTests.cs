using GearBlanks.Curves;
using GearBlanks.Files.Jobs;
using GearBlanks.Mechanisms;

namespace GearBlanks.Files.Tests.Stacks;

/// <summary>Every key of the stack arrives under its own name.</summary>
public sealed class StackJobTests
{
    private const string Full =
        """
        defaults = { module = 1, thickness = 3, thickness-tolerance = 0.01 }
        axes = [
          { name = "near", position = [0, 0], spindles = [
            { name = "tube", diameter = 4, bore = 3.1, bottom = -1, top = 20, turns-with = "a", class = "h6", measured-diameter = 3.99, bore-class = "G7", measured-bore = 3.2 },
            { name = "rod", diameter = 3, bottom = 0, top = 30 },
          ] },
          { name = "far", from = "near", distance = 30, direction = 90 },
        ]
        columns = [{ name = "pillar", position = [50, 60], diameter = 8, bottom = 1, top = 25 }]
        plates = [
          { name = "disc", position = [1, 2], diameter = 90, bottom = 25, thickness = 2, thickness-tolerance = 0.1, holes = [{ position = [3, 4], diameter = 5 }] },
          { name = "base", position = [5, 6], length = 70, width = 80, direction = 90, bottom = -3, thickness = 3 },
        ]
        arms = [{ name = "bridge", from = "near", to = "far", width = 7, bottom = 21, thickness = 2, thickness-tolerance = 0.2, bore = 4, turns-with = "a" }]
        sandwiches = [
          { name = "a", axis = "near", height = 2, measured-height = 2.1, height-tolerance = 0.3, layers = [
            { gear = "wheel", teeth = 20, bore = 4, thickness-tolerance = 0.02, measured-thickness = 3.05, bore-class = "H8", measured-bore = 4.01, seat = "pressed",
              screws = { count = 3, circle = 12, hole = 2.4, head = 3.8, thread = 2, head-height = 1.3, heads = "down", length = 6, grip = 3.5, socket = 4 } },
            { washer = 1.5, diameter = 9, bore = 4.2, bore-class = "H9", measured-bore = 4.25, measured-thickness = 1.6, thickness-tolerance = 0.04, seat = "held" },
          ] },
          { name = "b", axis = "far", layers = [{ teeth = 40, seat = "runs", screws = { count = 3, circle = 12, hole = 2.4 } }] },
        ]
        drive = { sandwich = "a", turn = "1 h" }
        hands = [
          { name = "pointer", sandwich = "a", turn = "1 h", length = 20, tail = 5, width = 3, height = 22, thickness = 0.8, bore = 4.1 },
          { name = "plain", sandwich = "b", turn = "1 h" },
        ]

        """;

    [Fact]
    public void Spindles_and_the_frame()
    {
        Job job = Read();
        JobSpindle tube = job.Axes[0].Spindles[0];
        Assert.Equal(("tube", 4, 3.1, -1, 20, "a"), (tube.Name, tube.Diameter, tube.Bore, tube.Bottom, tube.Top, tube.TurnsWith));
        Assert.Equal(("h6", 3.99, "G7", 3.2), (tube.Class!.ToString(), tube.MeasuredDiameter, tube.BoreClass!.ToString(), tube.MeasuredBore));
        JobSpindle rod = job.Axes[0].Spindles[1];
        Assert.Equal((0, null, null, null, null, null), (rod.Bore, rod.TurnsWith, rod.Class, rod.MeasuredDiameter, rod.BoreClass, rod.MeasuredBore));
        Assert.Equal(new JobColumn(job.Frame.Columns[0].Place, "pillar", new Point(50, 60), 8, 1, 25), Assert.Single(job.Frame.Columns));
        JobPlate disc = job.Frame.Plates[0];
        Assert.Equal(("disc", new Point(1, 2), 90, 25, 2, 0.1), (disc.Name, disc.Position, disc.Diameter, disc.Bottom, disc.Thickness, disc.ThicknessTolerance));
        Assert.Equal([new Circle(new Point(3, 4), 2.5)], disc.Holes);
        JobPlate plate = job.Frame.Plates[1];
        Assert.Equal((null, 70, 80, Math.PI / 2, 0), (plate.Diameter, plate.Length, plate.Width, plate.Direction, plate.ThicknessTolerance));
        Assert.Equal(new JobArm(job.Frame.Arms[0].Place, "bridge", "near", "far", 7, 21, 2, 0.2, 4, "a"), Assert.Single(job.Frame.Arms));
    }

    [Fact]
    public void Layers_screws_and_hands()
    {
        Job job = Read();
        Assert.Equal(0.01, job.Defaults.ThicknessTolerance);
        Assert.Equal((2.1, 0.3), (job.Sandwiches[0].MeasuredHeight, job.Sandwiches[0].HeightTolerance));
        Assert.Equal((null, 0), (job.Sandwiches[1].MeasuredHeight, job.Sandwiches[1].HeightTolerance));
        var wheel = (JobGear)job.Sandwiches[0].Layers[0];
        Assert.Equal((0.02, 3.05, null, null, 4.01, JobSeat.Pressed), (wheel.Stack.ThicknessTolerance, wheel.Stack.MeasuredThickness, wheel.Stack.Diameter, wheel.Stack.Bore, wheel.Stack.MeasuredBore, wheel.Stack.Seat));
        Assert.Equal("H8", wheel.Stack.BoreClass!.ToString());
        Assert.Equal(new JobScrewDepth(2, 1.3, true, 6, 3.5, 4), wheel.Screws!.Depth);
        JobLayerFit washer = job.Sandwiches[0].Layers[1].Stack;
        Assert.Equal((0.04, 1.6, 9, 4.2, 4.25, JobSeat.Held), (washer.ThicknessTolerance, washer.MeasuredThickness, washer.Diameter, washer.Bore, washer.MeasuredBore, washer.Seat));
        Assert.Equal("H9", washer.BoreClass!.ToString());
        Assert.Equal(JobSeat.Runs, job.Sandwiches[1].Layers[0].Stack.Seat);
        Assert.Null(((JobGear)job.Sandwiches[1].Layers[0]).Screws!.Depth);
        Assert.Equal(new JobHandShape(20, 5, 3, 22, 0.8, 4.1), job.Hands[0].Shape);
        Assert.Null(job.Hands[1].Shape);
    }

    private static Job Read()
    {
        Outcome<Job> outcome = JobReader.Parse(Full, "x.toml");
        Assert.Empty(outcome.Problems);
        return outcome.Value!;
    }
}
