using GearBlanks.Curves;
using GearBlanks.Teeth;
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

    private static readonly GeometryFactory Factory = new();

    private readonly double _pitchAngle;
    private readonly IndexedFacetDistance _distance;
    private readonly Coordinate[] _boundary;

    private ClosedTeeth(Geometry closed, double pitchAngle)
    {
        Shape = closed;
        _pitchAngle = pitchAngle;
        _boundary = closed.Boundary.Coordinates;
        _distance = new IndexedFacetDistance(closed.Boundary);
    }

    public Geometry Shape { get; }

    /// <summary>Four teeth of an external gear or a ring, the gap in their middle on +X; or a whole rack bar.</summary>
    public static ClosedTeeth Of(Toothing teeth, double radius) => new(Closed(Block(teeth), radius), teeth is Gear ? 2 * Math.PI / teeth.Teeth : 0);

    /// <summary>Greatest distance between the outline as cut and the closed polygon, both ways, in the middle gap; of a bar everywhere, mm.</summary>
    public double FurthestFrom(Outline cut)
    {
        Motion toGap = Motion.Turn(_pitchAngle / 2);
        Curve[] near = [.. (_pitchAngle > 0 ? Enumerable.Range(-2, 4).SelectMany(i => cut.Pattern.Select(curve => curve.Moved(Motion.Turn(i * _pitchAngle)))) : cut.Curves())
            .Select(curve => curve.Moved(toGap))];
        Point[] points = [.. near.SelectMany(Sampled)];
        double there = points.Where(IsInGap).Max(point => _distance.Distance(Factory.CreatePoint(new Coordinate(point.X, point.Y))));
        var exact = new IndexedFacetDistance(Factory.CreateLineString([.. points.Append(near[^1].EndPoint).Select(point => new Coordinate(point.X, point.Y))]));
        double back = _boundary.Where(point => IsInGap(new Point(point.X, point.Y)) && (_pitchAngle == 0 || IsAtTeeth(point, points)))
            .Max(point => exact.Distance(Factory.CreatePoint(point)));
        return Math.Max(there, back);
    }

    /// <summary>Least distance of a point outside from the closed polygon, mm; 0 inside.</summary>
    public double DistanceTo(Point point) => Shape.Distance(Factory.CreatePoint(new Coordinate(point.X, point.Y)));

    private bool IsInGap(Point point) => _pitchAngle == 0 || Math.Abs(point.Angle) <= _pitchAngle / 2;

    // The polygon has a back, too.
    private static bool IsAtTeeth(Coordinate at, Point[] points)
    {
        double radius = new Point(at.X, at.Y).Radius;
        return radius >= points.Min(point => point.Radius) - 1e-3 && radius <= points.Max(point => point.Radius) + 1e-3;
    }

    private static Polygon Block(Toothing teeth)
    {
        Outline nominal = teeth.Outline();
        if (teeth is RackBar)
        {
            return PolygonOf(nominal.Curves().SelectMany(Sampled));
        }

        double pitch = 2 * Math.PI / teeth.Teeth;
        int each = Math.Min(4, teeth.Teeth);
        Point[] points = [.. Enumerable.Range(0, each)
            .SelectMany(i => nominal.Pattern.Select(curve => curve.Moved(Motion.Turn(((i - (each / 2)) * pitch) + (pitch / 2)))))
            .SelectMany(Sampled)];
        double back = 2 * points.Max(point => point.Radius);
        return each == teeth.Teeth ? PolygonOf(points)
            : teeth is RingGear ? PolygonOf([.. points, Point.Polar(back, points[^1].Angle), .. Behind(points, back), Point.Polar(back, points[0].Angle)])
            : PolygonOf([.. points, default]);
    }

    private static IEnumerable<Point> Behind(Point[] points, double back) =>
        Enumerable.Range(1, 9).Select(i => Point.Polar(back, points[^1].Angle + ((points[0].Angle - points[^1].Angle) * i / 10)));

    private static Geometry Closed(Polygon block, double radius)
    {
        Geometry grown = Grown(block, radius);

        // One path from outside: pockets that it does not get into stay.
        return Grown(Factory.CreatePolygon(((Polygon)grown).Shell), -radius);
    }

    private static Geometry Grown(Geometry shape, double by) => BufferOp.Buffer(
        shape, by, new BufferParameters(Quadrant, EndCapStyle.Round, JoinStyle.Round, 5) { SimplifyFactor = 1e-6 });

    private static IEnumerable<Point> Sampled(Curve curve) => curve is Line
        ? [curve.StartPoint]
        : Enumerable.Range(0, Chords).Select(i => curve.PointAt(curve.Start + ((curve.End - curve.Start) * i / Chords)));

    private static Polygon PolygonOf(IEnumerable<Point> points)
    {
        Coordinate[] ring = [.. points.Select(point => new Coordinate(point.X, point.Y))];
        return Factory.CreatePolygon([.. ring, ring[0]]);
    }
}
