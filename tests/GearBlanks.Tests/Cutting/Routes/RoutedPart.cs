using System.Collections.Immutable;
using GearBlanks.Blanks;
using GearBlanks.Blanks.Bores;
using GearBlanks.Curves;
using GearBlanks.Curves.Fitting;
using GearBlanks.Cutting;
using GearBlanks.Cutting.Routes;
using GearBlanks.Teeth;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Distance;
using Point = GearBlanks.Curves.Point;

namespace GearBlanks.Tests.Cutting.Routes;

/// <summary>A part that is routed, and the same part, nominal, as a polygon that knows nothing of routes.</summary>
internal sealed class RoutedPart
{
    public const double Tolerance = 0.0005;
    private static readonly GeometryFactory Factory = new();

    private static readonly LayerPlan Layers = new(
        ImmutableDictionary.CreateRange(Enum.GetValues<Operation>().Select(operation => KeyValuePair.Create(operation, operation.ToString()))), false);

    private readonly double _centre;

    /// <param name="blank">The part.</param>
    /// <param name="centre">Diameter of the tool whose centre runs on the contours, mm; 0 for none.</param>
    public RoutedPart(Blank blank, double centre)
    {
        _centre = centre;
        Teeth = blank.Gear;
        Part nominal = PartBuilder.Build(blank);
        Closed = PartDrawing.Of(centre > 0 ? Compensation.Of(nominal, Kerf.Of(centre)) : nominal, Layers, Tolerance, Pieces.Arcs, ["part"]);
        Material = Factory.CreatePolygon(Ring(nominal.Outside), [.. nominal.Holes.Select(Ring)]);
        Edge = new IndexedFacetDistance(Material.Boundary);
    }

    public Toothing Teeth { get; }

    public Drawing Closed { get; }

    public Polygon Material { get; }

    public IndexedFacetDistance Edge { get; }

    public static Blank Of(string kind) => new("part", Toothed(kind), 2, kind switch
    {
        "ring" => new Cutouts { Holes = [new Circle(new Point(29.5, 0), 1.2), new Circle(new Point(0, 29.5), 2)] },
        "rack" => new Cutouts { Holes = [new Circle(new Point(10, -6), 1.7), new Circle(new Point(-12, -6), 1)] },
        "D bore" => new Cutouts { Bore = new FlattedBore(5, 1, 4.5), Holes = [new Circle(new Point(9, 0), 2.5)] },
        "windows" => new Cutouts { Bore = new RoundBore(4), Crossings = new Crossings(4, 12, 3, 3, 3, 1, 0.3) },
        _ => new Cutouts { Bore = new RoundBore(4) },
    }, []);

    private static Toothing Toothed(string kind) => kind switch
    {
        "ring" => RingGear.Create(new RingData(52, 1, TestRacks.A, 66)),
        "rack" => RackBar.Create(new RackBarData(1.5, TestRacks.A, 60, 10)),
        "windows" => ExternalGear.Create(new GearData(40, 1, TestRacks.A)),
        "D bore" => ExternalGear.Create(new GearData(24, 1.25, TestRacks.A, 0.2)),
        _ => ExternalGear.Create(new GearData(20, 1, TestRacks.A)),
    };

    public (Drawing Drawing, ImmutableArray<string> Remarks, string Words) Routed(RoutePlan plan, double tool = 0) => Router.Of(Closed, Teeth, plan, _centre, tool);

    /// <summary>The pieces of an operation, each as a dense line.</summary>
    public static LineString[] Lines(Drawing drawing, Operation operation) => [.. Paths(drawing, operation).Select(path =>
        Factory.CreateLineString([.. Enumerable.Range(0, PathPiece.CountIn(path)).SelectMany(i => Dense(PathPiece.At(path, i))).Select(p => new Coordinate(p.X, p.Y))]))];

    public static IEnumerable<ArcPath> Paths(Drawing drawing, Operation operation) => drawing.Layers.Single(layer => layer.Operation == operation).Paths;

    public static IEnumerable<Point> Dense(PathPiece piece) => Enumerable.Range(0, 81).Select(i => piece.PointAt(i / 80.0));

    /// <summary>How far a point is from the part, mm; negative inside its material.</summary>
    public double Room(Point point)
    {
        NetTopologySuite.Geometries.Point at = Factory.CreatePoint(new Coordinate(point.X, point.Y));
        double room = Edge.Distance(at);
        return room > 0 && Material.Contains(at) ? -room : room;
    }

    private static LinearRing Ring(Outline outline)
    {
        Coordinate[] points = [.. outline.Curves().SelectMany(Fine).Select(p => new Coordinate(p.X, p.Y))];
        return Factory.CreateLinearRing([.. points, points[0].Copy()]);
    }

    private static IEnumerable<Point> Fine(Curve curve)
    {
        int steps = curve is Arc { IsFullCircle: true } ? 2000 : curve is Line ? 1 : Math.Max(16, (int)(curve.StartPoint.DistanceTo(curve.EndPoint) / 0.05));
        return Enumerable.Range(0, steps).Select(i => curve.PointAt(curve.Start + ((curve.End - curve.Start) * i / steps)));
    }
}
