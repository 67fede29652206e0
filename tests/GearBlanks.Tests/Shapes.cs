using GearBlanks.Curves;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Buffer;

namespace GearBlanks.Tests;

/// <summary>Outlines as fine polygons of another library, and what every contour that is cut must be.</summary>
internal static class Shapes
{
    private static readonly GeometryFactory Factory = new();

    /// <summary>An arc of radius r is missed by r (step)^2 / 8, step being its sweep over the pieces.</summary>
    public static Polygon Polygon(Outline outline, int pieces = 400) => Factory.CreatePolygon(Ring(outline, pieces));

    public static LinearRing Ring(Outline outline, int pieces = 400)
    {
        List<Coordinate> corners = [.. outline.Curves().SelectMany(curve => Along(curve, pieces).SkipLast(1))];
        return Factory.CreateLinearRing([.. corners, corners[0]]);
    }

    public static LineString Line(Curve curve, int pieces = 400) => Factory.CreateLineString([.. Along(curve, pieces)]);

    public static LineString Line(ArcPath strokes) => Factory.CreateLineString([.. strokes.Vertices.Select(vertex => new Coordinate(vertex.Point.X, vertex.Point.Y))]);

    public static Geometry Disc(double radius, double x = 0, double y = 0) => Factory.CreatePoint(new Coordinate(x, y)).Buffer(radius, 500);

    /// <summary>Every inner corner rounded by a radius: opened by a disc of that radius.</summary>
    public static Geometry Opened(Geometry shape, double radius)
    {
        // The library simplifies what it widens by a hundredth of the distance unless told otherwise.
        var fine = new BufferParameters(60) { SimplifyFactor = 1e-5 };
        return radius < 1e-6 ? shape : BufferOp.Buffer(BufferOp.Buffer(shape, -radius, fine), radius, fine);
    }

    /// <summary>True where the outline is travelled counter-clockwise.</summary>
    public static bool IsCounterClockwise(Outline outline) => NetTopologySuite.Algorithm.Orientation.IsCCW(Ring(outline).CoordinateSequence);

    /// <summary>The angles by which the travel turns at each joint, rad.</summary>
    public static IEnumerable<double> Kinks(Outline outline)
    {
        Curve[] curves = [.. outline.Curves()];
        for (int i = 0; i < curves.Length; i++)
        {
            Curve next = curves[(i + 1) % curves.Length];
            yield return curves[i].TangentAt(curves[i].End).AngleTo(next.TangentAt(next.Start));
        }
    }

    private static IEnumerable<Coordinate> Along(Curve curve, int pieces)
    {
        int count = curve is GearBlanks.Curves.Line ? 1 : pieces;
        return Enumerable.Range(0, count + 1).Select(i => curve.PointAt(curve.Start + ((curve.End - curve.Start) * i / count)))
            .Select(point => new Coordinate(point.X, point.Y));
    }
}
