using GearBlanks.Curves;
using GearBlanks.Cutting.Reach;
using GearBlanks.Mechanisms.Reach;
using GearBlanks.Meshing;
using GearBlanks.Teeth;
using GearBlanks.Tests.Cutting.Reach;

namespace GearBlanks.Tests.Mechanisms.Reach;

/// <summary>
/// The largest cutter that leaves a mate running free, against a search that closes a polygon of the gap by ever larger discs and moves the mate's tooth through it in
/// small steps, its flank touching: knows the outlines, the ratio and the backlash, nothing of corners, paths or rounds.
/// </summary>
public sealed class RunningFreeTests
{
    // mm of diameter at module 1: the requirement.
    private const double Near = 0.01;

    // mm: polygons that touch lie in one another by less.
    private const double Touching = 3e-4;

    private const int Halvings = 13;
    private const int Steps = 300;

    // Teeth and shifts of two external gears, how far they stand from the distance without backlash, round and chamfer of the tips of both.
    [Theory]
    [InlineData(20, 40, 0, 0, 0.05, 0, 0)]
    [InlineData(40, 20, 0, 0, 0.05, 0, 0)]
    [InlineData(12, 40, 0.3, -0.1, 0.1, 0, 0)]
    [InlineData(8, 30, 0.5, 0, 0.05, 0, 0)]
    [InlineData(10, 60, 0, 0, 0.04, 0, 0)]
    [InlineData(17, 80, 0.2, 0.1, 0.03, 0.1, 0)]
    [InlineData(30, 31, -0.2, 0.1, 0.02, 0, 0.12)]
    [InlineData(100, 25, 0, 0.3, 0.06, 0.2, 0)]
    public void Of_external_gears(int z1, int z2, double x1, double x2, double apart, double round, double chamfer)
    {
        Toothing gear = Made(z1, x1, round, chamfer);
        Toothing mate = Made(z2, x2, round, chamfer);
        AssertAsSearched(GearPair.At(gear, mate, GearPair.ZeroBacklashDistance(gear, mate)!.Value + apart));
    }

    [Theory]
    [InlineData(20, 60, 0.3)]
    [InlineData(15, 50, 0.2)]
    [InlineData(30, 90, 0.1)]
    public void Of_a_pinion_and_its_ring(int pinion, int ring, double fillet)
    {
        Toothing small = Made(pinion, 0.2, 0, 0);
        Toothing large = Toothing.Of(new RingData(ring, 1, TestRacks.A, ring + 10, fillet, -0.2, 0, ring - 1.3));
        double distance = GearPair.ZeroBacklashDistance(small, large)!.Value - 0.05;
        AssertAsSearched(GearPair.At(small, large, distance));
        AssertAsSearched(GearPair.At(large, small, distance));
    }

    [Theory]
    [InlineData(20, 'A')]
    [InlineData(40, 'C')]
    [InlineData(14, 'D')]
    public void Of_a_gear_and_its_rack(int teeth, char type)
    {
        Toothing gear = Made(teeth, 0.1, 0, 0);
        Toothing rack = Toothing.Of(new RackBarData(1, TestRacks.Iso(type), 7.2 * Math.PI, 5));
        double distance = GearPair.ZeroBacklashDistance(gear, rack)!.Value + 0.05;
        AssertAsSearched(GearPair.At(gear, rack, distance));
        AssertAsSearched(GearPair.At(rack, gear, distance));
    }

    /// <summary>Reach of 20/40 teeth: where the form circle as cut just meets the start of the active profile, the tip corner still digs in.</summary>
    [Fact]
    public void The_form_circle_alone_does_not_tell()
    {
        var gear = (ExternalGear)Made(20, 0, 0, 0);
        Toothing mate = Made(40, 0, 0, 0);
        GearPair pair = GearPair.At(gear, mate, 30);
        double start = pair.ContactEnds!.Value.AtRoot.FirstRadius;
        double radius = Searched(r => CutterReach.Half(gear, HalfGap.Of(gear), r / 2).Stands.Select(stand => stand.To.Radius).DefaultIfEmpty(0).Max() < start) / 2;
        var mesh = new ToothMesh("mesh", pair, true, "mate");

        // The figure of the design notes, worked out there from the geometry before the code: 37 micrometres.
        Assert.Equal(-0.037, mesh.RoomAsCut(radius), 0.0006);
    }

    [Fact]
    public void A_mate_that_digs_in_anyway_has_no_such_tool()
    {
        Toothing gear = Made(20, 0, 0, 0);
        var mate = ExternalGear.Create(new GearData(40, 1, TestRacks.A, 0, 0, 42.7));
        Assert.Null(Free(GearPair.At(gear, mate, 30)));
    }

    private static void AssertAsSearched(GearPair pair)
    {
        double? free = Free(pair);
        Assert.NotNull(free);
        Assert.Equal(Searched(diameter => RunsFree(pair, diameter / 2)), free.Value, Near);
    }

    // Diameter; of the first one.
    private static double? Free(GearPair pair)
    {
        var gap = HalfGap.Of(pair.First);
        double root = LargestTools.RootTouching(gap);
        return 2 * RunningFree.Radius(pair.First, gap, root, LargestTools.WholeFillet(gap, root), pair, true);
    }

    private static double Searched(Func<double, bool> runs)
    {
        (double low, double high) = (0.3, 2.5);
        for (int i = 0; i < Halvings; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = runs(middle) ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }

    // The first one stands still, the gap that is looked at on +X (of a rack on +Y); the mate rolls about it.
    private static bool RunsFree(GearPair pair, double radius)
    {
        var cut = ClosedTeeth.OneGap(pair.First, radius, false);
        Point[] tooth = [.. ToothOf(pair.Second)];
        double pitch = 2 * Math.PI / (pair.First is RackBar ? pair.Second.Teeth : pair.First.Teeth);
        return Enumerable.Range(-Steps, (2 * Steps) + 1).Select(i => Placing(pair, 1.5 * pitch * i / Steps))
            .All(placing => tooth.All(point => cut.DepthOf(placing(point)) <= Touching));
    }

    // Where a point of the mate goes, in the first one's frame, once the first one (over a rack the gear) has turned by an angle, flanks touching.
    private static Func<Point, Point> Placing(GearPair pair, double turn)
    {
        double a = pair.CentreDistance;
        double play = pair.CircumferentialBacklash / 2;
        return (pair.First, pair.Second) switch
        {
            (RackBar rack, Gear gear) => Moved(
                Motion.Turn((-Math.PI / 2) + turn + (play / gear.ReferenceRadius)).Then(Motion.Shift(new Vector(-gear.ReferenceRadius * turn, a)))),
            (Gear gear, RackBar) => Moved(
                Motion.Turn(Math.PI / 2).Then(Motion.Shift(new Vector(a, (gear.ReferenceRadius * turn) + play))).Then(Motion.Turn(-turn))),
            (RingGear ring, Gear pinion) => Moved(
                Motion.Turn((turn * ring.Teeth / pinion.Teeth) + pair.SecondAngularBacklash!.Value / 2).Then(Motion.Shift(new Vector(a, 0))).Then(Motion.Turn(-turn))),
            (Gear pinion, RingGear ring) => Moved(
                Motion.Turn((turn * pinion.Teeth / ring.Teeth) + (pair.SecondAngularBacklash!.Value / 2)).Then(Motion.Shift(new Vector(-a, 0))).Then(Motion.Turn(-turn))),
            _ => Moved(
                Motion.Turn(Math.PI - (turn * pair.First.Teeth / pair.Second.Teeth) + (pair.SecondAngularBacklash!.Value / 2)).Then(Motion.Shift(new Vector(a, 0))).Then(Motion.Turn(-turn))),
        };

        static Func<Point, Point> Moved(Motion motion) => motion.Apply;
    }

    // The tooth on +X (of a rack the one on the Y axis), near its tip.
    private static IEnumerable<Point> ToothOf(Toothing mate)
    {
        IEnumerable<Curve> curves = mate is RackBar ? mate.Outline().Curves() : mate.Outline().Pattern;
        IEnumerable<Point> points = curves.SelectMany(curve => Enumerable.Range(0, 25).Select(i => curve.PointAt(curve.Start + ((curve.End - curve.Start) * i / 24))));
        return mate switch
        {
            RackBar rack => points.Where(point => Math.Abs(point.X) < rack.Pitch / 2 && point.Y > rack.TipHeight - 0.35),
            Gear gear => points.Where(point => Math.Abs(point.Radius - gear.TipRadius) < 0.35),
            _ => [],
        };
    }

    private static ExternalGear Made(int teeth, double shift, double round, double chamfer) =>
        ExternalGear.Create(new GearData(teeth, 1, TestRacks.A, shift) { Tip = new TipForm(round, chamfer) });
}
