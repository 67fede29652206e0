using GearBlanks.Curves;

namespace GearBlanks.Files.Drawings;

/// <summary>Teeth that stand along a line, upward, as a contour has them that is turned so.</summary>
/// <param name="Vertices">Vertices of the closed contour, cut where its height stops growing or falling.</param>
/// <param name="Tips">Numbers of the vertices on the tips, from right to left.</param>
/// <param name="Roots">Numbers of the vertices in the gaps between them.</param>
internal sealed record ToothRow(PathVertex[] Vertices, int[] Tips, int[] Roots)
{
    // mm: lower bumps are no teeth.
    private const double LeastDepth = 0.02;

    // Of the depth: tips and roots of a row are level within this, even of a bad one.
    private const double Level = 0.2;

    // Of the step from tip to tip; a tooth more or less is told where the row is rolled.
    private const double Even = 0.75;

    // mm: a land that was written with rounded numbers is level within this, and its first end stands for it.
    private const double Flat = 1e-5;

    private const int Fewest = 4;

    /// <summary>A point of a piece, by its share of the way along it.</summary>
    public static Point At(PathPiece piece, double share)
    {
        Curve curve = piece.AsCurve();
        return share switch { 0 => piece.From, 1 => piece.To, _ => curve.PointAt(curve.Start + ((curve.End - curve.Start) * share)) };
    }

    /// <summary>Height of the tips, mm: the middle one of all.</summary>
    public double Tip => Middle(Tips);

    /// <summary>Height of the roots, mm.</summary>
    public double Root => Middle(Roots);

    /// <summary>How much the row rises along X: the middle one of many, so that a single bad tooth does not turn it.</summary>
    public double Slope
    {
        get
        {
            int half = Tips.Length / 2;
            double[] slopes = [.. Enumerable.Range(0, Tips.Length - half).Select(i => Vertices[Tips[i]].Point - Vertices[Tips[i + half]].Point).Select(way => way.Y / way.X).Order()];
            return slopes[slopes.Length / 2];
        }
    }

    /// <summary>The longest row of teeth of a closed contour, counter-clockwise; null where none holds most of its rises.</summary>
    public static ToothRow? Of(ArcPath contour)
    {
        PathVertex[] vertices = [.. Enumerable.Range(0, contour.Vertices.Length).SelectMany(i => Monotone(PathPiece.At(contour, i)))];
        int[] turns = Turns(vertices);
        int tips = turns.Length / 2;
        if (tips < Fewest)
        {
            return null;
        }

        (int From, int Count) best = (0, 0);
        for (int from = 0; from < tips; from++)
        {
            int count = CountFrom(vertices, turns, from, tips);
            best = count > best.Count ? (from, count) : best;
            from += Math.Max(0, count - 1);
        }

        int[] TurnsOf(int first, int count) => [.. Enumerable.Range(0, count).Select(i => turns[(first + (2 * i)) % turns.Length])];
        return best.Count >= Fewest && 2 * best.Count >= tips
            ? new ToothRow(vertices, TurnsOf(2 * best.From, best.Count), TurnsOf((2 * best.From) + 1, best.Count - 1))
            : null;
    }

    private static int CountFrom(PathVertex[] vertices, int[] turns, int from, int tips)
    {
        Point At(int turn) => vertices[turns[turn % turns.Length]].Point;
        (Point tip, Point root) = (At(2 * from), At((2 * from) + 1));
        (double depth, double step) = (tip.Y - root.Y, tip.X - At((2 * from) + 2).X);
        int count = 1;
        while (count < tips && step > 0
            && Math.Abs(At(2 * (from + count)).Y - tip.Y) <= Level * depth && Math.Abs(At((2 * (from + count)) - 1).Y - root.Y) <= Level * depth
            && Math.Abs(At(2 * (from + count - 1)).X - At(2 * (from + count)).X - step) <= Even * step)
        {
            count++;
        }

        return count;
    }

    // Highest and lowest vertices by turns, the first one a highest.
    private static int[] Turns(PathVertex[] vertices)
    {
        int count = vertices.Length;
        int start = Array.IndexOf(vertices, vertices.MaxBy(vertex => vertex.Point.Y));
        double Y(int i) => vertices[(start + i) % count].Point.Y;
        List<int> turns = [0];
        (bool isFalling, int best) = (true, 0);
        for (int i = 1; i < count; i++)
        {
            bool isBeyond = isFalling ? Y(i) < Y(best) - Flat : Y(i) > Y(best) + Flat;
            if (isBeyond)
            {
                best = i;
            }
            else if (Math.Abs(Y(i) - Y(best)) > LeastDepth)
            {
                turns.Add(best);
                (isFalling, best) = (!isFalling, i);
            }
        }

        // What is lowest last leads up to the start again.
        if (isFalling)
        {
            turns.Add(best);
        }

        return [.. turns.Select(turn => (turn + start) % count)];
    }

    private static IEnumerable<PathVertex> Monotone(PathPiece piece)
    {
        double sweep = 4 * Math.Atan(piece.Bulge);
        double last = 0;
        if (!piece.IsLine)
        {
            double start = (piece.From - piece.Centre).Angle;
            double[] turns = [.. new[] { Math.PI / 2, 3 * Math.PI / 2 }.Select(angle => Share(angle - start, sweep)).Where(share => share is > 1e-9 and < 1 - 1e-9).Order()];
            foreach (double share in turns)
            {
                yield return new PathVertex(At(piece, last), Math.Tan((share - last) * sweep / 4));
                last = share;
            }
        }

        yield return new PathVertex(At(piece, last), piece.IsLine ? 0 : Math.Tan((1 - last) * sweep / 4));
    }

    // Which share of a sweep comes to an angle after its start; above 1 where it does not.
    private static double Share(double angle, double sweep)
    {
        double turned = angle * Math.Sign(sweep);
        return (turned - (2 * Math.PI * Math.Floor(turned / (2 * Math.PI)))) / Math.Abs(sweep);
    }

    private double Middle(int[] vertices)
    {
        double[] heights = [.. vertices.Select(vertex => Vertices[vertex].Point.Y).Order()];
        return heights[heights.Length / 2];
    }
}
