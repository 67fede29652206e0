using GearBlanks.Curves;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Buffer;
using NetTopologySuite.Operation.Overlay;
using NetTopologySuite.Operation.OverlayNG;
using Point = GearBlanks.Curves.Point;

namespace GearBlanks.Tests.Teeth;

/// <summary>Outlines as polygons of NetTopologySuite, to compare with what it makes of others.</summary>
internal static class Polygons
{
    private const int Chords = 120;

    private static readonly GeometryFactory Factory = new();

    public static Polygon Of(Outline outline) => Of([.. outline.Curves()
        .SelectMany(curve => Enumerable.Range(0, Chords).Select(i => curve.PointAt(curve.Start + ((curve.End - curve.Start) * i / Chords))))]);

    public static Polygon Of(IReadOnlyList<Point> points) =>
        Factory.CreatePolygon([.. points.Append(points[0]).Select(p => new Coordinate(p.X, p.Y))]);

    public static Polygon Disc(double radius) => Of([.. Enumerable.Range(0, 20_000).Select(i => Point.Polar(radius, Math.PI * i / 10_000))]);

    public static Geometry Union(Geometry one, Geometry other) => OverlayNGRobust.Overlay(one, other, SpatialFunction.Union);

    /// <summary>Shrunk and grown again: outside corners get a round, inside corners stay.</summary>
    public static Geometry RoundedOutside(Geometry shape, double radius) => Grown(Grown(shape, -radius), radius);

    /// <summary>Grown and shrunk again: inside corners get a round, outside corners stay.</summary>
    public static Geometry RoundedInside(Geometry shape, double radius) => Grown(Grown(shape, radius), -radius);

    /// <summary>Mean distance between two boundaries, mm: the area in which the shapes differ over the length of one's boundary.</summary>
    public static double Apart(Geometry one, Geometry other) =>
        OverlayNGRobust.Overlay(one, other, SpatialFunction.SymDifference).Area / one.Length;

    private static Geometry Grown(Geometry shape, double by) => shape.Buffer(
        by, new BufferParameters(Chords, EndCapStyle.Round, JoinStyle.Round, 5) { SimplifyFactor = 1e-6 });
}
