using System.Collections.Immutable;
using GearBlanks.Blanks;
using GearBlanks.Curves;
using GearBlanks.Curves.Fitting;
using GearBlanks.Cutting;
using GearBlanks.Cutting.Routes;
using GearBlanks.Teeth;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Distance;
using Point = GearBlanks.Curves.Point;

namespace GearBlanks.Tests.Cutting.Routes;

/// <summary>Starts, leads and tabs of gears, rings and racks, measured against the part's own exact curves and its polygon.</summary>
public sealed class RouterTests
{
    private const double Tolerance = 0.001;
    private static readonly GeometryFactory Factory = new();

    private static readonly LayerPlan Layers = new(
        ImmutableDictionary.CreateRange(Enum.GetValues<Operation>().Select(operation => KeyValuePair.Create(operation, operation.ToString()))), false);

    /// <summary>Kind, teeth, module, kerf (0 for nominal), start, lead, tabs.</summary>
    public static TheoryData<string, int, double, double, StartPlace, LeadForm?, int> Grid
    {
        get
        {
            var grid = new TheoryData<string, int, double, double, StartPlace, LeadForm?, int>();
            foreach (string kind in (string[])["gear", "ring", "rack"])
            {
                foreach ((int teeth, double module) in ((int, double)[])[(13, 2), (24, 0.8), (60, 1), (41, 3)])
                {
                    foreach (double kerf in (double[])[0, 0.2, 0.4 * module])
                    {
                        grid.Add(kind, teeth, module, kerf, StartPlace.Tip, LeadForm.Line, 0);
                        grid.Add(kind, teeth, module, kerf, StartPlace.Root, LeadForm.Arc, 0);
                        grid.Add(kind, teeth, module, kerf, StartPlace.Root, null, 0);
                        grid.Add(kind, teeth, module, kerf, StartPlace.Tip, LeadForm.Arc, 3);
                        grid.Add(kind, teeth, module, kerf, StartPlace.Anywhere, null, 4);
                    }
                }
            }

            return grid;
        }
    }

    [Theory]
    [MemberData(nameof(Grid))]
    public void Everything_is_where_the_rule_says(string kind, int teeth, double module, double kerf, StartPlace start, LeadForm? lead, int tabs)
    {
        Toothing toothing = Made(kind, teeth, module);
        Part nominal = PartBuilder.Build(new Blank("part", toothing, 2, new Cutouts { Bore = null, Holes = Holes(toothing) }, []));
        Part part = kerf > 0 ? Compensation.Of(nominal, Kerf.Of(kerf)) : nominal;
        Drawing closed = PartDrawing.Of(part, Layers, Tolerance, Pieces.Arcs, ["part"]);
        (Drawing drawing, _, _) = Router.Of(closed, toothing, new RoutePlan(start, lead, lead is null ? 0 : 0.3 * module, tabs, tabs == 0 ? 0 : 0.3), kerf, 0);

        // What lies inside comes before the outside.
        Operation[] order = [.. drawing.Layers.Select(layer => layer.Operation)];
        Assert.True(Array.IndexOf(order, Operation.CutHoles) < Array.IndexOf(order, Operation.CutOutside));

        Polygon material = Material(nominal);
        var edge = new IndexedFacetDistance(material.Boundary);
        Curve[] flanks = [.. nominal.Holes.Append(nominal.Outside).SelectMany(outline => outline.Curves()).Where(curve => curve is Involute or Trochoid || IsFlank(curve, toothing))];
        foreach (DrawingLayer layer in drawing.Layers.Where(layer => layer.Operation is Operation.CutOutside or Operation.CutHoles))
        {
            bool isTeeth = (toothing is RingGear) == (layer.Operation == Operation.CutHoles);
            bool isOutside = layer.Operation == Operation.CutOutside;
            foreach ((int index, ArcPath path) in layer.Paths.Index())
            {
                int from = path.Closed || lead is null ? 0 : OnContour(path.Vertices[0].Point) ? 0 : 1;
                int to = path.Vertices.Length - 1 - (path.Closed || lead is null || OnContour(path.Vertices[^1].Point) ? 0 : 1);
                Point begin = path.Vertices[from].Point;
                if ((isTeeth && index == 0 && (start != StartPlace.Anywhere || lead is not null)) || (isOutside && isTeeth && tabs > 0))
                {
                    AssertOffFlanks(begin, start);
                }

                // Leads are scrap all the way, and lead to the contour.
                if (from == 1)
                {
                    AssertScrap(PathPiece.At(path, 0), begin);
                }

                if (to < path.Vertices.Length - 1)
                {
                    AssertScrap(PathPiece.At(path, path.Vertices.Length - 2), path.Vertices[to].Point);
                }
            }

            if (isOutside && tabs > 0 && layer.Paths.Length == tabs)
            {
                AssertTabs(layer.Paths);
            }
        }

        bool OnContour(Point point) => Math.Abs(edge.Distance(Factory.CreatePoint(new Coordinate(point.X, point.Y))) - (kerf / 2)) < 2 * Tolerance;

        void AssertOffFlanks(Point point, StartPlace place)
        {
            double nearest = flanks.Min(curve => Nearest(point, curve));
            if (kerf == 0)
            {
                Assert.True(nearest > 0.02 * module || place == StartPlace.Root, $"{nearest} mm from a flank");
            }

            double height = Height(point, toothing);
            (double tip, double root) = Heights(toothing);
            Assert.True(
                Math.Abs(height - tip - (kerf / 2)) < 0.005 || height < root + (kerf / 2) + (0.6 * module) || tabs > 0,
                $"{height} is neither on a tip, {tip}, nor in a root, {root}");
            if (tabs > 0 && toothing is not RackBar)
            {
                Assert.InRange(height, tip - 0.001, tip + (kerf / 2) + 0.001);
            }
        }

        void AssertScrap(PathPiece way, Point end)
        {
            for (int i = 0; i <= 20; i++)
            {
                Point point = way.PointAt(i / 20.0);
                var at = Factory.CreatePoint(new Coordinate(point.X, point.Y));
                double room = edge.Distance(at);
                double away = point.DistanceTo(end);
                if (away > 1e-3)
                {
                    Assert.False(material.Contains(at) && room > Tolerance, $"a lead runs in the part at {point}");
                    Assert.True(room >= (kerf / 2) - (2 * Tolerance), $"the beam cuts {(kerf / 2) - room} mm into the part at {point}");
                }
            }
        }

        // Between the end of one piece and the start of the next the part is held: as wide as asked for, at the tips of a gear and nowhere else.
        void AssertTabs(ImmutableArray<ArcPath> pieces)
        {
            for (int i = 0; i < pieces.Length; i++)
            {
                Point end = EndOf(pieces[i]);
                Point next = StartOf(pieces[(i + 1) % pieces.Length]);
                double gap = end.DistanceTo(next) - kerf;
                Assert.InRange(gap, -kerf - 0.001, 0.3001);
                foreach (Point point in (Point[])[end, next])
                {
                    if (toothing is ExternalGear)
                    {
                        Assert.InRange(Height(point, toothing), Heights(toothing).Tip - 0.001, Heights(toothing).Tip + (kerf / 2) + 0.001);
                    }
                }
            }

            Point StartOf(ArcPath path) => path.Vertices[lead is not null && !OnContour(path.Vertices[0].Point) ? 1 : 0].Point;
            Point EndOf(ArcPath path) => path.Vertices[lead is not null && !OnContour(path.Vertices[^1].Point) ? path.Vertices.Length - 2 : path.Vertices.Length - 1].Point;
        }
    }

    [Fact]
    public void A_route_without_wishes_changes_nothing()
    {
        Toothing gear = Made("gear", 24, 1);
        Drawing closed = PartDrawing.Of(PartBuilder.Build(new Blank("part", gear, 2, new Cutouts { Bore = null, Holes = Holes(gear) }, [1])), Layers, Tolerance, Pieces.Arcs, ["part"]);
        (Drawing drawing, ImmutableArray<string> remarks, string words) = Router.Of(closed, gear, RoutePlan.None, 0, 0);
        Assert.Same(closed, drawing);
        Assert.Empty(remarks);
        Assert.Empty(words);
    }

    /// <summary>All pieces together are the contour again, but for the tabs.</summary>
    [Theory]
    [InlineData(0, 0)]
    [InlineData(3, 0.3)]
    [InlineData(24, 0.2)]
    public void Nothing_is_cut_twice_and_nothing_is_forgotten(int tabs, double width)
    {
        Toothing gear = Made("gear", 24, 1);
        Drawing closed = PartDrawing.Of(PartBuilder.Build(new Blank("part", gear, 2, new Cutouts { Bore = null, Holes = Holes(gear) }, [])), Layers, Tolerance, Pieces.Arcs, ["part"]);
        (Drawing drawing, _, _) = Router.Of(closed, gear, new RoutePlan(StartPlace.Tip, null, 0, tabs, width), 0, 0);
        double Length(Drawing of) => of.Layers.Single(layer => layer.Operation == Operation.CutOutside).Paths
            .Sum(path => Enumerable.Range(0, PathPiece.CountIn(path)).Sum(i => PathPiece.At(path, i).Length));
        Assert.Equal(Length(closed) - (tabs * width), Length(drawing), 1e-6);
    }

    [Fact]
    public void What_there_is_no_room_for_is_told()
    {
        Toothing small = Made("gear", 24, 0.5);
        Drawing closed = PartDrawing.Of(PartBuilder.Build(new Blank("part", small, 2, new Cutouts { Bore = null, Holes = [new Circle(default, 0.5)] }, [])), Layers, Tolerance, Pieces.Arcs, ["part"]);
        (_, ImmutableArray<string> remarks, _) = Router.Of(closed, small, new RoutePlan(StartPlace.Tip, LeadForm.Line, 3, 30, 2), 0, 0);
        Assert.Contains(remarks, remark => remark.StartsWith("A lead in a hole is shortened to 0.", StringComparison.Ordinal));
        Assert.Contains(remarks, remark => remark.StartsWith("The tabs are 0.", StringComparison.Ordinal));
        Assert.Contains(remarks, remark => remark.StartsWith("There are 24 tabs", StringComparison.Ordinal));
        var narrow = ExternalGear.Create(new GearData(10, 1, TestRacks.A, 0.55));
        Assert.InRange(narrow.TipThickness, 0.1, 0.2);
        closed = PartDrawing.Of(Compensation.Of(PartBuilder.Build(new Blank("part", narrow, 2, Cutouts.None, [])), Kerf.Of(0.4)), Layers, Tolerance, Pieces.Arcs, ["part"]);
        (_, remarks, _) = Router.Of(closed, narrow, new RoutePlan(StartPlace.Tip, null, 0, 3, 2), 0.4, 0);
        Assert.Contains(remarks, remark => remark.StartsWith("There are no tabs: a tip land leaves", StringComparison.Ordinal));
    }

    private static Toothing Made(string kind, int teeth, double module) => kind switch
    {
        "ring" => RingGear.Create(new RingData(teeth + 30, module, TestRacks.A, (teeth + 40) * module)),
        "rack" => RackBar.Create(new RackBarData(module, TestRacks.A, 12 * Math.PI * module, 4 * module)),
        _ => ExternalGear.Create(new GearData(teeth, module, TestRacks.A, 0.1)),
    };

    private static ImmutableArray<Circle> Holes(Toothing teeth) => teeth switch
    {
        RingGear ring => [new Circle(new Point((ring.RootRadius + ring.RimRadius) / 2, 0), 0.4 * ring.Module)],
        RackBar rack => [new Circle(new Point(rack.Module, -2.5 * rack.Module), 0.5 * rack.Module)],
        _ => [new Circle(default, 2 * teeth.Module)],
    };

    private static double Height(Point point, Toothing teeth) => teeth switch { RackBar => point.Y, RingGear => -point.Radius, _ => point.Radius };

    private static (double Tip, double Root) Heights(Toothing teeth) => teeth switch
    {
        RackBar rack => (rack.TipHeight, rack.RootHeight),
        RingGear ring => (-ring.TipRadius, -ring.RootRadius),
        _ => (((Gear)teeth).TipRadius, ((Gear)teeth).RootRadius),
    };

    // A rack's flanks are lines that lean.
    private static bool IsFlank(Curve curve, Toothing teeth) => teeth is RackBar rack && curve is Line line
        && Math.Abs(line.From.Y - line.To.Y) > 0.1 * rack.Module && Math.Abs(line.From.X - line.To.X) > 0.01 * rack.Module;

    private static double Nearest(Point point, Curve curve) => Enumerable.Range(0, 201).Min(i => curve.PointAt(curve.Start + ((curve.End - curve.Start) * i / 200)).DistanceTo(point));

    private static Polygon Material(Part part) => Factory.CreatePolygon(Ring(part.Outside), [.. part.Holes.Select(Ring)]);

    private static LinearRing Ring(Outline outline)
    {
        Coordinate[] points = [.. outline.Curves().SelectMany(curve => Fine(curve)).Select(p => new Coordinate(p.X, p.Y))];
        return Factory.CreateLinearRing([.. points, points[0].Copy()]);
    }

    private static IEnumerable<Point> Fine(Curve curve)
    {
        int steps = curve is Arc { IsFullCircle: true } ? 2000 : 60;
        return Enumerable.Range(0, steps).Select(i => curve.PointAt(curve.Start + ((curve.End - curve.Start) * i / steps)));
    }
}
