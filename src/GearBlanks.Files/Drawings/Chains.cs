using System.Globalization;
using GearBlanks.Curves;

namespace GearBlanks.Files.Drawings;

/// <summary>Puts strokes together end to end until they close.</summary>
internal static class Chains
{
    // mm: ends that lie nearer are meant to be one. Drawings are exact to some micrometres at worst.
    private const double Joint = 0.005;

    /// <summary>Closed chains, and the strokes that stay open.</summary>
    /// <exception cref="DrawingException">More than two ends meet somewhere.</exception>
    public static (List<Stroke> Closed, List<Stroke> Open) Of(IEnumerable<Stroke> strokes)
    {
        List<Stroke> closed = [];
        List<Stroke> open = [];
        foreach (Stroke stroke in strokes.Where(stroke => stroke.Vertices.Count > 1))
        {
            (stroke.IsClosed || Ends(stroke) ? closed : open).Add(stroke);
        }

        foreach (IGrouping<string, Stroke> layer in open.GroupBy(stroke => stroke.Layer))
        {
            Join([.. layer], closed);
        }

        List<Stroke> left = [.. open.Where(stroke => stroke.Vertices.Count > 0)];
        return ([.. closed.Select(Whole)], left);
    }

    private static bool Ends(Stroke stroke) => stroke.Vertices.Count > 2 && stroke.Start.DistanceTo(stroke.End) <= Joint;

    // The last vertex is the first one again: it goes, and where the two differ a little the first one holds.
    private static Stroke Whole(Stroke stroke)
    {
        if (stroke.Vertices.Count > 2 && stroke.Start.DistanceTo(stroke.End) <= Joint)
        {
            stroke.Vertices.RemoveAt(stroke.Vertices.Count - 1);
        }

        return stroke with { IsClosed = true };
    }

    // Used strokes are emptied.
    private static void Join(Stroke[] open, List<Stroke> closed)
    {
        var ends = new Dictionary<(long, long), List<Stroke>>();
        foreach (Stroke stroke in open)
        {
            foreach (Point end in (ReadOnlySpan<Point>)[stroke.Start, stroke.End])
            {
                (ends.TryGetValue(Cell(end), out List<Stroke>? there) ? there : ends[Cell(end)] = []).Add(stroke);
            }
        }

        foreach (Stroke first in open)
        {
            if (first.Vertices.Count > 0 && Follow(first, ends) is { } chain)
            {
                closed.Add(chain);
            }
        }
    }

    private static Stroke? Follow(Stroke first, Dictionary<(long, long), List<Stroke>> ends)
    {
        var used = new List<Stroke> { first };
        var vertices = new List<PathVertex>(first.Vertices);
        while (vertices[0].Point.DistanceTo(vertices[^1].Point) > Joint)
        {
            Point end = vertices[^1].Point;
            List<Stroke> next = [.. Near(end, ends).Where(stroke => !used.Exists(one => ReferenceEquals(one, stroke))).Take(2)];
            if (next.Count > 1)
            {
                throw new DrawingException(
                    next[1].Line, null, string.Create(CultureInfo.InvariantCulture, $"At ({end.X:0.###}, {end.Y:0.###}) mm three lines meet: it cannot be told which is the contour"),
                    "contours whose pieces meet two by two, none drawn twice");
            }

            if (next is not [var found])
            {
                return null;
            }

            used.Add(found);
            bool isForward = found.Start.DistanceTo(end) <= found.End.DistanceTo(end);
            vertices.RemoveAt(vertices.Count - 1);
            vertices.AddRange(isForward ? found.Vertices : Turned(found.Vertices));
        }

        foreach (Stroke stroke in used)
        {
            stroke.Vertices.Clear();
        }

        return first with { Vertices = vertices };
    }

    private static IEnumerable<Stroke> Near(Point end, Dictionary<(long, long), List<Stroke>> ends)
    {
        (long column, long row) = Cell(end);
        var seen = new HashSet<Stroke>(ReferenceEqualityComparer.Instance);
        for (long x = column - 1; x <= column + 1; x++)
        {
            for (long y = row - 1; y <= row + 1; y++)
            {
                foreach (Stroke stroke in ends.TryGetValue((x, y), out List<Stroke>? there) ? there : [])
                {
                    if (stroke.Vertices.Count > 0 && (stroke.Start.DistanceTo(end) <= Joint || stroke.End.DistanceTo(end) <= Joint) && seen.Add(stroke))
                    {
                        yield return stroke;
                    }
                }
            }
        }
    }

    private static List<PathVertex> Turned(List<PathVertex> vertices)
    {
        List<PathVertex> turned = [];
        for (int i = vertices.Count - 1; i >= 0; i--)
        {
            turned.Add(new PathVertex(vertices[i].Point, i > 0 ? -vertices[i - 1].Bulge : 0));
        }

        return turned;
    }

    private static (long, long) Cell(Point point) => ((long)Math.Floor(point.X / Joint), (long)Math.Floor(point.Y / Joint));
}
