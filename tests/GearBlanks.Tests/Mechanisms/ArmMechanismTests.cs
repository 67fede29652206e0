using System.Globalization;
using CsCheck;
using Fractions;
using GearBlanks.Curves;
using GearBlanks.Findings;
using GearBlanks.Mechanisms;

namespace GearBlanks.Tests.Mechanisms;

/// <summary>Mechanisms whose axes are carried by arms.</summary>
public sealed class ArmMechanismTests
{
    private static readonly Gen<Job> Nested =
        from steps in (from teeth in Gen.Select(Gen.Int[17, 30], Gen.Int[17, 30], Gen.Int[17, 30])
                       from pick in Gen.Int[0, 1000]
                       from direction in Gen.Double[0, 6.28]
                       from carried in Gen.Int[0, 2]
                       select new Step(teeth.Item1, teeth.Item2, teeth.Item3, pick, direction, carried)).Array[1, 4]
        select Build(steps);

    [Fact]
    public void A_pointer_through_an_arm()
    {
        // w = 1 - (22 23) / (24 23) = 1/12 of the arm's.
        MechanismReport report = MotionWork().Report();
        Assert.Equal(["0/1", "1/1", "23/12", "1/12"], report.Speeds.Select(speed => $"{speed.Speed!.Value.Numerator}/{speed.Speed.Value.Denominator}"));
        Assert.Equal([null, null, "arm", null], report.Speeds.Select(speed => speed.Arm));
        Assert.Equal(new Fraction(11, 12), report.Speeds[2].AgainstArm);
        Assert.Equal(0, Assert.Single(report.Hands).Timing!.ErrorPpm);
        Assert.DoesNotContain(report.Findings, finding => finding.Level == Level.Fails);
    }

    // An independent view: at every pitch point both gears move alike, as rigid bodies on axes that move with what carries them.
    [Fact]
    public void Both_gears_of_every_mesh_move_alike_where_they_touch()
    {
        int moved = 0;
        Nested.Sample(
            job =>
            {
                Mechanism mechanism = Settled(job).Resolved();
                MechanismReport report = MechanismCheck.Of(mechanism);
                Assert.DoesNotContain(report.Findings, finding => finding.Name is "distance-changes" or "train-locked" or "train-loose" or "train-contradiction");
                var motion = new RigidMotion(mechanism, report.Speeds.ToDictionary(speed => speed.Sandwich, speed => speed.Speed!.Value.ToDouble()));
                foreach (Mesh mesh in mechanism.Meshes)
                {
                    (Vector one, Vector other) = (motion.Of(mesh.First.Sandwich, mesh.PitchPoint), motion.Of(mesh.Second.Sandwich, mesh.PitchPoint));
                    Assert.Equal(0, (one - other).Length, 1e-9 * (1 + one.Length));
                    moved += mesh.First.Axis.CarriedBy is null && mesh.Second.Axis.CarriedBy is null ? 0 : 1;
                }
            },
            iter: 60, threads: 1);
        Assert.True(moved > 50);
    }

    [Fact]
    public void Axes_on_two_arms_change_their_distance()
    {
        Job job = MotionWork();
        job = job with
        {
            Axes = job.Axes.Add(TestJobs.Axis("other", 23, 24) with { CarriedBy = "second arm" }),
            Sandwiches = job.Sandwiches.Add(TestJobs.Sandwich("second arm", "column", new JobWasher(TestJobs.At(2), 2))).Add(TestJobs.Sandwich("stray", "other", TestJobs.Gear("stray", 24))),
            Meshes = job.Meshes.Add(TestJobs.Mesh("lower", "stray")),
        };
        Finding finding = Assert.Single(job.Report().Findings, finding => finding.Name == "distance-changes");
        Assert.Equal((Level.Fails, "mesh lower-stray"), (finding.Level, finding.Place));

        // The advice: one arm for both axes.
        Job mended = job with { Axes = [.. job.Axes.Select(axis => axis.Name == "other" ? axis with { CarriedBy = "arm" } : axis)] };
        Assert.DoesNotContain(mended.Report().Findings, finding => finding.Name == "distance-changes");
    }

    [Fact]
    public void A_carried_gear_with_no_second_mesh_is_settled_by_its_arm_and_wheel() =>
        Assert.All(MotionWork().Report().Speeds, speed => Assert.NotNull(speed.Speed));

    [Fact]
    public void A_fixed_arm_is_a_part_of_the_frame()
    {
        Job job = MotionWork();
        job = job.WithSandwich(one => one.Name == "arm", arm => arm with { IsFixed = true }) with { Drive = new JobDrive(TestJobs.At(1), "pointer", 3600) };
        MechanismReport report = (job with { Sandwiches = job.Sandwiches.RemoveAt(0), Meshes = job.Meshes.RemoveAt(0), Hands = [] }).Report();
        Assert.Equal(new Fraction(-23, 23), report.Speeds.Single(speed => speed.Sandwich == "pair").Speed);
    }

    [Fact]
    public void A_differential_takes_two_drives()
    {
        Job job = Differential();
        MechanismReport report = job.Report();
        // The middle wheel 20 once in an hour clockwise, the ring 60 once in three hours the other way: arm = (20 - 60/3) / 80 = 0.
        Assert.Equal(Fraction.Zero, report.Speeds.Single(speed => speed.Sandwich == "arm").Speed);
        job = job with { OtherDrives = [job.OtherDrives[0] with { Sense = Sense.Clockwise }] };
        Assert.Equal(new Fraction(1, 2), job.Report().Speeds.Single(speed => speed.Sandwich == "arm").Speed);
    }

    [Fact]
    public void A_differential_with_one_drive_says_that_it_is_free()
    {
        MechanismReport report = (Differential() with { OtherDrives = [] }).Report();
        Assert.Contains(report.Findings, finding => finding.Name == "train-loose" && finding.Message.Contains("does not settle", StringComparison.Ordinal));
    }

    [Fact]
    public void Drives_that_contradict_one_another_are_told_the_turn_that_fits()
    {
        Job job = MotionWork();
        job = job with { OtherDrives = [new JobDrive(TestJobs.At(1), "pointer", 7 * 3600)] };
        Finding finding = Assert.Single(job.Report().Findings, finding => finding.Name == "train-contradiction");
        Assert.Contains("\"43200 s\" clockwise", finding.Advice, StringComparison.Ordinal);
        Job mended = job with { OtherDrives = [job.OtherDrives[0] with { Turn = 43200 }] };
        Assert.DoesNotContain(mended.Report().Findings, finding => finding.Name == "train-contradiction");
    }

    // Two carried gears between 20 and 60 fit wherever the angle between them is a multiple of 360/80 degrees (common practice, from memory).
    [Theory]
    [InlineData(180, true)]
    [InlineData(175.5, true)]
    [InlineData(178, false)]
    public void Carried_gears_fit_where_their_angle_is_a_whole_part(double degrees, bool fits)
    {
        Job job = Differential();
        double angle = degrees * Math.PI / 180;
        job = job with
        {
            Axes = job.Axes.Add(TestJobs.Axis("second", 20 * Math.Cos(angle), 20 * Math.Sin(angle)) with { CarriedBy = "arm" }),
            Sandwiches = job.Sandwiches.Add(TestJobs.Sandwich("second", "second", TestJobs.Gear("second", 20))),
            Meshes = [.. job.Meshes, TestJobs.Mesh("middle", "second"), TestJobs.Mesh("second", "ring")],
        };
        MechanismReport report = job.Report();
        Finding finding = Assert.Single(report.Findings, finding => finding.Name == "train-surplus");
        Assert.Equal(Level.Ok, finding.Level);
        Assert.Equal(fits, !report.Findings.Any(finding => finding.Name == "out-of-phase" && finding.Level == Level.Fails));
    }

    // The weights of a loop's slips against the walk's own formula, which holds where no arm turns.
    [Fact]
    public void The_play_of_a_loop_is_the_same_by_both_ways()
    {
        Job job = Differential();
        job = job with
        {
            Axes = [.. job.Axes.Select(axis => axis with { CarriedBy = null }), TestJobs.Axis("second", 20 * Math.Cos(3), 20 * Math.Sin(3))],
            Sandwiches = [.. job.Sandwiches.Where(sandwich => sandwich.Name != "arm"), TestJobs.Sandwich("second", "second", TestJobs.Gear("second", 20))],
            Meshes = [.. job.Meshes, TestJobs.Mesh("middle", "second"), TestJobs.Mesh("second", "ring")],
            OtherDrives = [],
        };
        Mechanism mechanism = job.Resolved();
        MeshedPhases phases = MeshedPhases.Of(mechanism);
        PhaseGap gap = Assert.Single(phases.OutOfPhase);
        Mechanism armed = mechanism with { Axes = mechanism.Axes.Add(new Axis("aside", new Point(500, 0)) { CarriedBy = "middle" }) };
        Assert.Equal(gap.Play, Assert.Single(ArmPhases.Held(gap, phases.Centred, armed)).Play, 1e-12);
    }

    [Fact]
    public void A_loop_that_settles_an_arm_is_never_held_out_of_phase()
    {
        // A lay shaft at any place turns the ring's second row from the middle wheel's: the arm comes to stand where all teeth meet.
        Job job = Differential();
        job = job with
        {
            Axes = job.Axes.Add(TestJobs.Axis("lay", 33 * Math.Cos(2), 33 * Math.Sin(2))),
            Sandwiches = [
                TestJobs.Sandwich("middle", "column", TestJobs.Gear("middle", 20), TestJobs.Gear("middle low", 30)),
                .. job.Sandwiches.Where(sandwich => sandwich.Name is "arm" or "carried"),
                TestJobs.Sandwich("ring", "column", TestJobs.Gear("ring", 60) with { Ring = new JobRing(75, null) }, TestJobs.Gear("ring low", 43)),
                TestJobs.Sandwich("lay", "lay", TestJobs.Gear("lay low", 36), TestJobs.Gear("lay high", 23)),
            ],
            Meshes = [.. job.Meshes, TestJobs.Mesh("middle low", "lay low"), TestJobs.Mesh("lay high", "ring low")],
            OtherDrives = [],
        };
        Assert.Single(MeshedPhases.Of(job.Resolved()).OutOfPhase);
        MechanismReport report = job.Report();
        Assert.DoesNotContain(report.Findings, finding => finding.Name is "out-of-phase" or "train-locked" or "train-loose");
    }

    /// <summary>Twelve to one through an arm: a fixed wheel of 22, a pair of 24 and 23 on the arm, a wheel of 23 with the pointer.</summary>
    internal static Job MotionWork() => new(
        TestJobs.At(0), "motion work", TestJobs.Defaults,
        [TestJobs.Axis("column", 0), TestJobs.Axis("rider", 23) with { CarriedBy = "arm" }],
        [
            TestJobs.Sandwich("ground", "column", TestJobs.Gear("ground", 22)) with { IsFixed = true },
            TestJobs.Sandwich("arm", "column", new JobWasher(TestJobs.At(2), 2)),
            TestJobs.Sandwich("pair", "rider", TestJobs.Gear("lower", 24), TestJobs.Gear("upper", 23)),
            TestJobs.Sandwich("pointer", "column", TestJobs.Gear("pointer", 23)),
        ],
        [TestJobs.Mesh("ground", "lower"), TestJobs.Mesh("upper", "pointer")],
        new JobDrive(TestJobs.At(1), "arm", 3600), [TestJobs.Hand("pointer", 12 * 3600)]);

    private static Job Differential() => new(
        TestJobs.At(0), "differential", TestJobs.Defaults,
        [TestJobs.Axis("column", 0), TestJobs.Axis("rider", 20) with { CarriedBy = "arm" }],
        [
            TestJobs.Sandwich("middle", "column", TestJobs.Gear("middle", 20)),
            TestJobs.Sandwich("arm", "column", new JobWasher(TestJobs.At(2), 2)),
            TestJobs.Sandwich("carried", "rider", TestJobs.Gear("carried", 20)),
            TestJobs.Sandwich("ring", "column", TestJobs.Gear("ring", 60) with { Ring = new JobRing(75, null) }),
        ],
        [TestJobs.Mesh("middle", "carried"), TestJobs.Mesh("carried", "ring")],
        new JobDrive(TestJobs.At(1), "middle", 3600), [])
    {
        OtherDrives = [new JobDrive(TestJobs.At(1), "ring", 3 * 3600) { Sense = Sense.CounterClockwise }],
    };

    // Each step sets a pair of gears on a new axis beside an old one, between two wheels on that, and lets the frame, what carries the old axis, or a
    // new arm on the old axis carry the new one.
    private static Job Build(Step[] steps)
    {
        List<JobAxis> axes = [TestJobs.Axis("a0", 0)];
        List<JobSandwich> sandwiches = [];
        List<JobMesh> meshes = [];
        for (int i = 0; i < steps.Length; i++)
        {
            (Step step, JobAxis old) = (steps[i], axes[steps[i].Pick % axes.Count]);
            string n = i.ToString(CultureInfo.InvariantCulture);
            string? carrier = step.Carried == 0 ? old.CarriedBy : $"arm{n}";
            if (step.Carried > 0)
            {
                sandwiches.Add(TestJobs.Sandwich($"arm{n}", old.Name, new JobWasher(TestJobs.At(1), 1)));
            }

            int sum = step.First + step.Second;
            Vector way = Vector.AtAngle(step.Direction) * (sum / 2.0);
            axes.Add(TestJobs.Axis($"a{n}+", old.Position!.Value.X + way.X, old.Position.Value.Y + way.Y) with { CarriedBy = carrier });
            int third = Math.Min(step.Third, sum - 17);
            sandwiches.Add(TestJobs.Sandwich($"in{n}", old.Name, TestJobs.Gear($"in{n}", step.First)));
            sandwiches.Add(TestJobs.Sandwich($"out{n}", old.Name, TestJobs.Gear($"out{n}", third)));
            sandwiches.Add(TestJobs.Sandwich($"pair{n}", $"a{n}+", TestJobs.Gear($"low{n}", step.Second), TestJobs.Gear($"high{n}", sum - third)));
            meshes.AddRange([TestJobs.Mesh($"in{n}", $"low{n}"), TestJobs.Mesh($"high{n}", $"out{n}")]);
        }

        return new Job(TestJobs.At(0), "nested", TestJobs.Defaults, [.. axes], [.. sandwiches], [.. meshes], null, []);
    }

    // Drives whatever is not settled yet, each at another speed.
    private static Job Settled(Job job)
    {
        job = job with { Drive = new JobDrive(TestJobs.At(1), job.Sandwiches[0].Name, 60) };
        while (job.Report().Speeds.FirstOrDefault(speed => speed.Speed is null) is { } loose)
        {
            job = job with { OtherDrives = job.OtherDrives.Add(new JobDrive(TestJobs.At(1), loose.Sandwich, 70 + (11 * job.OtherDrives.Length))) };
        }

        return job;
    }

    private sealed record Step(int First, int Second, int Third, int Pick, double Direction, int Carried);

    private sealed class RigidMotion(Mechanism mechanism, Dictionary<string, double> speeds)
    {
        public Vector Of(string sandwich, Point at)
        {
            Axis axis = mechanism.Sandwiches.Single(one => one.Name == sandwich).Axis;
            Vector own = (at - axis.Position).TurnedLeft * speeds[sandwich];
            return axis.CarriedBy is { } arm ? Of(arm, axis.Position) + own : own;
        }
    }
}
