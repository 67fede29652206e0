using GearBlanks.Curves;

namespace GearBlanks.Files.Rolls;

/// <summary>A part of a picture that cuts off what lies outside it.</summary>
/// <param name="Left">Its left edge, mm.</param>
/// <param name="Bottom">Its lower edge, mm.</param>
/// <param name="Right">Its right edge, mm.</param>
/// <param name="Top">Its upper edge, mm.</param>
internal readonly record struct ViewBox(double Left, double Bottom, double Right, double Top)
{
    /// <summary>Its edges.</summary>
    public ArcPath Frame => new([new(new Point(Left, Bottom), 0), new(new Point(Right, Bottom), 0), new(new Point(Right, Top), 0), new(new Point(Left, Top), 0)], true);

    /// <summary>The part of a polygon within the box, edge by edge (I. E. Sutherland and G. W. Hodgman, Reentrant polygon clipping, 1974; from memory).</summary>
    public List<Point> Covered(IEnumerable<Point> polygon)
    {
        ViewBox box = this;
        List<Point> part = [.. polygon];
        foreach (Func<Point, double> within in (Func<Point, double>[])[p => p.X - box.Left, p => box.Right - p.X, p => p.Y - box.Bottom, p => box.Top - p.Y])
        {
            var kept = new List<Point>();
            for (int i = 0; i < part.Count; i++)
            {
                (Point from, Point to) = (part[i], part[(i + 1) % part.Count]);
                (double one, double other) = (within(from), within(to));
                if (one >= 0)
                {
                    kept.Add(from);
                }

                if (one * other < 0)
                {
                    kept.Add(from + ((to - from) * (one / (one - other))));
                }
            }

            part = kept;
        }

        return part;
    }

    /// <summary>The parts of a chain of lines within the box, cut at its edges.</summary>
    public IEnumerable<List<Point>> Inside(Point[] chain)
    {
        List<Point> run = [];
        for (int i = 1; i < chain.Length; i++)
        {
            if (Clip(chain[i - 1], chain[i]) is not var (from, to))
            {
                continue;
            }

            if (run.Count > 0 && run[^1].DistanceTo(from) > 1e-9)
            {
                yield return run;
                run = [];
            }

            run = run.Count == 0 ? [from] : run;
            if (to.DistanceTo(run[^1]) > 1e-4)
            {
                run.Add(to);
            }
        }

        if (run.Count > 1)
        {
            yield return run;
        }
    }

    private (Point From, Point To)? Clip(Point from, Point to)
    {
        (double low, double high) = (0, 1);
        Vector along = to - from;
        Narrow(-along.X, from.X - Left, ref low, ref high);
        Narrow(along.X, Right - from.X, ref low, ref high);
        Narrow(-along.Y, from.Y - Bottom, ref low, ref high);
        Narrow(along.Y, Top - from.Y, ref low, ref high);
        return low < high ? (from + (along * low), from + (along * high)) : null;
    }

    private static void Narrow(double outward, double room, ref double low, ref double high)
    {
        if (outward > 0)
        {
            high = Math.Min(high, room / outward);
        }
        else if (outward < 0)
        {
            low = Math.Max(low, room / outward);
        }
        else if (room < 0)
        {
            high = low;
        }
    }
}
