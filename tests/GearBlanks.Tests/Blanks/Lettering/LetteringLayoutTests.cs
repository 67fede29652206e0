using System.Collections.Immutable;
using CsCheck;
using GearBlanks.Blanks.Lettering;
using GearBlanks.Curves;
using NetTopologySuite.Geometries;
using Point = GearBlanks.Curves.Point;

namespace GearBlanks.Tests.Blanks.Lettering;

public sealed class LetteringLayoutTests
{
    private const string MoonWheel = "moon wheel | z 81 | m 0.8 | x -0.15 | 20 deg";

    private static readonly Gen<LetteringFace> Faces =
        from inner in Gen.Double[0, 12]
        from ring in Gen.Double[3, 30]
        from count in Gen.Int[0, 8]
        from share in Gen.Double[0.2, 0.8]
        from radius in Gen.Double[0.5, 5]
        from angle in Gen.Double[0, 7]
        from clearance in Gen.Double[0, 1.5]
        select new LetteringFace(inner, inner + ring, Holes(count, inner + (share * ring), radius, angle), clearance);

    private static readonly Gen<string> Texts = Gen.OneOf(
        Gen.OneOf(((string[])[MoonWheel, "hour pinion | z 12", "tide dial", "B | side up", "gypjq | {Q} | 0.5"]).Select(Gen.Const).ToArray()),
        Gen.String[Gen.Char[' ', '~'], 1, 12]);

    [Fact]
    public void Every_place_found_keeps_the_clearance_and_loses_no_stroke()
    {
        int placed = 0;
        Gen.Select(Faces, Texts).Sample(
            (face, text) =>
            {
                if (LetteringLayout.Place(text, face) is { } lettering)
                {
                    Interlocked.Increment(ref placed);
                    Assert.InRange(lettering.Height, 2, 4);
                    AssertClear(face, lettering.Strokes);
                    int strokes = StrokeFont.Lay(text.Replace(LetteringLayout.Break, " ", StringComparison.Ordinal), 2, default).Length;
                    Assert.Equal(strokes, lettering.Strokes.Length);
                }
            },
            iter: 100);
        Assert.True(placed > 20, "Too few of the faces tried had room for the check to mean anything.");
    }

    [Fact]
    public void A_roomy_wheel_is_lettered_at_the_greatest_height_along_the_rim_about_the_top()
    {
        PlacedLettering lettering = Place(MoonWheel, new LetteringFace(4, 31, [], 1));
        Assert.Equal(3, lettering.Height);
        Point[] points = [.. lettering.Strokes.SelectMany(stroke => stroke.Vertices).Select(vertex => vertex.Point)];
        Assert.All(points, point => Assert.InRange(point.Radius, 20, 30));
        Assert.True(points.Average(point => point.Y) > 10);
        Assert.True(points.Min(point => point.X) < -10 && points.Max(point => point.X) > 10);
    }

    [Fact]
    public void A_narrow_ring_is_lettered_along_a_circle()
    {
        PlacedLettering lettering = Place("tide dial harbour office", new LetteringFace(20, 25, [], 0.5));
        Point[] points = [.. lettering.Strokes.SelectMany(stroke => stroke.Vertices).Select(vertex => vertex.Point)];
        Assert.All(points, point => Assert.InRange(point.Radius, 20.5, 24.5));
        Assert.True(points.Max(point => point.X) - points.Min(point => point.X) > 30);
    }

    [Fact]
    public void Holes_in_the_way_make_lettering_smaller_or_moved_but_never_crossed()
    {
        LetteringFace face = new(10, 18, Holes(5, 14, 1.6, 0.3), 0.5);
        PlacedLettering lettering = Place(MoonWheel, face);
        Assert.True(lettering.Height < 4);
        AssertClear(face, lettering.Strokes);
    }

    [Theory]
    [InlineData(6, 9)] // 3 mm of ring less 2 mm of clearance leaves 1 mm for 2 mm letters
    [InlineData(0, 4)] // a disc of 6 mm for a text that is far longer on any of its lines
    [InlineData(9, 8)] // no ring at all
    public void What_does_not_fit_at_the_least_height_is_left_out(double inner, double outer) =>
        Assert.Null(LetteringLayout.Place("the harbour office's own moon wheel", new LetteringFace(inner, outer, [], 1)));

    // The holes and their clearances cover radii 6.3 to 9.7 mm: less than 2 mm is left on either side.
    [Fact]
    public void A_face_riddled_with_holes_takes_no_lettering() =>
        Assert.Null(LetteringLayout.Place("z 81", new LetteringFace(4, 12, Holes(24, 8, 1.5, 0), 0.5)));

    [Fact]
    public void Letters_are_at_least_as_high_as_asked_and_the_least_height_itself_is_tried()
    {
        LetteringFace face = new(20, 23.2, [], 0.5);
        Assert.Equal(2.1, LetteringLayout.Place("AB", face, 2.1, 2.4)?.Height);
        Assert.Null(LetteringLayout.Place("AB", face, 2.3, 2.4));
    }

    [Fact]
    public void The_same_input_finds_the_same_place()
    {
        LetteringFace face = new(8, 30, Holes(5, 18, 4, 1), 1);
        Assert.Equal(
            Place(MoonWheel, face).Strokes.SelectMany(stroke => stroke.Vertices),
            Place(MoonWheel, face).Strokes.SelectMany(stroke => stroke.Vertices));
    }

    [Theory]
    [InlineData("")]
    [InlineData("  ")]
    [InlineData(" |  | ")]
    public void A_text_without_letters_needs_no_room(string text) =>
        Assert.Empty(Place(text, new LetteringFace(5, 5, [], 1)).Strokes);

    [Fact]
    public void A_text_of_very_many_parts_is_left_out_without_ado() =>
        Assert.Null(LetteringLayout.Place(string.Join(LetteringLayout.Break, Enumerable.Repeat("part", 2000)), new LetteringFace(4, 30, [], 1)));

    [Fact]
    public void Heights_must_be_positive_and_in_order()
    {
        LetteringFace face = new(4, 30, [], 1);
        Assert.Throws<ArgumentOutOfRangeException>(() => LetteringLayout.Place("x", face, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => LetteringLayout.Place("x", face, 3, 2));
    }

    private static PlacedLettering Place(string text, LetteringFace face)
    {
        PlacedLettering? lettering = LetteringLayout.Place(text, face);
        Assert.NotNull(lettering);
        return lettering;
    }

    private static ImmutableArray<Circle> Holes(int count, double pitchRadius, double radius, double angle) =>
        [.. Enumerable.Range(0, count).Select(i => new Circle(Point.Polar(pitchRadius, angle + (2 * Math.PI * i / count)), radius))];

    // Measured by another library than the one under test.
    private static void AssertClear(LetteringFace face, IEnumerable<ArcPath> strokes)
    {
        const double rounding = 1e-9;
        foreach (ArcPath stroke in strokes)
        {
            LineString line = new([.. stroke.Vertices.Select(vertex => new Coordinate(vertex.Point.X, vertex.Point.Y))]);
            Assert.All(line.Coordinates, corner => Assert.True(Math.Sqrt((corner.X * corner.X) + (corner.Y * corner.Y)) <= face.OuterRadius - face.Clearance + rounding));
            if (face.InnerRadius > 0)
            {
                Assert.True(DistanceTo(line, default) >= face.InnerRadius + face.Clearance - rounding);
            }

            Assert.All(face.Holes, hole => Assert.True(DistanceTo(line, hole.Centre) >= hole.Radius + face.Clearance - rounding));
        }
    }

    private static double DistanceTo(LineString line, Point point) =>
        line.Distance(new NetTopologySuite.Geometries.Point(point.X, point.Y));
}
