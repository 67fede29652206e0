using GearBlanks.Curves;
using GearBlanks.Mechanisms;
using GearBlanks.Mechanisms.Conditions;

namespace GearBlanks.Tests.Mechanisms.Conditions;

/// <summary>Jobs under conditions: every kind of quantity, on every kind of pair.</summary>
internal static class ConditionsJobs
{
    /// <summary>Everything that can be asked for, at sizes as a careful shop has them, on gears of module 1.</summary>
    public static JobConditions Everything { get; } = new(TestJobs.At(90))
    {
        CentreDistanceTolerance = 0.02,
        PostTilt = 0.001,
        PostParallelism = 0.0005,
        SheetTolerance = 0.1,
        Gears = new JobGearConditions { ThicknessTolerance = 0.008, EdgeTaper = 0.002, Grade = 8 },
        Sandwiches = new JobSandwichConditions { BoreClearance = 0.03, EndPlay = 0.1 },
        IsOutsideStandard = true,
        FrameMaterial = "steel",
        Climate = new JobClimate(5, 35, 30, 80, 20, 50),
        Builds = new JobBuilds { Count = 20_000, Seed = 7 },
    };

    /// <summary>A row of gears to and fro, at heights, so that a gear with two mates feels its displacement in two directions.</summary>
    public static Job Row(params int[] teeth)
    {
        JobGear[] gears = [.. teeth.Select((z, i) => TestJobs.Gear($"g{i}", z) with { Material = i % 2 == 0 ? "acrylic" : "steel" })];
        Job job = TestJobs.Chain(gears, [.. teeth.Zip(teeth.Skip(1), (one, other) => ((one + other) / 2.0) + 0.1)]);
        return job with
        {
            Axes = [.. job.Axes.Select((axis, i) => axis with { Position = PlaceOf(teeth, i) })],
            Sandwiches = [.. job.Sandwiches.Select(sandwich => sandwich with { Height = 3 })],
            Conditions = Everything,
        };
    }

    /// <summary>A pinion in a ring, and a wheel on the pinion's arbor over a rack.</summary>
    public static Job RingAndRack() => new(
        TestJobs.At(0), "sled", TestJobs.Defaults with { Material = "acrylic" },
        [TestJobs.Axis("centre", 0), TestJobs.Axis("arbor", 20.2), TestJobs.Axis("bar", 20.2, -15.1)],
        [
            TestJobs.Sandwich("ring", "centre", TestJobs.Gear("ring", 60) with { Ring = new JobRing(80, null) }) with { Height = 1 },
            TestJobs.Sandwich("arbor", "arbor", TestJobs.Gear("pinion", 20), TestJobs.Gear("wheel", 30)) with { Height = 1 },
            TestJobs.Sandwich("rack", "bar", TestJobs.Gear("rack", 0) with { RackBar = new JobRackBar(60, 6) }) with { Height = 3 },
        ],
        [TestJobs.Mesh("pinion", "ring") with { Backlash = 0.06 }, TestJobs.Mesh("rack", "wheel") with { Backlash = 0.06 }], null, [])
    { Conditions = Everything };

    public static Job Named(string name) => name switch
    {
        "pair" => Row(24, 59),
        "row" => Row(20, 35, 15, 40, 22),
        _ => RingAndRack(),
    };

    private static Point PlaceOf(int[] teeth, int index)
    {
        var place = new Point(0, 0);
        for (int i = 1; i <= index; i++)
        {
            place += Vector.AtAngle((i % 2) - 0.4) * (((teeth[i - 1] + teeth[i]) / 2.0) + 0.1);
        }

        return place;
    }
}
