using GearBlanks.Teeth;
using NetTopologySuite.Algorithm.Locate;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Distance;

namespace GearBlanks.Tests.Meshing;

/// <summary>Teeth of any kind as one dense polygon in their own frame: knows the outline's points, nothing of meshing.</summary>
internal sealed class PolygonTeeth
{
    private static readonly GeometryFactory Factory = new();
    private readonly IndexedFacetDistance _distance;
    private readonly IndexedPointInAreaLocator _locator;
    private readonly Location _material;

    public PolygonTeeth(Toothing teeth, int steps = 60)
    {
        GearBlanks.Curves.Outline outline = teeth.Outline();
        Coordinate[] pattern = [.. outline.Pattern.SelectMany(curve => Enumerable.Range(0, steps)
            .Select(i => curve.PointAt(curve.Start + ((curve.End - curve.Start) * i / steps)))).Select(p => new Coordinate(p.X, p.Y))];
        int repeats = teeth is RackBar ? 1 : teeth.Teeth;
        Coordinate[] points = [.. Enumerable.Range(0, repeats).SelectMany(k => pattern.Select(p => Placed(p, 2 * Math.PI * k / repeats, 0, 0)))];
        Polygon polygon = Factory.CreatePolygon([.. points, points[0].Copy()]);
        _distance = new IndexedFacetDistance(polygon.Boundary);
        _locator = new IndexedPointInAreaLocator(polygon);
        _material = teeth is RingGear ? Location.Exterior : Location.Interior;
        bool[] onTip = [.. points.Select(p => Math.Abs(Height(teeth, p)) < 1e-9)];
        Corners = [.. points.Where((_, i) => onTip[i] && !(onTip[(i + 1) % points.Length] && onTip[(i + points.Length - 1) % points.Length]))];
    }

    /// <summary>The points of the outline that begin or end its pieces on the tip circle or line.</summary>
    public Coordinate[] Corners { get; }

    /// <summary>A point turned about the origin, then shifted.</summary>
    public static Coordinate Placed(Coordinate p, double angle, double x, double y)
    {
        (double sine, double cosine) = Math.SinCos(angle);
        return new Coordinate((cosine * p.X) - (sine * p.Y) + x, (sine * p.X) + (cosine * p.Y) + y);
    }

    /// <summary>A point seen from a frame that was turned, then shifted.</summary>
    public static Coordinate Seen(Coordinate p, double angle, double x, double y) => Placed(new Coordinate(p.X - x, p.Y - y), -angle, 0, 0);

    /// <summary>Distance from the material's edge, negative in the material.</summary>
    public double Room(Coordinate p) => _distance.Distance(Factory.CreatePoint(p)) * (_locator.Locate(p) == _material ? -1 : 1);

    private static double Height(Toothing teeth, Coordinate p) => teeth is RackBar rack
        ? p.Y - rack.TipHeight
        : Math.Sqrt((p.X * p.X) + (p.Y * p.Y)) - ((Gear)teeth).TipRadius;
}
