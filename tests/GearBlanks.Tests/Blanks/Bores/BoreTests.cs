using CsCheck;
using GearBlanks.Blanks.Bores;
using GearBlanks.Curves;
using GearBlanks.Teeth;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Utilities;
using Point = GearBlanks.Curves.Point;

namespace GearBlanks.Tests.Blanks.Bores;

/// <summary>Contours of bores, against shapes cut out of polygons by another library.</summary>
public sealed class BoreTests
{
    private const double Tolerance = 2e-3;

    private static readonly GeometryFactory Factory = new();

    [Fact]
    public void A_round_bore_is_a_circle()
    {
        var bore = new RoundBore(4);
        Assert.Equal(new Circle(default, 2), bore.Outline().AsCircle);
        Assert.Equal((2.0, "Ø 4 mm"), (bore.OuterRadius, bore.Words));
    }

    [Fact]
    public void Flats_cut_the_round_at_their_distance() => Gen.Select(Gen.Double[1, 20], Gen.Double[0.05, 0.95], Gen.Int[1, 2], Gen.Double[0, 0.9], Gen.Double[-7, 7]).Sample(
        (diameter, share, flats, corner, angle) =>
        {
            double across = share * diameter;
            var bore = new FlattedBore(diameter, flats, across, corner * across / 2, angle);
            double left = flats == 1 ? -diameter : -across / 2;
            Geometry slab = Box(left, -diameter, flats == 1 ? across - (diameter / 2) : across / 2, diameter);
            Same(Turned(Shapes.Disc(diameter / 2).Intersection(slab), angle), bore);
        },
        iter: 30, threads: 1);

    [Fact]
    public void A_hexagon_has_its_width_across_flats() => Gen.Select(Gen.Double[1, 20], Gen.Double[0, 0.95], Gen.Double[-7, 7]).Sample(
        (across, corner, angle) =>
        {
            Geometry slab = Box(-across / 2, -2 * across, across / 2, 2 * across);
            Geometry hexagon = slab.Intersection(Turned(slab, Math.PI / 3)).Intersection(Turned(slab, 2 * Math.PI / 3));
            Same(Turned(hexagon, angle), new HexagonBore(across, corner * across / 2, angle));
        },
        iter: 30, threads: 1);

    // Opening would round the sharp edges where the sides leave the round too, so only the slot is opened: its mouth lies inside the round.
    [Fact]
    public void A_keyway_reaches_d_and_t2_from_the_round_opposite() =>
        Gen.Select(Gen.Double[2, 20], Gen.Double[0.1, 0.9], Gen.Double[0.05, 0.5], Gen.Double[0, 0.8], Gen.Double[-7, 7]).Sample(
            (diameter, width, depth, corner, angle) =>
            {
                (double b, double t2) = (width * diameter, depth * diameter);
                double radius = corner * Math.Min(b / 2, t2);
                var bore = new KeywayBore(diameter, b, t2, radius, angle);
                Geometry slot = Shapes.Opened(Box(-diameter, -b / 2, (diameter / 2) + t2, b / 2), radius);
                Geometry expected = Shapes.Disc(diameter / 2).Union(slot.Intersection(Box(0, -b, 2 * diameter, b)));
                Polygon cut = Shapes.Polygon(bore.Outline());
                Assert.True(cut.IsValid);
                Assert.True(Shapes.IsCounterClockwise(bore.Outline()));
                Assert.Equal(0, cut.SymmetricDifference(Turned(expected, angle)).Area / cut.Area, Tolerance);
                Assert.Equal(cut.Coordinates.Max(corner => Math.Sqrt((corner.X * corner.X) + (corner.Y * corner.Y))), bore.OuterRadius, 1e-4 * diameter);
                Assert.Equal(diameter + t2, bore.Across);
                Assert.Equal(bore.Outline().Curves().Select(curve => curve.StartPoint), KeywayBore.OfAcross(diameter, b, bore.Across, radius, angle).Outline().Curves().Select(curve => curve.StartPoint), Near);
            },
            iter: 30, threads: 1);

    // DIN 6885-1:1968, shaft 12 to 17: key 5 x 5, hub depth t2 = 2.3; from memory.
    [Fact]
    public void A_standard_keyway_measures_as_a_caliper_reads_it()
    {
        var bore = new KeywayBore(16, 5, 2.3, 0.2);
        Assert.Equal(18.3, bore.Across, 1e-12);
        Envelope extent = Shapes.Polygon(bore.Outline()).EnvelopeInternal;
        Assert.Equal(18.3, extent.Width, 1e-3);
        Assert.Equal("Ø 16 mm, keyway 5 mm wide, 18.3 mm across", bore.Words);
    }

    [Fact]
    public void Rounded_corners_are_tangent_and_sharp_ones_turn()
    {
        foreach (Bore rounded in (Bore[])[new FlattedBore(6, 1, 5, 0.4), new FlattedBore(6, 1, 2, 0.4, 1), new FlattedBore(6, 2, 4, 0.4), new HexagonBore(6, 0.5, 0.3)])
        {
            Assert.All(Shapes.Kinks(rounded.Outline()), kink => Assert.Equal(0, kink, 1e-9));
            Assert.Contains(rounded.Outline().Curves(), curve => curve is Arc arc && Math.Abs(arc.Radius - rounded.CornerRadius) < 1e-12);
        }

        Assert.Equal(2, Shapes.Kinks(new FlattedBore(6, 1, 5).Outline()).Count(kink => kink > 0.1));
        Assert.Equal(6, Shapes.Kinks(new HexagonBore(6).Outline()).Count(kink => Math.Abs(kink - (Math.PI / 3)) < 1e-9));

        // Only where the sides leave the round does the rounded keyway turn, and there to the right.
        Assert.Equal(2, Shapes.Kinks(new KeywayBore(16, 5, 2.3, 0.2).Outline()).Count(kink => Math.Abs(kink) > 1e-9));
        Assert.Equal(2, Shapes.Kinks(new KeywayBore(16, 5, 2.3, 0.2).Outline()).Count(kink => kink < -0.1));
    }

    [Theory]
    [InlineData(3, 1, 3, 0, "flat-outside-bore")]
    [InlineData(3, 2, 3.5, 0, "flat-outside-bore")]
    [InlineData(3, 1, 2.5, 1.25, "corners-too-wide")]
    [InlineData(3, 2, 0.0, 0, "no-size")]
    [InlineData(0, 1, 2.5, 0, "no-size")]
    [InlineData(3, 1, double.NaN, 0, "no-size")]
    [InlineData(3, 1, 2.5, -0.1, "no-size")]
    [InlineData(double.PositiveInfinity, 1, 2.5, 0, "no-size")]
    public void Flats_that_cannot_be_are_refused(double diameter, int flats, double across, double corner, string shapeCase) =>
        Assert.Equal(shapeCase, Assert.Throws<GearGeometryException>(() => new FlattedBore(diameter, flats, across, corner)).ShapeCase);

    [Theory]
    [InlineData(6, 6, 1, 0, "key-wider-than-bore")]
    [InlineData(6, 2, 0, 0, "no-size")]
    [InlineData(6, 2, 1, 1, "corners-too-wide")]
    [InlineData(6, 5.9, 0.1, 2.95, "corners-too-wide")]
    [InlineData(20, 6, 0.2, 0.7, "corners-too-wide")]
    public void Keyways_that_cannot_be_are_refused(double diameter, double width, double depth, double corner, string shapeCase) =>
        Assert.Equal(shapeCase, Assert.Throws<GearGeometryException>(() => new KeywayBore(diameter, width, depth, corner)).ShapeCase);

    [Fact]
    public void Following_a_refusal_s_advice_is_enough()
    {
        GearGeometryException flat = Assert.Throws<GearGeometryException>(() => new FlattedBore(3, 1, 3.2));
        Assert.NotNull(new FlattedBore(3, 1, Advice.Number(flat.Remedy, "up to #")).Outline());
        Assert.NotNull(new FlattedBore(Advice.Number(flat.Remedy, "more than #") + 0.001, 1, 3.2).Outline());
        GearGeometryException corner = Assert.Throws<GearGeometryException>(() => new HexagonBore(5, 2.5));
        Assert.NotNull(new HexagonBore(5, Advice.Number(corner.Remedy, "0 to #")).Outline());
        GearGeometryException side = Assert.Throws<GearGeometryException>(() => new KeywayBore(20, 6, 0.2, 0.7));
        Assert.NotNull(new KeywayBore(20, 6, 0.2, Advice.Number(side.Remedy, "0 to #")).Outline());
        GearGeometryException key = Assert.Throws<GearGeometryException>(() => new KeywayBore(6, 7, 1));
        Assert.NotNull(new KeywayBore(6, Advice.Number(key.Remedy, "up to #"), 1).Outline());
        GearGeometryException inside = Assert.Throws<GearGeometryException>(() => KeywayBore.OfAcross(6, 2, 5));
        Assert.Equal("key-inside-bore", inside.ShapeCase);
        Assert.NotNull(KeywayBore.OfAcross(6, 2, Advice.Number(inside.Remedy, "across of #")).Outline());
    }

    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    public void There_are_one_flat_or_two(int flats) => Assert.Throws<ArgumentOutOfRangeException>(() => new FlattedBore(3, flats, 2));

    private static void Same(Geometry sharp, Bore bore)
    {
        Outline outline = bore.Outline();
        Polygon cut = Shapes.Polygon(outline);
        Assert.True(cut.IsValid);
        Assert.True(Shapes.IsCounterClockwise(outline));
        Assert.Equal(0, cut.SymmetricDifference(Shapes.Opened(sharp, bore.CornerRadius)).Area / cut.Area, Tolerance);
        Assert.Equal(cut.Coordinates.Max(corner => Math.Sqrt((corner.X * corner.X) + (corner.Y * corner.Y))), bore.OuterRadius, 1e-4 * bore.OuterRadius);
    }

    private static bool Near(Point one, Point other) => one.DistanceTo(other) < 1e-9;

    private static Geometry Box(double left, double bottom, double right, double top) => Factory.ToGeometry(new Envelope(left, right, bottom, top));

    private static Geometry Turned(Geometry shape, double angle) => AffineTransformation.RotationInstance(angle).Transform(shape);
}
