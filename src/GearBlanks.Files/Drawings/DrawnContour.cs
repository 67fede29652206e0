using GearBlanks.Curves;

namespace GearBlanks.Files.Drawings;

/// <summary>A closed contour of a drawing, counter-clockwise.</summary>
internal sealed class DrawnContour
{
    // mm: vertices that lie nearer are one.
    private const double Nothing = 1e-7;

    // Of a circle's radius.
    private const double Round = 1e-3;

    public DrawnContour(Stroke stroke)
    {
        (Line, Layer) = (stroke.Line, stroke.Layer);
        var path = new ArcPath([.. Distinct(stroke.Vertices)], true);
        double area = AreaOf(path);
        Path = area < 0 ? Reversed(path) : path;
        Area = Math.Abs(area);
        Pieces = [.. Enumerable.Range(0, Path.Vertices.Length).Select(i => PathPiece.At(Path, i).AsCurve())];
        Centroid = CentroidOf(Path);
        AsCircle = Circle();
    }

    public int Line { get; }

    public string Layer { get; }

    public ArcPath Path { get; }

    /// <summary>Area within, mm2.</summary>
    public double Area { get; }

    public Point Centroid { get; }

    public Curve[] Pieces { get; }

    /// <summary>The circle that it is; null where it is none.</summary>
    public Circle? AsCircle { get; }

    public bool Contains(Point point)
    {
        double turned = 0;
        foreach (Curve piece in Pieces)
        {
            turned += Subtended(piece, point);
        }

        return Math.Abs(turned) > Math.PI;
    }

    private static double Subtended(Curve curve, Point point)
    {
        double angle = (curve.StartPoint - point).AngleTo(curve.EndPoint - point);
        if (curve is Arc arc && point.DistanceTo(arc.Centre) < arc.Radius)
        {
            // Between the chord and the arc the angle goes the long way round.
            double side = (curve.EndPoint - curve.StartPoint).Cross(point - curve.StartPoint) * Math.Sign(arc.Sweep);
            angle += side < 0 && Math.Abs(arc.Sweep) <= Math.PI ? 2 * Math.PI * Math.Sign(arc.Sweep) : 0;
        }

        return angle;
    }

    private static IEnumerable<PathVertex> Distinct(List<PathVertex> vertices)
    {
        for (int i = 0; i < vertices.Count; i++)
        {
            if (vertices[i].Point.DistanceTo(vertices[(i + 1) % vertices.Count].Point) > Nothing)
            {
                yield return vertices[i];
            }
        }
    }

    private static ArcPath Reversed(ArcPath path)
    {
        int count = path.Vertices.Length;
        var turned = new PathVertex[count];
        for (int i = 0; i < count; i++)
        {
            turned[i] = new PathVertex(path.Vertices[count - 1 - i].Point, -path.Vertices[(2 * count - 2 - i) % count].Bulge);
        }

        return new ArcPath([.. turned], true);
    }

    // Of the polygon of vertices, and of the segments between its sides and the arcs.
    private static double AreaOf(ArcPath path)
    {
        double area = 0;
        for (int i = 0; i < path.Vertices.Length; i++)
        {
            PathPiece piece = PathPiece.At(path, i);
            area += (piece.From - default(Point)).Cross(piece.To - default(Point)) / 2;
            if (!piece.IsLine)
            {
                double sweep = 4 * Math.Atan(piece.Bulge);
                area += piece.Radius * piece.Radius * (sweep - Math.Sin(sweep)) / 2;
            }
        }

        return area;
    }

    private static Point CentroidOf(ArcPath path)
    {
        (double area, double x, double y) = (0, 0, 0);
        Point origin = path.Vertices[0].Point;
        for (int i = 0; i < path.Vertices.Length; i++)
        {
            PathPiece piece = PathPiece.At(path, i);
            double part = (piece.From - origin).Cross(piece.To - origin) / 2;
            area += part;
            x += part * (piece.From.X + piece.To.X + origin.X) / 3;
            y += part * (piece.From.Y + piece.To.Y + origin.Y) / 3;
        }

        return area == 0 ? origin : new Point(x / area, y / area);
    }

    // All arcs of one circle; or so many chords that they can stand for nothing else.
    private Circle? Circle()
    {
        const int FewestChords = 12;
        if (Pieces.All(piece => piece is Arc) && Pieces[0] is Arc { Centre: var centre, Radius: var radius })
        {
            return Pieces.All(piece => piece is Arc arc && arc.Centre.DistanceTo(centre) < Round * radius && Math.Abs(arc.Radius - radius) < Round * radius)
                ? new Circle(centre, radius)
                : null;
        }

        double far = Path.Vertices.Average(vertex => vertex.Point.DistanceTo(Centroid));
        return Path.Vertices.Length >= FewestChords && Path.Vertices.All(vertex => Math.Abs(vertex.Point.DistanceTo(Centroid) - far) < Round * far)
            ? new Circle(Centroid, far)
            : null;
    }
}
