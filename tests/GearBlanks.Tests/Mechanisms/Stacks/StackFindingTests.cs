using GearBlanks.Curves;
using GearBlanks.Findings;
using GearBlanks.Mechanisms;
using GearBlanks.Mechanisms.Fits;
using static GearBlanks.Tests.Mechanisms.TestJobs;

namespace GearBlanks.Tests.Mechanisms.Stacks;

/// <summary>Findings of fits, wobble, screws and measured heights: figures worked out apart, advice followed.</summary>
public sealed class StackFindingTests
{
    private static readonly double Alpha = TestRacks.Radians(20);

    // Running: 4 H8 (0 to +18) on 4 f7 (-22 to -10), on h6 (-8 to 0), on p6 (+12 to +20); ISO 286-2:2010, from memory.
    [Theory]
    [InlineData("H8", "f7", 0.010, 0.040, Level.Ok)]
    [InlineData("H8", "h6", 0, 0.026, Level.Tight)]
    [InlineData("H8", "p6", -0.020, 0.006, Level.Fails)]
    public void Running_fits(string bore, string spindle, double least, double greatest, Level level)
    {
        Job job = Mounted(ToleranceClass.Read(bore), ToleranceClass.Read(spindle), null);
        Finding[] findings = Named(job, "fit-clearance");
        Assert.Equal([least, greatest], findings.OrderBy(finding => finding.Figure).Select(finding => Math.Round(finding.Figure, 9)));
        Assert.Equal(level, findings.Max(finding => finding.Level));
        if (level != Level.Ok)
        {
            double wider = Advice.Number(findings[0].Advice, "Make the bore at least # mm");
            Assert.All(Named(Mounted(null, ToleranceClass.Read(spindle), wider), "fit-clearance"), finding => Assert.Equal(Level.Ok, finding.Level));
        }
    }

    [Fact]
    public void A_loose_running_fit()
    {
        Finding finding = Named(Mounted(null, ToleranceClass.Read("f7"), 4.2), "fit-clearance").Single(one => one.Level == Level.Tight);
        Assert.Equal(0.222, finding.Figure, 1e-9);
        double closer = Advice.Number(finding.Advice, "Make the bore at most # mm");
        Assert.All(Named(Mounted(null, ToleranceClass.Read("f7"), closer), "fit-clearance"), one => Assert.Equal(Level.Ok, one.Level));
    }

    [Theory]
    [InlineData("P7", "h6", 0, 0.020, Level.Ok)]
    [InlineData("H7", "p6", 0, 0.020, Level.Ok)]
    [InlineData("H7", "k6", -0.011, 0.009, Level.Fails)]
    [InlineData("S7", "s7", 0.034, 0.058, Level.Tight)]
    public void Pressed_fits(string bore, string spindle, double least, double greatest, Level level)
    {
        Job job = Mounted(ToleranceClass.Read(bore), ToleranceClass.Read(spindle), null, JobSeat.Pressed);
        Finding[] findings = Named(job, "fit-interference");
        Assert.Equal([least, greatest], findings.OrderBy(finding => finding.Figure).Select(finding => Math.Round(finding.Figure, 9) + 0.0));
        Assert.Equal(level, findings.Max(finding => finding.Level));
        if (level != Level.Ok)
        {
            Finding worst = findings.MaxBy(finding => finding.Level)!;
            double size = Advice.Number(worst.Advice, level == Level.Fails ? "Make the bore at most # mm" : "Make the bore at least # mm");
            Finding after = Named(Mounted(null, ToleranceClass.Read(spindle), size, JobSeat.Pressed), "fit-interference").Single(one => one.Message[..5] == worst.Message[..5]);
            Assert.Equal(Level.Ok, after.Level);
        }
    }

    [Fact]
    public void Nothing_is_said_of_a_fit_that_is_only_drawn() => Assert.Empty(Named(Mounted(null, null, null), "fit-clearance"));

    [Fact]
    public void What_is_held_is_not_asked_for_a_clearance() => Assert.Empty(Named(Mounted(null, null, 4.2, JobSeat.Held), "fit-clearance"));

    // c r / L of the wheel b (tip radius 21, hub of its own 2 mm) against a wheel on another axis over it.
    [Theory]
    [InlineData(4.05, 0.6, Level.Ok)]
    [InlineData(4.05, 0.55, Level.Tight)]
    [InlineData(4.08, 0.55, Level.Fails)]
    public void Wobble(double bore, double gap, Level level)
    {
        Finding finding = Named(Leaning(bore, 2, gap), "wobble").Single();
        Assert.Equal(level, finding.Level);
        Assert.Equal(gap - ((bore - 4) * 21 / 2), finding.Figure, 1e-9);
        if (level != Level.Ok)
        {
            double length = Advice.Number(finding.Advice, "Make the bearing at least # mm long");
            Assert.Equal(Level.Ok, Named(Leaning(bore, length, gap), "wobble").Single().Level);
            double clearance = Advice.Number(finding.Advice, "or its greatest clearance at most # mm");
            Assert.Equal(Level.Ok, Named(Leaning(4 + clearance, 2, gap), "wobble").Single().Level);
        }
    }

    // Both gears come nearer by half of their clearances.
    [Theory]
    [InlineData(4.02, Level.Ok)]
    [InlineData(4.12, Level.Fails)]
    public void Play_in_the_mesh(double bore, Level level)
    {
        Job job = Spindled(Pair(Gear("a", 20, thinning: 0), Gear("b", 40, thinning: 0), 30.06), bore);
        Finding finding = Named(job, "play-backlash").Single();
        double distance = 30.06 - (bore - 4);
        double left = 2 * distance * (Inv(Math.Acos(30 * Math.Cos(Alpha) / Math.Max(distance, 30 * Math.Cos(Alpha)))) - Inv(Alpha));
        Assert.Equal(level, finding.Level);
        Assert.Equal(left, finding.Figure, 1e-9);
        if (level != Level.Ok)
        {
            double together = Advice.Number(finding.Advice, "clearances are together at most # mm");
            Assert.Equal(Level.Ok, Named(Spindled(job, 4 + (together / 2)), "play-backlash").Single().Level);
        }
    }

    [Theory]
    [InlineData(4.4, 2.5, "screw-engagement", 1.2, Level.Ok)]
    [InlineData(3.5, 2.5, "screw-engagement", 0.75, Level.Tight)]
    [InlineData(2.5, 2.5, "screw-engagement", 0.25, Level.Fails)]
    [InlineData(1.5, 2.5, "screw-engagement", 0, Level.Fails)]
    [InlineData(4.4, 1.5, "screw-engagement", 0.75, Level.Tight)]
    [InlineData(4.4, 2.5, "screw-end-room", 0.1, Level.Tight)]
    [InlineData(4.2, 2.5, "screw-end-room", 0.3, Level.Ok)]
    [InlineData(5, 2.5, "screw-end-room", -0.5, Level.Fails)]
    public void Screws_in_their_sockets(double length, double socket, string name, double figure, Level level)
    {
        Finding finding = Named(Screwed(length, socket, 3), name).Single();
        Assert.Equal((level, figure), (finding.Level, Math.Round(finding.Figure, 9)));
        if (level == Level.Ok)
        {
            return;
        }

        if (name == "screw-end-room")
        {
            Assert.Equal(Level.Ok, Named(Screwed(Advice.Number(finding.Advice, "Use screws of at most # mm"), socket, 3), name).Single().Level);
            Assert.Equal(Level.Ok, Named(Screwed(length, socket + Advice.Number(finding.Advice, "sockets deeper by # mm"), 4), name).Single().Level);
        }
        else if (socket < 2)
        {
            Assert.Equal(Level.Ok, Named(Screwed(length, Advice.Number(finding.Advice, "Make the sockets at least # mm deep"), 3), name).Single().Level);
        }
        else
        {
            Assert.Equal(Level.Ok, Named(Screwed(Advice.Number(finding.Advice, "Use screws of at least # mm"), socket, 3), name).Single().Level);
        }
    }

    [Theory]
    [InlineData(1.5, Level.Ok)]
    [InlineData(1.35, Level.Tight)]
    [InlineData(1, Level.Fails)]
    public void Heads_under_the_next_gear(double room, Level level)
    {
        Job With(double gap) => Stacked(new JobScrewDepth(null, 1.3, false, null, null, null), gap, []);
        Finding finding = Named(With(room), "head-clearance").Single();
        Assert.Equal((level, Math.Round(room - 1.3, 9)), (finding.Level, Math.Round(finding.Figure, 9)));
        if (level != Level.Ok)
        {
            Assert.Equal(Level.Ok, Named(With(room + Advice.Number(finding.Advice, "Put # mm more between them")), "head-clearance").Single().Level);
        }

        // Holes that the heads pass through, in the right place only.
        Circle[] holes = [.. Enumerable.Range(0, 3).Select(k => new Circle(Point.Polar(6, 2 * Math.PI * k / 3), 2))];
        Assert.Empty(Named(Stacked(new JobScrewDepth(null, 1.3, false, null, null, null), room, holes), "head-clearance"));
        Circle[] beside = [.. holes.Select(hole => hole with { Centre = Point.Polar(6, hole.Centre.Angle + 0.3) })];
        Assert.Single(Named(Stacked(new JobScrewDepth(null, 1.3, false, null, null, null), room, beside), "head-clearance"));
    }

    [Theory]
    [InlineData(2.04, Level.Ok)]
    [InlineData(2.1, Level.Tight)]
    [InlineData(2.4, Level.Fails)]
    public void Measured_thickness_beats_the_drawn_one(double measured, Level level)
    {
        JobGear thick = Gear("a", 20) with { Stack = new JobLayerFit { MeasuredThickness = measured } };
        Job job = Pair(thick, Gear("b", 40), 30.05).WithSandwich(sandwich => sandwich.Name == "a", sandwich => sandwich with { Height = 1, Layers = [thick, Gear("c", 24)] });
        MechanismReport report = job.Report();
        Finding finding = report.Findings.Single(one => one.Name == "height-disagreement");
        Assert.Equal((level, Math.Round(measured - 2, 9)), (finding.Level, Math.Round(finding.Figure, 9)));
        Assert.Equal(1 + measured, report.Mechanism.Named("c").Bottom!.Value, 1e-12);
        Assert.Equal([(1, 1 + measured), (1 + measured, 3 + measured)], report.Stack.Heights.Select(row => (row.From, Math.Round(row.To, 9))));
    }

    // 2 mm faces half a millimetre apart, each of which may deviate.
    [Theory]
    [InlineData(0, 0.75, Level.Ok)]
    [InlineData(0.1, 0.65, Level.Tight)]
    [InlineData(0.6, 0.15, Level.Fails)]
    public void Face_overlap_at_the_worst_tolerances(double tolerance, double share, Level level)
    {
        Job job = Pair(Gear("a", 20), Gear("b", 40), 30.05)
            .WithSandwich(sandwich => sandwich.Name == "a", sandwich => sandwich with { Height = 0, HeightTolerance = tolerance })
            .WithSandwich(sandwich => sandwich.Name == "b", sandwich => sandwich with { Height = 0.5, HeightTolerance = tolerance });
        Finding finding = Named(job, "face-overlap").Single();
        Assert.Equal((level, share), (finding.Level, Math.Round(finding.Figure, 9)));
    }

    private static Finding[] Named(Job job, string name) => [.. job.Report().Findings.Where(finding => finding.Name == name)];

    private static double Inv(double angle) => Math.Tan(angle) - angle;

    private static Job Mounted(ToleranceClass? bore, ToleranceClass? spindle, double? measured, JobSeat? seat = null)
    {
        Job job = Pair(Gear("a", 20) with { Bore = 4, Stack = new JobLayerFit { BoreClass = bore, MeasuredBore = measured, Seat = seat } }, Gear("b", 40), 30.05);
        return (job with { Axes = job.Axes.SetItem(0, job.Axes[0] with { Spindles = [new JobSpindle(At(3), "post", 4, 0, -5, 5, null) { Class = spindle }] }) })
            .WithSandwich(_ => true, sandwich => sandwich with { Height = 0 });
    }

    // The wheel b on a post, and over it a wheel on another axis that is held.
    private static Job Leaning(double bore, double length, double gap)
    {
        JobGear wheel = Gear("b", 40) with { Bore = 4, Stack = new JobLayerFit { MeasuredBore = bore } };
        var hub = new JobWasher(At(2), length - 2) { Stack = new JobLayerFit { Diameter = 8, Bore = 4, MeasuredBore = bore } };
        JobLayer[] layers = length > 2 ? [hub, wheel] : [wheel];
        return new Job(
            At(0), "leaning", Defaults,
            [
                Axis("axis b", 0) with { Spindles = [new JobSpindle(At(3), "post", 4, 0, -50, 2, null)] },
                Axis("axis d", 25),
            ],
            [
                Sandwich("b", "axis b", layers) with { Height = 2 - length },
                Sandwich("d", "axis d", Gear("d", 30)) with { Height = 2 + gap },
            ],
            [], null, []);
    }

    private static Job Spindled(Job job, double bore) => (job with
    {
        Axes = [.. job.Axes.Select(axis => axis with { Spindles = [new JobSpindle(At(3), $"post of {axis.Name}", 4, 0, -5, 5, null)] })],
    })
        .WithSandwich(_ => true, sandwich => sandwich with { Height = 0 })
        .WithGear("a", gear => gear with { Bore = 4, Stack = new JobLayerFit { MeasuredBore = bore } })
        .WithGear("b", gear => gear with { Bore = 4, Stack = new JobLayerFit { MeasuredBore = bore } });

    // A gear of 2 mm, its heads down, on a flange.
    private static Job Screwed(double length, double socket, double flange) => Pair(
        Gear("a", 30) with { Screws = Screws(new JobScrewDepth(2, null, true, length, null, socket)) }, Gear("b", 40), 35.05)
        .WithSandwich(sandwich => sandwich.Name == "a", sandwich => sandwich with { Layers = [.. sandwich.Layers, new JobWasher(At(2), flange)] });

    private static Job Stacked(JobScrewDepth depth, double gap, Circle[] holes) => Pair(Gear("a", 30) with { Screws = Screws(depth) }, Gear("b", 40), 35.05)
        .WithSandwich(sandwich => sandwich.Name == "a", sandwich => sandwich with
        {
            Layers = [.. sandwich.Layers, new JobWasher(At(2), gap), Gear("c", 40) with { Holes = [.. holes] }],
        });

    private static JobScrews Screws(JobScrewDepth depth) => new(At(2), 3, 12, 2.4, 3.8, 0) { Depth = depth };
}
