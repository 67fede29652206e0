using System.Collections.Immutable;
using GearBlanks.Curves;

namespace GearBlanks.Blanks.Lettering;

/// <summary>Strokes, each with a circle that holds it, so that most distances need not be worked out piece by piece.</summary>
internal sealed class StrokeBlock(ImmutableArray<ArcPath> strokes)
{
    private Circle[]? _bounds;

    /// <summary>The strokes.</summary>
    internal ImmutableArray<ArcPath> Strokes => strokes;

    /// <summary>True where no stroke comes nearer to a point than a distance, mm.</summary>
    internal bool IsClearOf(Point point, double distance)
    {
        Circle[] bounds = _bounds ??= [.. strokes.Select(Bound)];
        for (int i = 0; i < bounds.Length; i++)
        {
            bool isNear = point.DistanceTo(bounds[i].Centre) < distance + bounds[i].Radius;
            if (isNear && Distance(strokes[i], point) < distance)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>True where every stroke stays within a radius about a centre, mm.</summary>
    internal bool IsWithin(Point centre, double radius)
    {
        // A chord is farthest from the centre at one of its ends.
        foreach (ArcPath stroke in strokes)
        {
            foreach (PathVertex vertex in stroke.Vertices)
            {
                if (vertex.Point.DistanceTo(centre) > radius)
                {
                    return false;
                }
            }
        }

        return true;
    }

    private static Circle Bound(ArcPath stroke)
    {
        Point first = stroke.Vertices[0].Point;
        return new Circle(first, stroke.Vertices.Max(vertex => vertex.Point.DistanceTo(first)));
    }

    private static double Distance(ArcPath stroke, Point from)
    {
        double least = double.PositiveInfinity;
        for (int i = 1; i < stroke.Vertices.Length; i++)
        {
            least = Math.Min(least, Distance(stroke.Vertices[i - 1].Point, stroke.Vertices[i].Point, from));
        }

        return least;
    }

    private static double Distance(Point start, Point end, Point from)
    {
        Vector along = end - start;
        double nearest = Math.Clamp((from - start).Dot(along) / along.Dot(along), 0, 1);
        return from.DistanceTo(start + (along * nearest));
    }
}
