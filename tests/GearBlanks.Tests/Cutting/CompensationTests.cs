using GearBlanks.Blanks;
using GearBlanks.Curves;
using GearBlanks.Curves.Fitting;
using GearBlanks.Cutting;
using GearBlanks.Teeth;
using GearBlanks.Tests.Curves.Fitting;
using NetTopologySuite.Geometries;
using Point = GearBlanks.Curves.Point;

namespace GearBlanks.Tests.Cutting;

/// <summary>Compensated contours against a general-purpose library's buffer of densely sampled nominal ones.</summary>
public sealed class CompensationTests
{
    // mm: the requirement, and far above what sampling loses.
    private const double Near = 0.0005;

    // Gears of many kinds: teeth, module, type, pressure angle, profile shift, thinning in modules, kerf in mm.
    public static TheoryData<int, double, char, double, double, double, double> Gears { get; } = new()
    {
        { 8, 1, 'A', 20, 0, 0, 0.2 },
        { 8, 1, 'A', 20, 0.54, 0, 0.2 },
        { 8, 3, 'C', 20, -0.1, 0, 0.5 },
        { 10, 0.5, 'B', 20, 0.1, 0.02, 0.05 },
        { 12, 1, 'A', 20, 0, 0, 0.3 },
        { 12, 1, 'B', 20, 0.3, 0, 0.5 },
        { 12, 2, 'D', 20, -0.3, 0.01, 0.25 },
        { 13, 0.8, 'C', 20, 0.3, 0.02, 0.15 },
        { 15, 1, 'A', 20, 0.87, 0, 0.2 },
        { 17, 1, 'A', 14.5, 0.2, 0, 0.2 },
        { 20, 1, 'A', 20, 0, 0, 0.05 },
        { 20, 1, 'A', 20, 0, 0.04, 0.5 },
        { 20, 0.3, 'A', 20, 0.1, 0, 0.1 },
        { 24, 1, 'D', 20, 0, 0, 0.4 },
        { 30, 1, 'B', 25, 0.4, 0, 0.2 },
        { 40, 3, 'A', 20, -0.6, 0, 0.5 },
        { 57, 0.5, 'C', 20, 1, 0.02, 0.2 },
        { 100, 1, 'A', 20, 0, 0.02, 0.2 },
        { 100, 0.3, 'B', 20, 0.5, 0, 0.08 },
        { 6, 2, 'C', 25, 0.5, 0, 0.3 },
        { 4, 3, 'C', 25, 0.7, 0, 0.3 },
    };

    [Theory]
    [MemberData(nameof(Gears))]
    public void The_outside_grows_as_a_polygon_does(int teeth, double module, char type, double degrees, double shift, double thinning, double kerf)
    {
        Outline nominal = Gear(teeth, module, type, degrees, shift, thinning);
        Outline grown = Compensation.Of(PartOf(nominal), Kerf.Of(kerf)).Outside;
        Assert.Equal(teeth, grown.Repeats);
        AssertSame(SampledOutline.Grown(SampledOutline.Polygon(nominal), kerf / 2), grown);
    }

    [Theory]
    [InlineData(36, 1, 0.38, 0, 0.2)]
    [InlineData(36, 1, 0.0, 0, 0.2)]
    [InlineData(60, 0.8, 0.1, 0.2, 0.3)]
    [InlineData(48, 1, 0.1, 0, 0.2)]
    [InlineData(40, 2, 0.2, -0.4, 0.5)]
    [InlineData(50, 0.5, 0.25, 0.3, 0.25)]
    public void The_inside_of_a_ring_shrinks_and_its_rim_grows(int teeth, double module, double fillet, double shift, double kerf)
    {
        var ring = RingGear.Create(new RingData(teeth, module, TestRacks.A, (teeth + 8) * module, fillet * module, shift));
        Part cut = Compensation.Of(PartOf(Outline.Of(new Circle(default, ring.RimRadius)), ring.Outline()), Kerf.Of(kerf));
        Assert.Equal(new Circle(default, ring.RimRadius + (kerf / 2)), cut.Outside.AsCircle);
        Outline inside = Assert.Single(cut.Holes);
        Assert.Equal(teeth, inside.Repeats);
        AssertSame(SampledOutline.Grown(SampledOutline.Polygon(ring.Outline()), -kerf / 2), inside);
    }

    [Theory]
    [InlineData(1, 'A', 40, 0.2)]
    [InlineData(0.5, 'D', 12, 0.3)]
    [InlineData(1, 'B', 100, 0.5)]
    [InlineData(3, 'C', 60, 0.05)]
    public void A_rack_bar_grows_as_a_polygon_does(double module, char type, double length, double kerf)
    {
        Outline nominal = RackBar.Create(new RackBarData(module, TestRacks.Iso(type), length, 5 * module)).Outline();
        AssertSame(SampledOutline.Grown(SampledOutline.Polygon(nominal), kerf / 2), Compensation.Of(PartOf(nominal), Kerf.Of(kerf)).Outside);
    }

    // Corners of a closed polygon, as x y in turn.
    public static TheoryData<string, double[]> Polygons { get; } = new()
    {
        { "hexagon", [3, 0, 1.5, 2.598, -1.5, 2.598, -3, 0, -1.5, -2.598, 1.5, -2.598] },
        { "step", [0, 0, 6, 0, 6, 2, 3, 2, 3, 5, 0, 5] },
        { "slot", [0, 0, 6, 0, 6, 4, 3.5, 4, 3.5, 1, 2.5, 1, 2.5, 4, 0, 4] },
        { "kink", [0, 0, 6, 0, 6, 4, 3, 4.0001, 0, 4] },
        { "hollow kink", [0, 0, 6, 0, 6, 4, 3, 3.999, 0, 4] },
        { "chamfers", [0.05, 0, 5.95, 0, 6, 0.05, 6, 3.95, 5.95, 4, 0.05, 4, 0, 3.95, 0, 0.05] },
    };

    [Theory]
    [MemberData(nameof(Polygons))]
    public void Polygons_grow_outside_and_shrink_as_holes(string name, double[] corners)
    {
        Outline nominal = PolygonOf(corners);
        foreach (double kerf in (double[])[0.05, 0.2, 0.5])
        {
            Part cut = Compensation.Of(PartOf(nominal, nominal), Kerf.Of(kerf));
            AssertSame(SampledOutline.Grown(SampledOutline.Polygon(nominal), kerf / 2), cut.Outside);
            AssertSame(SampledOutline.Grown(SampledOutline.Polygon(nominal), -kerf / 2), cut.Holes[0]);
        }

        Assert.NotEmpty(name);
    }

    public static TheoryData<double, double> Unequal { get; } = new() { { 0.2, 0.18 }, { 0.15, 0.3 }, { 0.4, 0.1 } };

    [Theory]
    [MemberData(nameof(Unequal))]
    public void An_unequal_kerf_grows_and_shrinks_by_an_ellipse(double x, double y)
    {
        var kerf = new Kerf(x, y);
        var bore = new Circle(new Point(0.3, -0.2), 2);
        foreach (Outline nominal in (Outline[])[Gear(8, 1, 'A'), Gear(17, 1, 'A', 20, 0.2), Gear(12, 2, 'D', 20, -0.3), PolygonOf([0, 0, 6, 0, 6, 4, 3.5, 4, 3.5, 1, 2.5, 1, 2.5, 4, 0, 4])])
        {
            Part cut = Compensation.Of(PartOf(nominal, Outline.Of(bore), PolygonOf([3, 0, 1.5, 2.598, -1.5, 2.598, -3, 0, -1.5, -2.598, 1.5, -2.598])), kerf);
            AssertSame(SampledOutline.Grown(SampledOutline.Polygon(nominal), x / 2, y / 2, 1), cut.Outside);
            AssertSame(SampledOutline.Grown(SampledOutline.Disc(bore), x / 2, y / 2, -1), cut.Holes[0]);
            Assert.Null(cut.Holes[0].AsCircle);
        }

        Outline ring = RingGear.Create(new RingData(36, 1, TestRacks.A, 46, 0.2)).Outline();
        Outline inside = Compensation.Of(PartOf(Outline.Of(new Circle(default, 23)), ring), kerf).Holes[0];
        AssertSame(SampledOutline.Grown(SampledOutline.Polygon(ring), x / 2, y / 2, -1), inside);
    }

    [Theory]
    [InlineData(0.18, 0.2)]
    [InlineData(0.4, 0.1)]
    public void An_unequal_kerf_is_written_within_the_tolerance(double x, double y)
    {
        foreach (Outline nominal in (Outline[])[Gear(8, 1, 'A'), Gear(20, 1, 'A'), Outline.Of(new Circle(new Point(0.3, -0.2), 2))])
        {
            Outline outside = Compensation.Of(PartOf(nominal), new Kerf(x, y)).Outside;
            FitChecks.RequireWithin(outside, OutlineFit.Fit(outside, 0.001), 0.001 * (1 + 1e-9));
        }
    }

    [Fact]
    public void What_is_cut_is_never_compensated_twice()
    {
        var kerf = Kerf.Of(0.2);
        Part once = Compensation.Of(PartOf(Gear(20, 1, 'A'), Outline.Of(new Circle(default, 2))), kerf);
        Assert.True(once.IsCompensated);
        Assert.Equal(1.9, once.Holes[0].AsCircle!.Value.Radius, 1e-12);
        Assert.Throws<InvalidOperationException>(() => Compensation.Of(once, kerf));
    }

    [Fact]
    public void Marks_and_remarks_stay()
    {
        var part = new Part("part", Gear(20, 1, 'A'), [], [ArcPath.Strokes([new Point(1, 1), new Point(2, 2)])], ["said before"]);
        Part cut = Compensation.Of(part, Kerf.Of(0.2));
        Assert.Equal(part.Engraving, cut.Engraving);
        Assert.Equal(["said before"], cut.Remarks);
    }

    [Theory]
    [InlineData(2.5, "kerf-closes-gap")]
    [InlineData(4.5, "kerf-closes-gap")]
    public void A_beam_wider_than_the_gaps_is_refused_and_the_widest_that_works_works(double kerf, string shapeCase)
    {
        Part part = PartOf(Gear(20, 1, 'A'));
        GearGeometryException refused = Assert.Throws<GearGeometryException>(() => Compensation.Of(part, Kerf.Of(kerf)));
        Assert.Equal((shapeCase, kerf), (refused.ShapeCase, refused.Value));
        Assert.NotEmpty(Compensation.Of(part, Kerf.Of(Math.Floor(refused.Limit * 1000) / 1000)).Outside.Pattern);
    }

    [Theory]
    [InlineData(0.3, "kerf-closes-hole")]
    public void A_beam_wider_than_a_hole_is_refused(double kerf, string shapeCase)
    {
        Part part = PartOf(Gear(20, 1, 'A'), Outline.Of(new Circle(new Point(1, 2), 0.1)));
        GearGeometryException refused = Assert.Throws<GearGeometryException>(() => Compensation.Of(part, Kerf.Of(kerf)));
        Assert.Equal(shapeCase, refused.ShapeCase);
        Assert.Equal(0.2, refused.Limit, 0.001);
    }

    [Fact]
    public void A_slot_narrower_than_the_beam_is_refused()
    {
        Part part = PartOf(PolygonOf([0, 0, 6, 0, 6, 4, 3.2, 4, 3.2, 1, 2.8, 1, 2.8, 4, 0, 4]));
        Assert.Equal("kerf-closes-gap", Assert.Throws<GearGeometryException>(() => Compensation.Of(part, Kerf.Of(0.5))).ShapeCase);
        Assert.Equal("kerf-closes-gap", Assert.Throws<GearGeometryException>(() => Compensation.Of(part, new Kerf(0.5, 0.3))).ShapeCase);
    }

    [Theory]
    [InlineData(0, 0.2)]
    [InlineData(0.2, 0)]
    [InlineData(-0.1, -0.1)]
    [InlineData(5.1, 5.1)]
    [InlineData(0.1, 0.5)]
    [InlineData(double.NaN, 0.2)]
    public void A_kerf_out_of_range_is_none(double x, double y) => Assert.Throws<ArgumentOutOfRangeException>(() => new Kerf(x, y));

    private static Outline PolygonOf(double[] corners)
    {
        Point[] points = [.. Enumerable.Range(0, corners.Length / 2).Select(i => new Point(corners[2 * i], corners[(2 * i) + 1]))];
        return new Outline([.. points.Select((point, i) => (Curve)new Line(point, points[(i + 1) % points.Length]))]);
    }

    private static void AssertSame(Geometry expected, Outline actual)
    {
        double apart = SampledOutline.Apart(expected, SampledOutline.Polygon(actual));
        Assert.True(apart < Near, $"{apart:R} mm apart");
    }

    private static Outline Gear(int teeth, double module, char type, double degrees = 20, double shift = 0, double thinning = 0) =>
        ExternalGear.Create(new GearData(teeth, module, TestRacks.Iso(type, degrees), shift, thinning * module)).Outline();

    private static Part PartOf(Outline outside, params Outline[] holes) => new("part", outside, [.. holes], [], []);
}
