using GearBlanks.Cutting.Reach;
using GearBlanks.Teeth;
using Point = GearBlanks.Curves.Point;

namespace GearBlanks.Tests.Cutting.Reach;

/// <summary>The largest cutters that touch the root and that follow the whole fillet.</summary>
public sealed class LargestToolsTests
{
    // mm of diameter: the requirement.
    private const double Near = 0.01;

    private const int Halvings = 14;

    /// <summary>
    /// Tool diameters in modules for ISO 53 type A (ISO 53:1998, Table 2; from memory) without profile shift. The figures were worked out for this project before
    /// the code, from involute and trochoid geometry, and are printed to three decimals; teeth 0 is the rack itself. The rack's second one is twice its fillet radius.
    /// </summary>
    [Theory]
    [InlineData(12, 1.233, 0.980)]
    [InlineData(20, 1.144, 0.899)]
    [InlineData(40, 1.058, 0.833)]
    [InlineData(100, 0.991, 0.790)]
    [InlineData(0, 0.944, 0.760)]
    public void Tools_for_the_usual_rack(int teeth, double root, double fillet)
    {
        foreach (double module in (double[])[0.3, 1, 2.5])
        {
            Toothing made = teeth == 0
                ? RackBar.Create(new RackBarData(module, TestRacks.A, 10 * module, 4 * module))
                : Gear.Of(new GearData(teeth, module, TestRacks.A));
            (double touching, double whole) = Tools(made);
            Assert.Equal(root, touching / module, 0.00051);
            Assert.Equal(fillet, whole / module, 0.00051);
        }
    }

    // Teeth, type of the rack, its angle, profile shift: undercut, full round and nearly pointed gaps among them.
    public static TheoryData<int, char, double, double> Gears { get; } = new()
    {
        { 6, 'B', 20, 0.5 }, { 8, 'A', 20, 0 }, { 8, 'C', 20, 0.5 }, { 10, 'A', 20, 0 }, { 12, 'D', 20, 0.2 }, { 14, 'C', 14.5, 0 }, { 17, 'B', 25, -0.2 }, { 20, 'A', 20, 0 },
        { 25, 'D', 20, 0.8 }, { 40, 'A', 14.5, 0.3 }, { 57, 'C', 25, 0.5 }, { 100, 'B', 20, -0.5 }, { 200, 'A', 20, 0 },
    };

    [Theory]
    [MemberData(nameof(Gears))]
    public void As_a_polygon_closed_by_ever_larger_cutters_tells(int teeth, char type, double degrees, double shift) =>
        AssertAsSearched(Gear.Of(new GearData(teeth, 1, TestRacks.Iso(type, degrees), shift)));

    [Theory]
    [InlineData(40, 0.38)]
    [InlineData(48, 0.1)]
    [InlineData(100, 0.25)]
    public void Of_rings_too(int teeth, double fillet) => AssertAsSearched(RingGear.Create(new RingData(teeth, 1, TestRacks.A, teeth + 10, fillet)));

    [Theory]
    [InlineData('A')]
    [InlineData('C')]
    [InlineData('D')]
    public void Of_racks_too(char type) => AssertAsSearched(RackBar.Create(new RackBarData(1, TestRacks.Iso(type), 10, 4)));

    [Fact]
    public void A_sharp_inside_corner_is_followed_by_none()
    {
        var sharp = new BasicRack("sharp", Math.PI / 9, 1, 1.25, 0);
        Assert.Equal(0, Tools(RackBar.Create(new RackBarData(1, sharp, 10, 4))).Whole);
        Assert.Equal(0, Tools(RingGear.Create(new RingData(40, 1, TestRacks.A, 50, 0))).Whole);

        // A sharp rack leaves a gear no sharp corner: of the trochoid's foot vc^2 / (r - vc) is left.
        Assert.Equal(2 * 1.25 * 1.25 / (10 + 1.25), Tools(Gear.Of(new GearData(20, 1, sharp))).Whole, 1e-6);
    }

    private static (double Touching, double Whole) Tools(Toothing teeth)
    {
        var gap = HalfGap.Of(teeth);
        double touching = LargestTools.RootTouching(gap);
        return (2 * touching, 2 * LargestTools.WholeFillet(gap, touching));
    }

    private static void AssertAsSearched(Toothing teeth)
    {
        (double touching, double whole) = Tools(teeth);
        Point root = teeth is RackBar rack ? new Point(0, rack.RootHeight) : new Point(((Gear)teeth).RootRadius, 0);
        Assert.Equal(Searched(radius => ClosedTeeth.OneGap(teeth, radius, false).FromEdge(root) < 5e-5), touching, Near);

        // Just beyond the least radius of curvature very little stays uncut: it takes very many points to see it.
        double seen = teeth.Module * 1.5e-6;
        Assert.Equal(Searched(radius => GapPoints(teeth).Max(ClosedTeeth.OneGap(teeth, radius, true).FromEdge) < seen), whole, Near);
    }

    // Diameter.
    private static double Searched(Func<double, bool> fits)
    {
        (double low, double high) = (0.02, 1.5);
        for (int i = 0; i < Halvings; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = fits(middle) ? (middle, high) : (low, middle);
        }

        return low + high;
    }

    // The outline in the gap on +X (+Y of a rack), as far as the tips, whose corners a growing polygon rounds.
    private static IEnumerable<Point> GapPoints(Toothing teeth)
    {
        GearBlanks.Curves.Motion place = teeth is Gear ? GearBlanks.Curves.Motion.Turn(-Math.PI / teeth.Teeth) : GearBlanks.Curves.Motion.None;
        return (teeth is RackBar { Data: var data } rack ? RackBar.Create(data with { Length = 2 * rack.Pitch }) : teeth).Outline().Curves()
            .Take(teeth is RackBar ? int.MaxValue : teeth.Outline().Pattern.Length)
            .SelectMany(curve => Enumerable.Range(0, 600).Select(i => curve.PointAt(curve.Start + ((curve.End - curve.Start) * i / 600))))
            .Select(place.Apply)
            .Where(point => teeth is RackBar bar ? Math.Abs(point.X) < bar.Pitch / 2 && point.Y < bar.TipHeight - 0.1 : Math.Abs(point.Angle) < Math.PI / teeth.Teeth && Math.Abs(point.Radius - ((Gear)teeth).TipRadius) > 0.1);
    }
}
