using System.Collections.Immutable;
using GearBlanks.Blanks;
using GearBlanks.Blanks.Bores;
using GearBlanks.Curves;
using GearBlanks.Curves.Fitting;
using GearBlanks.Cutting;
using GearBlanks.Cutting.Routes;
using GearBlanks.Teeth;
using NetTopologySuite.Algorithm.Locate;
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
    private readonly IndexedFacetDistance _edge;
    private readonly IndexedPointInAreaLocator _material;

    /// <param name="blank">The part.</param>
    /// <param name="centre">Diameter of the tool whose centre runs on the contours, mm; 0 for none.</param>
    public RoutedPart(Blank blank, double centre)
    {
        _centre = centre;
        Teeth = blank.Gear;
        Part nominal = PartBuilder.Build(blank);
        Closed = PartDrawing.Of(centre > 0 ? Compensation.Of(nominal, Kerf.Of(centre)) : nominal, Layers, Tolerance, Pieces.Arcs, ["part"]);
        Polygon material = Factory.CreatePolygon(Ring(nominal.Outside), [.. nominal.Holes.Select(Ring)]);
        _edge = new IndexedFacetDistance(material.Boundary);
        _material = new IndexedPointInAreaLocator(material);
    }

    /// <summary>Its teeth.</summary>
    public Toothing Teeth { get; }

    public Drawing Closed { get; }

    public static Blank Of(string kind, Cutouts? cutouts = null) => new("part", Toothed(kind), 2, cutouts ?? kind switch
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
        Factory.CreateLineString([.. Enumerable.Range(0, PathPiece.CountIn(path)).SelectMany(i => Dense(PathPiece.At(path, i), 16)).Select(p => new Coordinate(p.X, p.Y))]))];

    public static IEnumerable<ArcPath> Paths(Drawing drawing, Operation operation) => drawing.Layers.Single(layer => layer.Operation == operation).Paths;

    public static IEnumerable<Point> Dense(PathPiece piece, int parts = 40) => Enumerable.Range(0, parts + 1).Select(i => piece.PointAt((double)i / parts));

    /// <summary>How far a point is from the part, mm; negative inside its material.</summary>
    public double Room(Point point)
    {
        var at = new Coordinate(point.X, point.Y);
        double room = _edge.Distance(Factory.CreatePoint(at));
        return _material.Locate(at) == Location.Interior ? -room : room;
    }

    private static LinearRing Ring(Outline outline)
    {
        Coordinate[] points = [.. outline.Curves().SelectMany(Fine).Select(p => new Coordinate(p.X, p.Y))];
        return Factory.CreateLinearRing([.. points, points[0].Copy()]);
    }

    private static IEnumerable<Point> Fine(Curve curve)
    {
        int steps = curve is Arc { IsFullCircle: true } ? 2000 : curve is Line ? 1 : Math.Max(16, (int)(curve.LengthBetween(curve.Start, curve.End) / 0.05));
        return Enumerable.Range(0, steps).Select(i => curve.PointAt(curve.Start + ((curve.End - curve.Start) * i / steps)));
    }
}
