using GearBlanks.Curves;
using GearBlanks.Teeth;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Distance;

namespace GearBlanks.Benchmarks;

/// <summary>How far the polygon strays from the exact curves, so that speeds are compared at equal accuracy.</summary>
internal static class PolygonAccuracy
{
    // Each exact curve as so many chords: their own sag is a thousandth of what is measured.
    private const int Chords = 400;

    public static string Told()
    {
        Geometry whole = PolygonGear.Whole();
        Geometry repeated = PolygonGear.OneGapRepeated();
        return FormattableString.Invariant(
            $"Polygon of {PolygonGear.Teeth} teeth, {PolygonGear.Positions} positions of the rack a gap, {whole.NumPoints} vertices: at most {Deviation(whole):0.00000} mm from the exact outline; one gap repeated {Deviation(repeated):0.00000} mm.");
    }

    private static double Deviation(Geometry polygon)
    {
        LineString exact = ExactRing(polygon.Factory);
        return Math.Max(Farthest(exact, polygon.Boundary), Farthest(polygon.Boundary, exact));
    }

    // The vertices of one ring, and between them where a chord sags most, against the other ring.
    private static double Farthest(Geometry ring, Geometry other)
    {
        var distance = new IndexedFacetDistance(other);
        Coordinate[] points = ring.Coordinates;
        return points.Concat(points.Zip(points.Skip(1), (a, b) => new Coordinate((a.X + b.X) / 2, (a.Y + b.Y) / 2)))
            .Max(p => distance.Distance(ring.Factory.CreatePoint(p)));
    }

    private static LineString ExactRing(GeometryFactory factory)
    {
        ExternalGear gear = PolygonGear.Exact;
        var half = Motion.Turn(Math.PI / gear.Teeth);
        List<Coordinate> ring = [.. gear.Outline().Curves()
            .SelectMany(curve => Enumerable.Range(0, Chords).Select(i => curve.PointAt(curve.Start + ((curve.End - curve.Start) * i / Chords))))
            .Select(half.Apply)
            .Select(p => new Coordinate(p.X, p.Y))];
        return factory.CreateLineString([.. ring, ring[0]]);
    }
}
