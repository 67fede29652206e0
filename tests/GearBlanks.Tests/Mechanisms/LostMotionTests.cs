using System.Collections.Immutable;
using GearBlanks.Findings;
using GearBlanks.Mechanisms;
using static GearBlanks.Tests.Mechanisms.TestJobs;

namespace GearBlanks.Tests.Mechanisms;

/// <summary>Lost motion at hands, worked out apart from the meshes' angular backlash, and its advice followed.</summary>
public sealed class LostMotionTests
{
    private const double DegreesInARadian = 180 / Math.PI;

    [Fact]
    public void Each_mesh_counts_by_the_ratio_from_there_on()
    {
        Job job = StepUp(0.1);
        MechanismReport report = job.Report();
        Mesh[] meshes = [.. report.Mechanism.Meshes];
        LostMotion lost = Assert.Single(report.Hands).LostMotion!;
        double first = meshes[0].Pair.SecondAngularBacklash!.Value * DegreesInARadian * 60 / 20;
        double second = meshes[1].Pair.SecondAngularBacklash!.Value * DegreesInARadian;
        Assert.Equal(first + second, lost.WorstCase, 1e-9);
        Assert.Equal(Math.Sqrt((first * first) + (second * second)), lost.RootSumSquare, 1e-9);
        Assert.Equal(["slow-mid low", "mid high-fast"], lost.Meshes.Select(play => play.Mesh));
        Assert.Equal(first, lost.Meshes[0].Degrees, 1e-9);
        Assert.Equal(second, lost.Meshes[1].Degrees, 1e-9);

        // The hand turns in an hour: a degree is a sixth of a minute.
        Assert.Equal(lost.WorstCase / 6, lost.WorstCaseMinutes, 1e-12);
        Assert.Equal(lost.RootSumSquare / 6, lost.RootSumSquareMinutes, 1e-12);
    }

    [Theory]
    [InlineData(0.04, Level.Ok)]
    [InlineData(0.2, Level.Tight)]
    [InlineData(0.30, Level.Tight)]
    [InlineData(0.45, Level.Fails)]
    public void A_hand_is_judged_by_the_worst_case(double backlash, Level level)
    {
        Job job = StepUp(backlash);
        Finding finding = Assert.Single(job.Report().Findings, finding => finding.Name == "lost-motion");
        Assert.Equal((level, "hand fast hand"), (finding.Level, finding.Place));
        Assert.Equal(Assert.Single(job.Report().Hands).LostMotion!.WorstCase, finding.Figure);
        if (level == Level.Ok)
        {
            Assert.Null(finding.Advice);
            return;
        }

        double factor = Advice.Number(finding.Advice, "Make the backlash of slow-mid low and mid high-fast # times what it is");
        Assert.Equal(Level.Ok, Assert.Single(StepUp(backlash * factor).Report().Findings, finding => finding.Name == "lost-motion").Level);
    }

    [Fact]
    public void What_no_backlash_within_limits_mends_is_said_to_be_so()
    {
        // Four steps up: a tooth's play at the slow end is seen large.
        Job job = Up(0.05, 4);
        Finding finding = Assert.Single(job.Report().Findings, finding => finding.Name == "lost-motion");
        Assert.Equal(Level.Fails, finding.Level);
        Assert.StartsWith("No backlash within its own limits is small enough", finding.Advice, StringComparison.Ordinal);
    }

    [Fact]
    public void A_hand_on_the_driven_sandwich_loses_nothing()
    {
        Job job = StepUp(0.1) with { Hands = [Hand("slow", 9 * 3600)] };
        LostMotion lost = Assert.Single(job.Report().Hands).LostMotion!;
        Assert.Equal(0, lost.WorstCase);
        Assert.Empty(lost.Meshes);
    }

    [Fact]
    public void Through_an_arm_the_slips_count_as_the_equations_say()
    {
        // With the arm held the pair slips on the fixed wheel by j/r of 24 teeth, and turns the hand by 23/23 of that.
        MechanismReport report = ArmMechanismTests.MotionWork().Report();
        Mesh[] meshes = [.. report.Mechanism.Meshes];
        double expected = meshes[0].Pair.SecondAngularBacklash!.Value + meshes[1].Pair.SecondAngularBacklash!.Value;
        Assert.Equal(expected * DegreesInARadian, Assert.Single(report.Hands).LostMotion!.WorstCase, 1e-9);
    }

    [Fact]
    public void A_profile_without_the_limit_sets_none() =>
        Assert.Equal((Level.Ok, (double?)null), (TestLimits.Common with { LostMotion = new Limit(null, null, null, null, "") }).LostMotion.Judge(1e6));

    private static Job StepUp(double backlash)
    {
        // 60 drives 20, on its spindle 60 drives 20: nine turns of the hand for one.
        Job job = Up(backlash, 2);
        Assert.Equal(9, job.Report().Speeds[^1].Speed!.Value.Abs().ToDouble());
        return job;
    }

    private static Job Up(double backlash, int steps)
    {
        ImmutableArray<string> names = ["slow", .. Enumerable.Range(1, steps - 1).Select(i => i == 1 ? "mid" : $"mid{i}"), "fast"];
        return new Job(
            At(0), "step up", Defaults with { Backlash = backlash },
            [.. Enumerable.Range(0, steps + 1).Select(i => Axis($"a{i}", 40 * i))],
            [
                Sandwich("slow", "a0", Gear("slow", 60)),
                .. Enumerable.Range(1, steps - 1).Select(i => Sandwich(names[i], $"a{i}", Gear($"{names[i]} low", 20), Gear($"{names[i]} high", 60))),
                Sandwich("fast", $"a{steps}", Gear("fast", 20)),
            ],
            [.. Enumerable.Range(0, steps).Select(i => Mesh(i == 0 ? "slow" : $"{names[i]} high", i == steps - 1 ? "fast" : $"{names[i + 1]} low"))],
            new JobDrive(At(1), "slow", (int)Math.Pow(3, steps) * 3600), [Hand("fast", 3600)]);
    }
}
