using CsCheck;
using GearBlanks.Curves;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Distance;
using Point = GearBlanks.Curves.Point;

namespace GearBlanks.Tests.Curves;

/// <summary>Distances of lines and arcs in closed form, against fine polygons.</summary>
public sealed class ContourTests
{
    private static readonly Gen<Point> Points = Gen.Select(Gen.Double[-10, 10], Gen.Double[-10, 10], (x, y) => new Point(x, y));

    private static readonly Gen<Curve> Curves = Gen.OneOf(
        Gen.Select(Points, Points, (from, to) => (Curve)new Line(from, to)).Where(line => line.Length > 0.1),
        Gen.Select(Points, Gen.Double[0.2, 6], Gen.Double[-7, 7], Gen.Double[-6.2, 6.2], (centre, radius, start, sweep) => (Curve)new Arc(centre, radius, start, sweep))
            .Where(arc => Math.Abs(((Arc)arc).Sweep) > 0.1),
        Gen.Select(Points, Gen.Double[0.2, 6], (centre, radius) => (Curve)Arc.FullCircle(new Circle(centre, radius))));

    // A chord of 1/4000 of an arc of radius 6 and nearly a whole turn lies within 2e-6 of it.
    private const int Pieces = 4000;
    private const double Tolerance = 4e-6;

    [Fact]
    public void Least_distances_are_those_of_fine_polygons() => Gen.Select(Curves, Curves).Sample(
        (one, other) =>
        {
            double distance = LineArcDistance.Between(one, other);
            Assert.Equal(distance, LineArcDistance.Between(other, one), 1e-12);
            Assert.Equal(IndexedFacetDistance.Distance(Shapes.Line(one, Pieces), Shapes.Line(other, Pieces)), distance, Tolerance);
        },
        iter: 300, threads: 1);

    [Fact]
    public void Distances_from_points_and_reaches_are_those_of_fine_polygons() => Gen.Select(Curves, Points, Gen.Double[0, 7]).Sample(
        (curve, point, angle) =>
        {
            LineString line = Shapes.Line(curve, Pieces);
            Assert.Equal(line.Distance(new NetTopologySuite.Geometries.Point(point.X, point.Y)), LineArcDistance.From(point, curve), Tolerance);
            Assert.Equal(
                line.Coordinates.Max(corner => corner.Distance(new Coordinate(point.X, point.Y))), LineArcDistance.Farthest(point, curve), Tolerance);
            Assert.Equal(
                line.Coordinates.Max(corner => (corner.X * Math.Cos(angle)) + (corner.Y * Math.Sin(angle))),
                LineArcDistance.Reach(Vector.AtAngle(angle), curve), Tolerance);
        },
        iter: 300, threads: 1);

    [Fact]
    public void Concentric_arcs_keep_their_difference_in_radius_where_they_face_and_the_distance_of_their_ends_elsewhere()
    {
        var inner = new Arc(default, 2, 0, 1);
        Assert.Equal(1, LineArcDistance.Between(inner, new Arc(default, 3, 0.2, 0.3)), 1e-14);
        Assert.Equal(1, LineArcDistance.Between(inner, Arc.FullCircle(new Circle(default, 3))), 1e-14);
        Assert.Equal(Point.Polar(2, 1).DistanceTo(Point.Polar(3, 2)), LineArcDistance.Between(inner, new Arc(default, 3, 2, 1)), 1e-14);
    }

    [Fact]
    public void A_curve_that_is_neither_line_nor_arc_is_refused() => Assert.Throws<ArgumentException>(
        () => Contour.Of(GearBlanks.Teeth.ExternalGear.Create(new GearBlanks.Teeth.GearData(20, 1, TestRacks.A)).Outline()));

    // Slots of any width, at any place.
    [Fact]
    public void What_lies_inside_is_what_lies_in_the_polygon() =>
        Gen.Select(Points, Gen.Double[0.5, 4], Gen.Double[0.2, 5], Gen.Double[0, 7], Points).Sample(
            (middle, radius, length, turn, probe) =>
            {
                var slot = new Outline(
                [
                    new Arc(new Point(length, 0), radius, -Math.PI / 2, Math.PI),
                    new Line(new Point(length, radius), new Point(0, radius)),
                    new Arc(default, radius, Math.PI / 2, Math.PI),
                    new Line(new Point(0, -radius), new Point(length, -radius)),
                ]).Moved(Motion.Turn(turn).Then(Motion.Shift(middle - default(Point))));
                Assert.Equal(
                    Shapes.Polygon(slot).Contains(new NetTopologySuite.Geometries.Point(probe.X, probe.Y)), Contour.Of(slot).Contains(probe));
            },
            iter: 300, threads: 1);

    // An arc of less or of more than half a turn, either way, and its chord.
    [Fact]
    public void What_lies_inside_a_path_is_what_lies_in_the_polygon() =>
        Gen.Select(Gen.Double[0.2, 6], Gen.Bool, Gen.Double[0, 7], Gen.Double[-3, 3], Gen.Double[-3, 3]).Sample(
            (sweep, isClockwise, start, x, y) =>
            {
                var arc = new Arc(default, 2, start, isClockwise ? -sweep : sweep);
                var path = new ArcPath([new PathVertex(arc.StartPoint, Math.Tan(arc.Sweep / 4)), new PathVertex(arc.EndPoint, 0)], true);
                var contour = Contour.Of(path);
                var probe = new Point(x, y);
                if (contour.NearestTo(probe) > 1e-3)
                {
                    var polygon = Shapes.Polygon(new Outline([arc, new Line(arc.EndPoint, arc.StartPoint)]));
                    Assert.Equal(polygon.Contains(new NetTopologySuite.Geometries.Point(x, y)), contour.Contains(probe));
                }
            },
            iter: 300, threads: 1);

    [Fact]
    public void An_open_path_is_refused() =>
        Assert.Throws<ArgumentException>(() => Contour.Of(ArcPath.Strokes([default, new Point(1, 0), new Point(1, 1)])));
}
