using GearBlanks.Curves;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Utilities;
using NetTopologySuite.Operation.Buffer;
using NetTopologySuite.Operation.Distance;

namespace GearBlanks.Tests.Cutting;

/// <summary>Outlines as polygons of very many points, and a general-purpose library's buffer of them: knows nothing of parallels.</summary>
internal static class SampledOutline
{
    // mm: how far chords stray from the curves they stand for.
    private const double Sag = 4e-5;

    public static GeometryFactory Factory { get; } = new();

    public static Polygon Polygon(Outline outline) => Closed(outline.Curves().SelectMany(Points));

    public static Polygon Polygon(ArcPath path) => Closed(Enumerable.Range(0, PathPiece.CountIn(path)).SelectMany(i => Points(PathPiece.At(path, i))));

    public static Polygon Disc(Circle circle) => Polygon(Outline.Of(circle));

    /// <summary>The polygon grown (or shrunk, where negative) by a disc of the radius.</summary>
    public static Geometry Grown(Geometry polygon, double radius) => BufferOp.Buffer(
        polygon, radius, new BufferParameters(32, EndCapStyle.Round, JoinStyle.Round, 5) { SimplifyFactor = 1e-6 });

    /// <summary>The polygon grown or shrunk by an ellipse: a disc where X is squeezed.</summary>
    public static Geometry Grown(Geometry polygon, double semiX, double semiY, int sense)
    {
        Geometry squeezed = AffineTransformation.ScaleInstance(semiY / semiX, 1).Transform(polygon);
        return AffineTransformation.ScaleInstance(semiX / semiY, 1).Transform(Grown(squeezed, sense * semiY));
    }

    /// <summary>Greatest distance of either edge's points from the other edge.</summary>
    public static double Apart(Geometry one, Geometry other) => Math.Max(OneWay(one, other), OneWay(other, one));

    public static double OneWay(Geometry from, Geometry to) => Furthest(from.Boundary.Coordinates, to);

    public static double Furthest(IEnumerable<Coordinate> points, Geometry edgeOf)
    {
        var distance = new IndexedFacetDistance(edgeOf.Boundary);
        return points.Max(point => distance.Distance(Factory.CreatePoint(point)));
    }

    private static Polygon Closed(IEnumerable<Point2> points)
    {
        Coordinate[] ring = [.. points.Select(point => new Coordinate(point.X, point.Y))];
        return Factory.CreatePolygon([.. ring, ring[0]]);
    }

    private static IEnumerable<Point2> Points(Curve curve)
    {
        const int Least = 2;
        double turn = 0;
        for (int i = 1; i <= 8; i++)
        {
            double step = (curve.End - curve.Start) / 8;
            turn += Math.Abs(curve.TangentAt(curve.Start + ((i - 1) * step)).AngleTo(curve.TangentAt(curve.Start + (i * step))));
        }

        int count = curve is Line ? 1 : Math.Max(Least, (int)Math.Ceiling(2 * Math.Sqrt(curve.Length * turn / (8 * Sag))));
        return Enumerable.Range(0, count).Select(i => curve.PointAt(curve.Start + ((curve.End - curve.Start) * i / count))).Select(p => new Point2(p.X, p.Y));
    }

    private static IEnumerable<Point2> Points(PathPiece piece)
    {
        if (piece.IsLine)
        {
            return [new Point2(piece.From.X, piece.From.Y)];
        }

        double sweep = 4 * Math.Atan(piece.Bulge);
        GearBlanks.Curves.Point centre = piece.Centre;
        double start = (piece.From - centre).Angle;
        int count = Math.Max(2, (int)Math.Ceiling(Math.Sqrt(piece.Radius * sweep * sweep / (8 * Sag))));
        return Enumerable.Range(0, count).Select(i => new Point2(
            centre.X + (piece.Radius * Math.Cos(start + (sweep * i / count))), centre.Y + (piece.Radius * Math.Sin(start + (sweep * i / count)))));
    }

    private readonly record struct Point2(double X, double Y);
}
