using System.Collections.Immutable;
using GearBlanks.Curves;
using GearBlanks.Cutting;
using GearBlanks.Findings;
using GearBlanks.Mechanisms;
using GearBlanks.Teeth;

namespace GearBlanks.Tests.Mechanisms;

/// <summary>Verdicts on whole mechanisms, from a job to its findings; what must hold follows from the geometry.</summary>
public sealed class MechanismCheckTests
{
    private static readonly Place Nowhere = new("test", 0, 0);

    [Fact]
    public void A_locked_ring_fails_without_a_drive()
    {
        MechanismReport report = Check(
            [At("a", 0, 0), At("b", 20, 0), At("c", 10, 10 * Math.Sqrt(3))],
            [Alone("p", "a", 20), Alone("q", "b", 20), Alone("r", "c", 20)],
            [Mesh("p", "q"), Mesh("q", "r"), Mesh("r", "p")]);
        Assert.Equal(Level.Fails, report.Verdict);
        Assert.Single(report.Findings, finding => finding.Name == "train-locked");
    }

    [Fact]
    public void A_loop_whose_teeth_miss_their_gaps_fails()
    {
        Assert.DoesNotContain(Rhombus(90, 0).Findings, finding => finding.Name == "out-of-phase");

        Finding finding = Assert.Single(Rhombus(67, 0).Findings, finding => finding.Name == "out-of-phase");
        Assert.Equal(Level.Fails, finding.Level);

        // Four meshes of one module give way by half their backlash each.
        Assert.Equal(4 * 0.04 / 2, finding.Limit!.Value, 1e-9);
    }

    [Fact]
    public void Turning_the_gear_as_told_brings_the_loop_into_phase()
    {
        Finding finding = Assert.Single(Rhombus(67, 0, "top").Findings, finding => finding.Name == "out-of-phase");
        string[] words = finding.Advice!.Split(' ');
        Assert.Equal(["Turn", "s", "against", "its", "sandwich", "by"], words[..6]);
        double degrees = double.Parse(words[6], System.Globalization.CultureInfo.InvariantCulture);
        Assert.DoesNotContain(Rhombus(67, degrees, "top").Findings, finding => finding.Name == "out-of-phase" && finding.Level != Level.Ok);
    }

    [Fact]
    public void A_wanted_backlash_of_nothing_is_not_what_advice_aims_at()
    {
        Finding finding = Assert.Single(Pair(30, 0).Findings, finding => finding.Name == "backlash");
        Assert.Equal(Level.Tight, finding.Level);
        Assert.StartsWith("For 0.04 mm of backlash open the centre distance by 0.054 mm", finding.Advice, StringComparison.Ordinal);
        Assert.Equal(Level.Ok, Assert.Single(Pair(30.054, 0).Findings, finding => finding.Name == "backlash").Level);
    }

    [Fact]
    public void Meshes_that_have_their_wanted_backlash_at_one_distance_share_it()
    {
        MechanismReport report = Check(
            [At("a", 0, 0), At("b", 30, 0)],
            [Together("p", "a", ("p1", 20), ("p2", 24)), Alone("q", "b", 40), Alone("r", "b", 36)],
            [Mesh("p1", "q", 0.02), Mesh("p2", "r", 0.12)]);
        Assert.Equal(0, Assert.Single(report.Findings, finding => finding.Name == "distance-spread").Figure, 1e-9);
    }

    [Fact]
    public void The_mates_of_an_idler_give_up_what_it_is_thinned_for_another_mesh()
    {
        MechanismReport report = Check(
            [At("a", 0, 0), At("b", 30, 0), At("c", 65, 0)],
            [Alone("p", "a", 20), Alone("q", "b", 40), Alone("r", "c", 30)],
            [Mesh("p", "q", 0.12), Mesh("q", "r", 0.04)]);
        Assert.Equal([0.06, 0.06, 0], report.Mechanism.Gears.Select(gear => Math.Round(gear.Blank.Gear.Data.Thinning, 12)));
        Assert.Equal([0.12, 0.06], report.Mechanism.Meshes.Select(mesh => Math.Round(mesh.Pair.CircumferentialBacklash, 12)));
    }

    // A rhombus of four wheels of 20; the last one may share its sandwich with another wheel.
    private static MechanismReport Rhombus(double corner, double turned, string? above = null)
    {
        double angle = corner * Math.PI / 180;
        (double x, double y) = (20 * Math.Cos(angle), 20 * Math.Sin(angle));
        JobSandwich last = above is null
            ? Alone("s", "d", 20)
            : new JobSandwich(Nowhere, "last", "d", null, [Gear("s", 20) with { Turned = turned * Math.PI / 180 }, Gear(above, 20)]);
        return Check(
            [At("a", 0, 0), At("b", 20, 0), At("c", 20 + x, y), At("d", x, y)],
            [Alone("p", "a", 20), Alone("q", "b", 20), Alone("r", "c", 20), last],
            [Mesh("p", "q"), Mesh("q", "r"), Mesh("r", "s"), Mesh(above ?? "s", "p")]);
    }

    private static MechanismReport Pair(double distance, double backlash) => Check(
        [At("a", 0, 0), At("b", distance, 0)], [Alone("p", "a", 20), Alone("q", "b", 40)], [Mesh("p", "q", backlash)]);

    private static MechanismReport Check(JobAxis[] axes, JobSandwich[] sandwiches, JobMesh[] meshes)
    {
        var defaults = new JobDefaults(Nowhere, 1, null, null, null, null, 3, null, null, null, null, null);
        var job = new Job(Nowhere, "test", defaults, [.. axes], [.. sandwiches], [.. meshes], null, []);
        Outcome<Mechanism> mechanism = Resolver.Resolve(job, new OneOfEach());
        Assert.Empty(mechanism.Problems);
        return MechanismCheck.Of(mechanism.Value!);
    }

    private static JobAxis At(string name, double x, double y) => new(Nowhere, name, new Point(x, y), null, 0, 0);

    private static JobSandwich Alone(string name, string axis, int teeth) => Together(name, axis, (name, teeth));

    private static JobSandwich Together(string name, string axis, params (string Name, int Teeth)[] gears) =>
        new(Nowhere, name, axis, null, [.. gears.Select(gear => Gear(gear.Name, gear.Teeth))]);

    private static JobGear Gear(string name, int teeth) =>
        new(Nowhere, name, teeth, null, null, 0, null, null, null, null, null, null, [], 0, false, null, null);

    private static JobMesh Mesh(string first, string second, double? backlash = null) =>
        new(Nowhere, $"{first}-{second}", first, second, null, backlash, null);

    // Limits as profiles/limits has them where a test looks at them; elsewhere none.
    private sealed class OneOfEach : IProfiles
    {
        private static readonly Limit None = new(null, null, null, null, "none");

        public Outcome<BasicRack> Rack(string name, Place askedAt) => TestRacks.A;

        public Outcome<Material> Material(string name, Place askedAt) => new Material(name, name, null, []);

        public Outcome<Machine> Machine(string name, Place askedAt) => new Machine(name, name, new LayerPlan(ImmutableDictionary<Operation, string>.Empty, false), []);

        public Outcome<Limits> Limits(string name, Place askedAt) => new Limits
        {
            Name = name,
            Backlash = new Limit(0, 0.02, 0.12, 0.3, "test"),
            WantedBacklash = 0.04,
            BacklashShareOfFirst = 0.5,
            ContactRatio = None,
            TipClearance = None,
            FilletClearance = None,
            TipThickness = None,
            UndercutDepth = None,
            Wall = None,
            HoleDiameter = None,
            ArmWidth = None,
            ScrewRoom = None,
            DistanceDisagreement = None,
            BacklashMiss = new Limit(null, null, 0.04, null, "test"),
            DistanceSpread = new Limit(null, null, 0.02, 0.1, "test"),
            FaceOverlap = None,
            HandError = None,
            Conditions = new ConditionLimits { BacklashLeast = None, FilletClearanceLeast = None, BacklashGreatest = None, BindingShare = None, RattlingShare = None, ApproachShare = None },
        };
    }
}
