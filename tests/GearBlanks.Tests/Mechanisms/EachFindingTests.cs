using CsCheck;
using Fractions;
using GearBlanks.Curves;
using GearBlanks.Findings;
using GearBlanks.Mechanisms;
using static GearBlanks.Tests.Mechanisms.TestJobs;

namespace GearBlanks.Tests.Mechanisms;

/// <summary>Each finding on a good and a bad mechanism, its figure worked out apart, its advice followed.</summary>
public sealed class EachFindingTests
{
    private const double M = 1;
    private static readonly double Alpha = TestRacks.Radians(20);
    private static readonly Job Good = Loose(20, 40, 30.05);

    [Fact]
    public void A_good_pair_is_ok_throughout()
    {
        MechanismReport report = Good.Report();
        Assert.All(report.Findings, finding => Assert.Equal((Level.Ok, null), (finding.Level, finding.Advice)));
        Assert.Equal(Level.Ok, report.Verdict);
        Assert.Equal(
            ["backlash", "backlash-miss", "contact-ratio", "fillet-clearance", "tip-clearance", "tip-thickness", "undercut-depth"],
            report.Findings.Select(finding => finding.Name).Distinct().Order());
    }

    [Fact]
    public void The_worst_come_first_and_make_the_verdict()
    {
        MechanismReport report = Pair(Gear("a", 14, thinning: 0), Gear("b", 40, thinning: 0), 26.9).Report();
        Assert.Equal(report.Findings.Select(finding => finding.Level).OrderDescending(), report.Findings.Select(finding => finding.Level));
        Assert.Equal([Level.Ok, Level.Tight, Level.Fails], report.Findings.Select(finding => finding.Level).Distinct().Order());
        Assert.Equal(Level.Fails, report.Verdict);
        Assert.Equal(Level.Tight, report.VerdictOn("gear a"));
        Assert.Equal(Level.Ok, report.VerdictOn("gear b"));
        Assert.Equal(Level.Fails, report.VerdictOn("mesh a-b"));
    }

    [Theory]
    [InlineData(29.9, Level.Fails)]
    [InlineData(30.01, Level.Tight)]
    [InlineData(30.05, Level.Ok)]
    [InlineData(30.25, Level.Tight)]
    [InlineData(30.6, Level.Fails)]
    public void Backlash(double distance, Level level)
    {
        Job job = Loose(20, 40, distance);
        Finding finding = Expect(job, "backlash", "mesh a-b", level, 2 * distance * (Inv(Math.Acos(30 * Math.Cos(Alpha) / distance)) - Inv(Alpha)));
        if (level == Level.Ok)
        {
            return;
        }

        bool open = distance < 30.05;
        double by = Advice.Number(finding.Advice, $"For 0.04 mm of backlash {(open ? "open" : "close")} the centre distance by # mm");
        Becomes(Level.Ok, job.Opened(open ? by : -by), "backlash");
        double shift = Advice.Number(finding.Advice, "shift a by #");
        Becomes(Level.Ok, job.WithGear("a", gear => gear with { ProfileShift = shift }), "backlash");
    }

    [Theory]
    [InlineData(0.04, Level.Ok)]
    [InlineData(0.11, Level.Tight)]
    public void Backlash_miss(double wanted, Level level)
    {
        Job job = Good.WithMesh(mesh => mesh with { Backlash = wanted });
        double backlash = 2 * 30.05 * (Inv(Math.Acos(30 * Math.Cos(Alpha) / 30.05)) - Inv(Alpha));
        Finding finding = Expect(job, "backlash-miss", "mesh a-b", level, Math.Abs(backlash - wanted));
        if (level != Level.Ok)
        {
            Becomes(Level.Ok, job.Opened(Advice.Number(finding.Advice, "open the centre distance by # mm")), "backlash-miss");
            double shift = Advice.Number(finding.Advice, "shift a by #");
            Becomes(Level.Ok, job.WithGear("a", gear => gear with { ProfileShift = shift }), "backlash-miss");
        }
    }

    [Theory]
    [InlineData(30.5, Level.Tight)]
    [InlineData(31, Level.Fails)]
    public void Contact_ratio_of_a_distance_too_wide(double distance, Level level)
    {
        Job job = Loose(20, 40, distance);
        Finding finding = Expect(job, "contact-ratio", "mesh a-b", level, ContactRatio(20, 40, 11, 21, distance));
        double by = Advice.Number(finding.Advice, "Close the centre distance by # mm");
        Finding after = Becomes(Level.Ok, job.Opened(-by), "contact-ratio");
        Assert.Equal(after.Figure, Advice.Number(finding.Advice, "the contact ratio becomes #"), 0.001);
    }

    [Fact]
    public void Contact_ratio_of_tips_too_short()
    {
        Job job = Good.WithGear("a", gear => gear with { TipDiameter = 20.8 }).WithGear("b", gear => gear with { TipDiameter = 40.8 });
        Finding finding = Expect(job, "contact-ratio", "mesh a-b", Level.Fails, ContactRatio(20, 40, 10.4, 20.4, 30.05));
        Assert.Contains("longer tips", finding.Advice, StringComparison.Ordinal);
        Becomes(Level.Ok, Good, "contact-ratio");
    }

    [Theory]
    [InlineData("a", 22.44, Level.Tight)]
    [InlineData("a", 22.8, Level.Fails)]
    [InlineData("b", 42.8, Level.Fails)]
    public void Tip_clearance(string name, double tip, Level level)
    {
        Job job = Good.WithGear(name, gear => gear with { TipDiameter = tip });
        double root = ((name == "a" ? 40 : 20) / 2.0) - 1.25;
        Finding finding = Expect(job, "tip-clearance", "mesh a-b", level, 30.05 - (tip / 2) - root, $"the tip of {name} from");
        double by = Advice.Number(finding.Advice, $"Lower the tip diameter of {name} by # mm.");
        Better(job.WithGear(name, gear => gear with { TipDiameter = tip - by }), finding, $"the tip of {name} from");
    }

    [Fact]
    public void Fillet_clearance()
    {
        Job job = Good.WithGear("b", gear => gear with { TipDiameter = 42.5 });
        Finding finding = job.Report().Findings.First(one => one.Name == "fillet-clearance");
        Assert.Equal(Level.Fails, finding.Level);
        Assert.Equal(job.Resolved().Meshes[0].Pair.FirstFilletClearance, finding.Figure);
        double tip = Advice.Number(finding.Advice, "Lower the tip diameter of b to # mm");
        Assert.DoesNotContain(
            job.WithGear("b", gear => gear with { TipDiameter = tip }).Report().Findings,
            one => one.Name == "fillet-clearance" && one.Level != Level.Ok);
    }

    [Theory]
    [InlineData(14, 0, Level.Tight)]
    [InlineData(5, 0, Level.Tight)]
    [InlineData(5, -0.5, Level.Fails)]
    public void Undercut_depth(int teeth, double shift, Level level)
    {
        Job job = Shifted(shift);
        Finding finding = Expect(job, "undercut-depth", "gear a", level, UndercutDepth(teeth, shift));

        // The straight flank of the rack ends 1.25 - 0.38 (1 - sin 20) under its reference line.
        double least = 1.25 - (0.38 * (1 - Math.Sin(Alpha))) - (teeth * Math.Sin(Alpha) * Math.Sin(Alpha) / 2);
        double by = Advice.Number(finding.Advice, "Raise the profile shift by #");
        Assert.InRange(shift + by, least, least + 0.0201);
        Job followed = Shifted(shift + by);
        Becomes(Level.Ok, followed, "undercut-depth", "gear a");
        Assert.Equal(Find(job, "backlash").Figure, Find(followed, "backlash").Figure, 1e-9);
        double to = Advice.Number(finding.Advice, " to #,");
        Becomes(Level.Ok, job.WithGear("a", gear => gear with { ProfileShift = to }), "undercut-depth", "gear a");

        Job Shifted(double x) => Pair(Gear("a", teeth, x, 0), Gear("b", 60, -x, 0), ((teeth + 60) / 2.0) + 0.05);
    }

    [Theory]
    [InlineData(0.7, Level.Tight)]
    [InlineData(0.82, Level.Fails)]
    public void Tip_thickness(double shift, Level level)
    {
        Job job = Pair(Gear("a", 14, shift), Gear("b", 40), 28);
        job = job.WithGear("a", gear => gear with { Thinning = 0 });
        double tip = 7 + 1 + shift;
        double half = (((Math.PI / 2) + (2 * shift * Math.Tan(Alpha))) / 14) + Inv(Alpha) - Inv(Math.Acos(7 * Math.Cos(Alpha) / tip));
        Finding finding = Expect(job, "tip-thickness", "gear a", level, 2 * tip * half);
        double lower = Advice.Number(finding.Advice, "Lower the tip diameter to # mm");
        Becomes(Level.Ok, job.WithGear("a", gear => gear with { TipDiameter = lower }), "tip-thickness", "gear a");
    }

    [Fact]
    public void Pointed_tip()
    {
        Job job = Pair(Gear("a", 9, 0.9, thinning: 0), Gear("b", 40), 26);
        Finding finding = Find(job, "pointed-tip", "gear a");
        Assert.Equal((Level.Fails, 2 * (4.5 + 1.9)), (finding.Level, finding.Figure));

        // The flanks meet where the involute's angle has eaten half the tooth.
        double half = (((Math.PI / 2) + (1.8 * Math.Tan(Alpha))) / 9) + Inv(Alpha);
        Assert.Equal(half, Inv(Math.Acos(9 * Math.Cos(Alpha) / finding.Limit!.Value)), 1e-9);
        double lower = Advice.Number(finding.Advice, "Lower the tip diameter to # mm");
        Job followed = job.WithGear("a", gear => gear with { TipDiameter = lower });
        Assert.DoesNotContain(followed.Report().Findings, one => one.Name == "pointed-tip");
        Becomes(Level.Ok, followed, "tip-thickness", "gear a");
    }

    [Theory]
    [InlineData(14, Level.Tight)]
    [InlineData(16.1, Level.Fails)]
    public void Wall(double bore, Level level)
    {
        Job job = Good.WithGear("a", gear => gear with { Bore = bore });
        Finding finding = Expect(job, "wall", "gear a", level, (17.5 - bore) / 2);
        double by = Advice.Number(finding.Advice, "make its diameter smaller by # mm");
        Better(job.WithGear("a", gear => gear with { Bore = bore - by }), finding);
    }

    [Fact]
    public void Wall_beside_a_hole_that_can_be_moved()
    {
        Job At(double x) => Good.WithGear("b", gear => gear with { Bore = 6, Holes = [new Circle(new Point(x, 0), 1)] });
        Finding finding = Expect(At(4.8), "wall", "gear b", Level.Fails, 0.8);
        double by = Advice.Number(finding.Advice, "Move a hole by # mm");
        Assert.Equal(1.2, by);
        Better(At(4.8 + by), finding);
    }

    [Theory]
    [InlineData(0.8, Level.Tight)]
    [InlineData(0.5, Level.Fails)]
    public void Hole_diameter(double diameter, Level level)
    {
        Job With(double d) => Good.WithGear("a", gear => gear with { Bore = 6, Holes = [new Circle(new Point(6, 0), d / 2)] });
        Finding finding = Expect(With(diameter), "hole-diameter", "gear a", level, diameter);
        Better(With(Advice.Number(finding.Advice, "make it at least # mm")), finding);
    }

    [Theory]
    [InlineData(0, 0, Level.Fails)]
    [InlineData(26, 0, Level.Tight)]
    [InlineData(0, 26, Level.Tight)]
    [InlineData(60, 0, Level.Ok)]
    [InlineData(100, -40, Level.Ok)]
    [InlineData(60, 60, Level.Fails)]
    public void Screw_room(double start, double turned, Level level)
    {
        Job With(double from) => Stacked(new JobScrews(At(2), 3, 14, 2, 3, 0), new JobScrews(At(2), 3, 14, 2, 3, TestRacks.Radians(from)), turned);
        double apart = Math.Abs(Math.IEEERemainder(start + turned, 120));
        Finding finding = Expect(With(start), "screw-room", "sandwich a", level, (14 * Math.Sin(TestRacks.Radians(apart) / 2)) - 3);
        if (level != Level.Ok)
        {
            // As they stand in the sandwich: what the gear is turned by counts.
            double step = Advice.Number(finding.Advice, "Start the screws of top # degrees from those of a");
            Becomes(Level.Ok, With(step - turned), "screw-room");
        }
    }

    [Fact]
    public void Screw_room_of_different_counts()
    {
        var three = new JobScrews(At(2), 3, 14, 2, 3, 0);
        Finding finding = Find(Stacked(three, three with { Count = 4 }, 0), "screw-room");
        Assert.Equal(Level.Fails, finding.Level);
        Assert.Contains("same number of screws, set halfway", finding.Advice, StringComparison.Ordinal);
        Becomes(Level.Ok, Stacked(three, three with { StartAngle = Math.PI / 3 }, 0), "screw-room");
    }

    [Theory]
    [InlineData(30.05, Level.Ok)]
    [InlineData(30.1, Level.Tight)]
    [InlineData(29.8, Level.Fails)]
    public void Distance_disagreement_of_a_mesh(double measured, Level level)
    {
        Job job = Good.WithMesh(mesh => mesh with { MeasuredDistance = measured });
        Finding finding = Expect(job, "distance-disagreement", "mesh a-b", level, Math.Abs(measured - 30.05));
        if (level != Level.Ok)
        {
            double by = Advice.Number(finding.Advice, "move an axis by # mm");
            Becomes(Level.Ok, job.Opened(measured > 30.05 ? by : -by), "distance-disagreement");
        }
    }

    [Fact]
    public void Distance_disagreement_between_meshes_of_the_same_axes()
    {
        Job job = TwoMeshes(0);
        Becomes(Level.Ok, job, "distance-disagreement", "axes left and right");
        Job bad = job with { Meshes = [job.Meshes[0] with { MeasuredDistance = 30 }, job.Meshes[1] with { MeasuredDistance = 30.1 }] };
        Finding finding = Expect(bad, "distance-disagreement", "axes left and right", Level.Tight, 0.1);
        Assert.Contains("measure a-b and c-d again", finding.Advice, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0, Level.Ok)]
    [InlineData(0.05, Level.Tight)]
    [InlineData(0.3, Level.Fails)]
    [InlineData(-0.3, Level.Fails)]
    public void Distance_spread(double shift, Level level)
    {
        Job job = TwoMeshes(shift);

        // Thinned by 0.02 each, unshifted gears have their backlash of 0.04 at 30.
        Finding finding = Expect(job, "distance-spread", "axes left and right", level, Math.Abs(DistanceFor(shift) - 30));
        if (level != Level.Ok)
        {
            (string shorter, string longer) = shift < 0 ? ("c-d", "a-b") : ("a-b", "c-d");
            double by = Advice.Number(finding.Advice, $"Raise the sum of profile shifts of {shorter} by # to fit the distance of {longer}.");
            Job followed = job.WithGear(shorter[..1], gear => gear with { ProfileShift = gear.ProfileShift + by });
            Becomes(Level.Ok, followed, "distance-spread", "axes left and right");
        }
    }

    [Theory]
    [InlineData(1, 1, Level.Ok)]
    [InlineData(1.2, 1, Level.Ok)]
    [InlineData(2, 1, Level.Tight)]
    [InlineData(1, 2.6, Level.Fails)]
    [InlineData(1, 9, Level.Fails)]
    public void Face_overlap(double first, double second, Level level)
    {
        Job At(double one, double other) => Good
            .WithSandwich(sandwich => sandwich.Name == "a", sandwich => sandwich with { Height = one })
            .WithSandwich(sandwich => sandwich.Name == "b", sandwich => sandwich with { Height = other });
        Finding finding = Expect(At(first, second), "face-overlap", "mesh a-b", level, (2 - Math.Abs(first - second)) / 2);
        if (level != Level.Ok)
        {
            bool lower = first > second;
            double by = Advice.Number(finding.Advice, $"{(lower ? "Lower" : "Raise")} a by # mm");
            Becomes(Level.Ok, At(first + (lower ? -by : by), second), "face-overlap");
        }
    }

    [Theory]
    [InlineData(120_000, Level.Ok, "exact")]
    [InlineData(120_005, Level.Ok, "fast")]
    [InlineData(119_980, Level.Tight, "slow")]
    [InlineData(120_070, Level.Fails, "fast")]
    public void Hand_error(int thousandths, Level level, string word)
    {
        Job job = Driven(Good) with { Hands = [Hand("b", new Fraction(thousandths, 1000))] };
        Finding finding = Expect(job, "hand-error", "hand b hand", level, Math.Abs((120_000.0 / thousandths) - 1) * 1e6);
        Assert.Contains($"({word}", finding.Message, StringComparison.Ordinal);
        HandReport hand = Assert.Single(job.Report().Hands);
        Assert.Equal(new Fraction(-1, 2), hand.Speed);
        Assert.Equal(new Fraction(120), hand.Timing!.Period);
    }

    [Fact]
    public void Loose_sandwiches_and_still_hands()
    {
        Job job = Driven(Chain([Gear("a", 20), Gear("b", 40), Gear("c", 30)], [30.05, 35.05])) with { Hands = [Hand("c", new Fraction(90))] };
        Becomes(Level.Tight, job with { Meshes = [job.Meshes[0]] }, "train-loose", "sandwich c");
        Becomes(Level.Fails, job with { Meshes = [job.Meshes[0]] }, "hand-still", "hand c hand");

        // Both ask for the mesh that turns it.
        MechanismReport followed = job.Report();
        Assert.DoesNotContain(followed.Findings, finding => finding.Name is "train-loose" or "hand-still");
        Becomes(Level.Ok, job, "hand-error");
        Assert.Equal([Fraction.One, new Fraction(-1, 2), new Fraction(2, 3)], followed.Speeds.Select(speed => speed.Speed));
    }

    [Fact]
    public void Locked_trains_name_the_loop_and_any_of_its_meshes_may_go()
    {
        Job job = Driven(Chain([Gear("lead", 20), Gear("a", 21), Gear("b", 22), Gear("c", 23)], [21, 22, 23]));
        job = (job with { Meshes = job.Meshes.Add(Mesh("c", "a")) }).WithMesh(mesh => mesh with { MeasuredDistance = 23 });
        Finding finding = job.Report().Findings.Single(one => one.Name == "train-locked");
        Assert.Equal((Level.Fails, 3.0), (finding.Level, finding.Figure));
        Assert.All((string[])["a-b", "b-c", "c-a"], name => Assert.Contains(name, finding.Message, StringComparison.Ordinal));
        Assert.DoesNotContain("lead", finding.Message, StringComparison.Ordinal);
        for (int i = 1; i < 4; i++)
        {
            MechanismReport followed = (job with { Meshes = job.Meshes.RemoveAt(i) }).Report();
            Assert.DoesNotContain(followed.Findings, one => one.Name is "train-locked" or "train-loose");
        }
    }

    [Fact]
    public void Without_a_drive_no_speeds_are_asked_for()
    {
        MechanismReport report = (Good with { Meshes = [], Hands = [Hand("b", new Fraction(90))] }).Report();
        Assert.Empty(report.Speeds);
        Assert.Empty(report.Hands);
        Assert.DoesNotContain(report.Findings, finding => finding.Name.StartsWith("train", StringComparison.Ordinal));
    }

    [Fact]
    public void Whatever_resolves_can_be_checked_and_what_is_not_ok_has_advice()
    {
        Gen<JobGear> gears = Gen.Select(Gen.Int[4, 90], Gen.Double[-1, 1.5], Gen.Double[0.6, 1.4], Gen.Double[-0.3, 0.3], Gen.Double[0, 12])
            .Select((teeth, shift, longer, thinning, bore) => Gear("a", teeth, shift, thinning < 0 ? null : thinning) with
            {
                TipDiameter = longer < 1 ? null : teeth + (2 * (shift + longer)),
                Bore = bore,
            });
        int checkedJobs = 0;
        Gen.Select(gears, gears, Gen.Double[-1, 3], Gen.OneOf(Gen.Double[0, 0.2], Gen.Double[0, 10])).Sample(
            (one, other, apart, backlash) =>
            {
                double distance = ((one.Teeth + other.Teeth) / 2.0) + one.ProfileShift + other.ProfileShift + apart;
                Job job = Pair(one, other with { Name = "b" }, distance).WithMesh(mesh => mesh with { Backlash = backlash });
                if (Resolver.Resolve(job, Profiles).Value is not { } mechanism)
                {
                    return;
                }

                checkedJobs++;
                Assert.All(MechanismCheck.Of(mechanism).Findings, finding =>
                {
                    Assert.True(double.IsFinite(finding.Figure));
                    Assert.Equal(finding.Level == Level.Ok, finding.Advice is null);
                });
            },
            iter: 400, threads: 1);
        Assert.True(checkedJobs > 50, $"only {checkedJobs}");
    }

    private static Job Loose(int z1, int z2, double distance) => Pair(Gear("a", z1, thinning: 0), Gear("b", z2, thinning: 0), distance);

    private static Job Driven(Job job) => job with { Drive = new JobDrive(At(5), "a", new Fraction(60)) };

    private static Job Stacked(JobScrews lower, JobScrews upper, double turned)
    {
        JobGear top = Gear("top", 31) with { Screws = upper, Turned = TestRacks.Radians(turned) };
        Job job = Good
            .WithGear("a", gear => gear with { Teeth = 30, Screws = lower })
            .WithSandwich(sandwich => sandwich.Name == "a", sandwich => sandwich with { Layers = sandwich.Layers.Add(top) });
        return job with { Meshes = [] };
    }

    // 20 : 40 and 24 : 36 between the same two axes, the second one shifted.
    private static Job TwoMeshes(double shift) => new(
        At(0), "test", Defaults, [Axis("right", 30), Axis("left", 0)],
        [
            Sandwich("low", "left", Gear("a", 20, thinning: 0.02), Gear("c", 24, shift, thinning: 0.02)),
            Sandwich("high", "right", Gear("b", 40, thinning: 0.02), Gear("d", 36, thinning: 0.02)),
        ],
        [Mesh("a", "b"), Mesh("c", "d")], null, []);

    private static Finding Find(Job job, string name, string? place = null, string part = "") => job.Report().Findings
        .First(finding => finding.Name == name && (place is null || finding.Place == place) && finding.Message.Contains(part, StringComparison.Ordinal));

    private static Finding Expect(Job job, string name, string place, Level level, double figure, string part = "")
    {
        Finding finding = Find(job, name, place, part);
        Assert.Equal(figure, finding.Figure, 1e-9);
        Assert.Equal(level, finding.Level);
        Assert.Equal(level == Level.Ok, finding.Advice is null);
        return finding;
    }

    private static Finding Becomes(Level level, Job job, string name, string? place = null)
    {
        Finding finding = Find(job, name, place);
        Assert.Equal(level, finding.Level);
        return finding;
    }

    // Also where the rest of the message has to tell two findings apart.
    private static void Better(Job followed, Finding before, string part = "")
    {
        Finding after = Find(followed, before.Name, before.Place, part);
        Assert.True(after.Level == Level.Ok, $"\"{before.Advice}\" leads to \"{after.Message}\"");
    }

    // Whole tips and no undercut: the path of contact between the two tip circles.
    private static double ContactRatio(int z1, int z2, double tip1, double tip2, double distance)
    {
        (double b1, double b2) = (z1 * M * Math.Cos(Alpha) / 2, z2 * M * Math.Cos(Alpha) / 2);
        double line = Math.Sqrt((distance * distance) - ((b1 + b2) * (b1 + b2)));
        return (Math.Sqrt((tip1 * tip1) - (b1 * b1)) + Math.Sqrt((tip2 * tip2) - (b2 * b2)) - line) / (Math.PI * M * Math.Cos(Alpha));
    }

    // The rack's tip round rolls past: where what it leaves crosses the base circle, that much of the half tooth is missing.
    private static double UndercutDepth(int z, double x)
    {
        (double radius, double centre) = (z * M / 2, (x - 1.25 + 0.38) * M);
        double land = (Math.PI / 4) - (1.25 * Math.Tan(Alpha)) - (0.38 * (1 - Math.Sin(Alpha)) / Math.Cos(Alpha));
        Point Touched(double roll) => new Point(roll, radius + centre) + (new Vector(roll, centre).Unit * 0.38);
        (double low, double high) = (0, -centre / Math.Tan(Alpha));
        for (int i = 0; i < 100; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = Touched(middle).Radius < radius * Math.Cos(Alpha) ? (middle, high) : (low, middle);
        }

        double gap = Math.Atan2(Touched(low).X, Touched(low).Y) - ((low - land) / radius);
        double tooth = (((Math.PI / 2) + (2 * x * Math.Tan(Alpha))) / z) + Inv(Alpha);
        return (tooth - ((Math.PI / z) - gap)) * radius * Math.Cos(Alpha);
    }

    private static double Inv(double angle) => Math.Tan(angle) - angle;

    // 2 a (inv aw - inv a - (2 x tan a - thinning) / (z1 + z2)) = 0.04, for 60 teeth, solved by halving.
    private static double DistanceFor(double x)
    {
        (double low, double high) = (28.5, 32);
        for (int i = 0; i < 100; i++)
        {
            double a = (low + high) / 2;
            double angle = Math.Acos(30 * Math.Cos(Alpha) / a);
            bool isNear = 2 * a * (Inv(angle) - Inv(Alpha) - (((2 * x * Math.Tan(Alpha)) - 0.04) / 60)) < 0.04;
            (low, high) = isNear ? (a, high) : (low, a);
        }

        return low;
    }
}
