using GearBlanks.Curves;

namespace GearBlanks.Files.Drawings;

/// <summary>Collects a stroke: lines and circles stay what they are, every other curve becomes arcs within a tolerance.</summary>
internal sealed class StrokeBuilder(Affine placement)
{
    /// <summary>Greatest distance of an arc from the curve that it stands for, mm.</summary>
    public const double Tolerance = 0.0002;

    /// <summary>What <see cref="IsWithinReach"/> allows.</summary>
    public const string ReachInWords = "coordinates and radii up to 10000 km";

    // mm: beyond, doubles tell no thousandths apart.
    private const double FarthestOut = 1e10;

    private const int DeepestSplit = 14;

    private const int FirstSplit = 4;

    private readonly bool _keepsCircles = placement.KeepsCircles;

    /// <summary>The vertices so far; the last one's piece is still to come.</summary>
    public List<PathVertex> Vertices { get; } = [];

    public void Begin(Point point) => Vertices.Add(new PathVertex(placement.Apply(point), 0));

    public void LineTo(Point point) => Append(placement.Apply(point), 0);

    /// <summary>A circular arc from the last point, by the tangent of a quarter of the angle swept.</summary>
    public void BulgeTo(Point from, Point to, double bulge)
    {
        if (bulge == 0)
        {
            LineTo(to);
            return;
        }

        var piece = new PathPiece(from, to, bulge);
        Point centre = piece.Centre;
        ArcTo(centre, piece.Radius, (from - centre).Angle, 4 * Math.Atan(bulge), to);
    }

    /// <summary>A circular arc about a centre, from the last point.</summary>
    public void ArcTo(Point centre, double radius, double start, double sweep, Point? end = null)
    {
        int parts = Math.Max(1, (int)Math.Ceiling(Math.Abs(sweep) / (Math.PI / 2) - 1e-9));
        for (int i = 1; i <= parts; i++)
        {
            (double from, double to) = (start + (sweep * (i - 1) / parts), start + (sweep * i / parts));
            if (_keepsCircles)
            {
                double bulge = Math.Tan(sweep / parts / 4);
                Append(placement.Apply(i == parts && end is { } exact ? exact : Point.Polar(radius, to) + (centre - default(Point))), placement.IsMirrored ? -bulge : bulge);
            }
            else
            {
                CurveTo(t => Point.Polar(radius, t) + (centre - default(Point)), from, to);
            }
        }
    }

    /// <summary>Any curve from the last point, smooth between its ends.</summary>
    public void CurveTo(Func<double, Point> curve, double from, double to)
    {
        for (int i = 0; i < FirstSplit; i++)
        {
            (double low, double high) = (from + ((to - from) * i / FirstSplit), from + ((to - from) * (i + 1) / FirstSplit));
            Split(t => placement.Apply(curve(t)), low, high, 0);
        }
    }

    /// <summary>True for a vertex that is not too far out to be computed with.</summary>
    public static bool IsWithinReach(PathVertex vertex) => Math.Abs(vertex.Point.X) <= FarthestOut && Math.Abs(vertex.Point.Y) <= FarthestOut && double.IsFinite(vertex.Bulge);

    private void Split(Func<double, Point> curve, double from, double to, int depth)
    {
        double middle = (from + to) / 2;
        (Point start, Point half, Point end) = (curve(from), curve(middle), curve(to));
        double bulge = Math.Tan((half - start).AngleTo(end - half) / 2);
        if (depth < DeepestSplit && !(IsNear(start, end, bulge, curve((from + middle) / 2)) && IsNear(start, end, bulge, curve((middle + to) / 2))))
        {
            Split(curve, from, middle, depth + 1);
            Split(curve, middle, to, depth + 1);
            return;
        }

        Append(end, double.IsFinite(bulge) ? bulge : 0);
    }

    // Half the tolerance at the quarters leaves the rest for what lies between.
    private static bool IsNear(Point start, Point end, double bulge, Point point)
    {
        var piece = new PathPiece(start, end, bulge);
        Vector chord = end - start;
        double off = Math.Abs(bulge) < 1e-9
            ? Math.Abs(chord.Cross(point - start)) / Math.Max(chord.Length, double.Epsilon)
            : Math.Abs(piece.Centre.DistanceTo(point) - piece.Radius);
        return off <= Tolerance / 2 || chord.Length <= Tolerance / 2;
    }

    private void Append(Point to, double bulge)
    {
        Vertices[^1] = Vertices[^1] with { Bulge = bulge };
        Vertices.Add(new PathVertex(to, 0));
    }
}
