using GearBlanks.Curves;

namespace GearBlanks.Files.Drawings;

/// <summary>A closed contour of a drawing, counter-clockwise.</summary>
internal sealed class DrawnContour
{
    // mm: vertices that lie nearer are one.
    private const double Nothing = 1e-7;

    // mm: contours that nowhere lie farther apart are one, drawn twice.
    private const double Same = 1e-3;

    private const int TwinSamples = 16;

    // Of a circle's radius.
    private const double Round = 1e-3;

    private readonly Contour _measured;

    public DrawnContour(Stroke stroke)
    {
        (Line, Layer) = (stroke.Line, stroke.Layer);
        var path = new ArcPath([.. Distinct(stroke.Vertices)], true);
        double area = AreaOf(path);
        Path = area < 0 ? Reversed(path) : path;
        Area = Math.Abs(area);
        Pieces = [.. Enumerable.Range(0, Path.Vertices.Length).Select(i => PathPiece.At(Path, i).AsCurve())];
        _measured = Contour.Of(Path);
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

    public bool Contains(Point point) => _measured.Contains(point);

    /// <summary>True where another one lies upon it all along.</summary>
    public bool IsTwinOf(DrawnContour other) =>
        Math.Abs(Area - other.Area) <= Same * (Length + other.Length) && Centroid.DistanceTo(other.Centroid) <= Same
        && Enumerable.Range(0, TwinSamples).All(i => other.IsOn(Pieces[(int)((long)i * Pieces.Length / TwinSamples)].StartPoint));

    private double Length => Pieces.Sum(piece => piece.Length);

    private bool IsOn(Point point) => _measured.NearestTo(point) <= Same;

    // Of vertices that are one, the first says where it is and the last how it goes on.
    private static List<PathVertex> Distinct(List<PathVertex> vertices)
    {
        List<PathVertex> kept = [vertices[0]];
        foreach (PathVertex vertex in vertices.Skip(1))
        {
            if (vertex.Point.DistanceTo(kept[^1].Point) > Nothing)
            {
                kept.Add(vertex);
            }
            else
            {
                kept[^1] = kept[^1] with { Bulge = vertex.Bulge };
            }
        }

        if (kept.Count > 2 && kept[^1].Point.DistanceTo(kept[0].Point) <= Nothing)
        {
            kept.RemoveAt(kept.Count - 1);
        }

        return kept;
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
