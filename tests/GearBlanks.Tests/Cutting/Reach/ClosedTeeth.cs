using GearBlanks.Curves;
using GearBlanks.Teeth;
using NetTopologySuite.Algorithm.Locate;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Buffer;
using NetTopologySuite.Operation.Distance;
using Point = GearBlanks.Curves.Point;

namespace GearBlanks.Tests.Cutting.Reach;

/// <summary>
/// A few teeth as a polygon of very many points, grown and shrunk again by a general-purpose library: what a disc outside them does not reach. Knows nothing
/// of involutes, parallels or gaps that are their own mirror images.
/// </summary>
internal sealed class ClosedTeeth
{
    // A quarter of a disc in so many chords: at 3 mm they stray by 0.00002 mm.
    private const int Quadrant = 200;

    private const int Chords = 120;

    // Where less than that has to be told: chords of a curve (four times as many of a fillet, into whose corners no disc gets), and of a quarter of a disc.
    private const int FineChords = 600;
    private const int FineQuadrant = 3000;

    private static readonly GeometryFactory Factory = new();

    private readonly double _pitchAngle;
    private readonly IndexedFacetDistance _distance;
    private readonly Coordinate[] _boundary;
    private readonly IndexedPointInAreaLocator _locator;

    private ClosedTeeth(Geometry closed, double pitchAngle)
    {
        Shape = closed;
        _pitchAngle = pitchAngle;
        _boundary = closed.Boundary.Coordinates;
        _distance = new IndexedFacetDistance(closed.Boundary);
        _locator = new IndexedPointInAreaLocator(closed);
    }

    public Geometry Shape { get; }

    /// <summary>Four teeth of an external gear or a ring, the gap in their middle on +X; or a whole rack bar.</summary>
    public static ClosedTeeth Of(Toothing teeth, double radius) =>
        new(Closed(Block(teeth, 4, Chords), radius, Quadrant), teeth is Gear ? 2 * Math.PI / teeth.Teeth : 0);

    /// <summary>Two teeth only, the gap between them on +X (of a rack on +Y), but far more points.</summary>
    public static ClosedTeeth OneGap(Toothing teeth, double radius, bool isFine) => new(
        Closed(
            Block(teeth is RackBar { Data: var data } rack ? RackBar.Create(data with { Length = 2 * rack.Pitch }) : teeth, 2, isFine ? FineChords : Chords),
            radius, isFine ? FineQuadrant : Quadrant),
        teeth is Gear ? 2 * Math.PI / teeth.Teeth : 0);

    /// <summary>Distance of a point from the closed polygon's edge, mm.</summary>
    public double FromEdge(Point point) => _distance.Distance(Factory.CreatePoint(new Coordinate(point.X, point.Y)));

    /// <summary>How deep a point lies in the closed polygon, mm; 0 outside.</summary>
    public double DepthOf(Point point)
    {
        var at = new Coordinate(point.X, point.Y);
        return _locator.Locate(at) == Location.Interior ? _distance.Distance(Factory.CreatePoint(at)) : 0;
    }

    /// <summary>Greatest distance between the outline as cut and the closed polygon, both ways, in the middle gap; of a bar everywhere, mm.</summary>
    public double FurthestFrom(Outline cut)
    {
        Motion toGap = Motion.Turn(_pitchAngle / 2);
        Curve[] near = [.. (_pitchAngle > 0 ? Enumerable.Range(-2, 4).SelectMany(i => cut.Pattern.Select(curve => curve.Moved(Motion.Turn(i * _pitchAngle)))) : cut.Curves())
            .Select(curve => curve.Moved(toGap))];
        Point[] points = [.. near.SelectMany(curve => Sampled(curve, Chords))];
        double there = points.Where(IsInGap).Max(point => _distance.Distance(Factory.CreatePoint(new Coordinate(point.X, point.Y))));
        var exact = new IndexedFacetDistance(Factory.CreateLineString([.. points.Append(near[^1].EndPoint).Select(point => new Coordinate(point.X, point.Y))]));
        double back = _boundary.Where(point => IsInGap(new Point(point.X, point.Y)) && (_pitchAngle == 0 || IsAtTeeth(point, points)))
            .Max(point => exact.Distance(Factory.CreatePoint(point)));
        return Math.Max(there, back);
    }

    private bool IsInGap(Point point) => _pitchAngle == 0 || Math.Abs(point.Angle) <= _pitchAngle / 2;

    // The polygon has a back, too.
    private static bool IsAtTeeth(Coordinate at, Point[] points)
    {
        double radius = new Point(at.X, at.Y).Radius;
        return radius >= points.Min(point => point.Radius) - 1e-3 && radius <= points.Max(point => point.Radius) + 1e-3;
    }

    private static Polygon Block(Toothing teeth, int most, int chords)
    {
        Outline nominal = teeth.Outline();
        if (teeth is RackBar)
        {
            return PolygonOf(nominal.Curves().SelectMany(curve => Sampled(curve, chords)));
        }

        double pitch = 2 * Math.PI / teeth.Teeth;
        int each = Math.Min(most, teeth.Teeth);
        Point[] points = [.. Enumerable.Range(0, each)
            .SelectMany(i => nominal.Pattern.Select(curve => curve.Moved(Motion.Turn(((i - (each / 2)) * pitch) + (pitch / 2)))))
            .SelectMany(curve => Sampled(curve, chords))];
        double back = 2 * points.Max(point => point.Radius);
        return each == teeth.Teeth ? PolygonOf(points)
            : teeth is RingGear ? PolygonOf([.. points, Point.Polar(back, points[^1].Angle), .. Behind(points, back), Point.Polar(back, points[0].Angle)])
            : PolygonOf([.. points, default]);
    }

    private static IEnumerable<Point> Behind(Point[] points, double back) =>
        Enumerable.Range(1, 9).Select(i => Point.Polar(back, points[^1].Angle + ((points[0].Angle - points[^1].Angle) * i / 10)));

    private static Geometry Closed(Polygon block, double radius, int quadrant)
    {
        Geometry grown = Grown(block, radius, quadrant);

        // One path from outside: pockets that it does not get into stay.
        return Grown(Factory.CreatePolygon(((Polygon)grown).Shell), -radius, quadrant);
    }

    private static Geometry Grown(Geometry shape, double by, int quadrant) => BufferOp.Buffer(
        shape, by, new BufferParameters(quadrant, EndCapStyle.Round, JoinStyle.Round, 5) { SimplifyFactor = 1e-8 });

    private static IEnumerable<Point> Sampled(Curve curve, int chords) => curve is Line
        ? [curve.StartPoint]
        : Evenly(curve, chords == FineChords && curve is Trochoid ? 4 * chords : chords);

    private static IEnumerable<Point> Evenly(Curve curve, int chords) =>
        Enumerable.Range(0, chords).Select(i => curve.PointAt(curve.Start + ((curve.End - curve.Start) * i / chords)));

    private static Polygon PolygonOf(IEnumerable<Point> points)
    {
        Coordinate[] ring = [.. points.Select(point => new Coordinate(point.X, point.Y))];
        return Factory.CreatePolygon([.. ring, ring[0]]);
    }
}
