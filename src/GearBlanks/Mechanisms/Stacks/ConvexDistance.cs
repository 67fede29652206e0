using System.Collections.Immutable;
using GearBlanks.Curves;

namespace GearBlanks.Mechanisms.Stacks;

/// <summary>Distance between convex polygons, of which a segment has two corners and a point one.</summary>
internal static class ConvexDistance
{
    /// <summary>The distance, mm; negative where they overlap: how far the one must move to part them.</summary>
    public static double Between(ImmutableArray<Point> one, ImmutableArray<Point> other)
    {
        if (one.Length == 1 && other.Length == 1)
        {
            return one[0].DistanceTo(other[0]);
        }

        double depth = double.PositiveInfinity;
        foreach (Vector normal in Normals(one).Concat(Normals(other)))
        {
            if (Gap(one, other, normal) > 0 || Gap(one, other, normal.TurnedLeft) > 0)
            {
                return Math.Min(NearestCorner(one, other), NearestCorner(other, one));
            }

            depth = Math.Min(depth, -Gap(one, other, normal));
        }

        return -depth;
    }

    private static IEnumerable<Vector> Normals(ImmutableArray<Point> polygon) =>
        Edges(polygon).Where(edge => edge.From != edge.To).Select(edge => (edge.To - edge.From).Unit.TurnedRight);

    private static IEnumerable<(Point From, Point To)> Edges(ImmutableArray<Point> polygon) =>
        Enumerable.Range(0, polygon.Length < 3 ? polygon.Length - 1 : polygon.Length).Select(i => (polygon[i], polygon[(i + 1) % polygon.Length]));

    // The gap between the two shadows on a direction, whichever lies first.
    private static double Gap(ImmutableArray<Point> one, ImmutableArray<Point> other, Vector direction)
    {
        (double oneFrom, double oneTo) = Shadow(one, direction);
        (double otherFrom, double otherTo) = Shadow(other, direction);
        return Math.Max(otherFrom - oneTo, oneFrom - otherTo);
    }

    private static (double From, double To) Shadow(ImmutableArray<Point> polygon, Vector direction)
    {
        (double from, double to) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach (Point corner in polygon)
        {
            double along = (corner - default(Point)).Dot(direction);
            (from, to) = (Math.Min(from, along), Math.Max(to, along));
        }

        return (from, to);
    }

    private static double NearestCorner(ImmutableArray<Point> corners, ImmutableArray<Point> polygon) => polygon.Length == 1
        ? corners.Min(corner => corner.DistanceTo(polygon[0]))
        : corners.Min(corner => Edges(polygon).Min(edge => ToSegment(corner, edge.From, edge.To)));

    private static double ToSegment(Point point, Point from, Point to)
    {
        Vector along = to - from;
        double length = along.Dot(along);
        return length == 0 ? point.DistanceTo(from) : point.DistanceTo(from + (along * Math.Clamp((point - from).Dot(along) / length, 0, 1)));
    }
}
