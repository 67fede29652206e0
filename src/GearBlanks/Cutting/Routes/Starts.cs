using GearBlanks.Curves;

namespace GearBlanks.Cutting.Routes;

/// <summary>Where closed contours start, as a length along them.</summary>
internal static class Starts
{
    // mm: pieces that differ by less are equally long, so that rounding does not choose between them.
    private const double Rounding = 1e-6;

    /// <summary>Of a contour without teeth: in the middle of its longest line or arc, never in a corner.</summary>
    public static double OnLongest(Loop loop)
    {
        (PathPiece Piece, double Start)[] pieces = [.. loop.Pieces];
        PathPiece At(int i) => pieces[i % pieces.Length].Piece;
        int first = Enumerable.Range(0, pieces.Length).FirstOrDefault(i => !IsOneArc(At(i + pieces.Length - 1), At(i)));
        var sides = new List<(double Start, double Length)>();
        for (int i = 0; i < pieces.Length; i++)
        {
            (PathPiece piece, double start) = pieces[(first + i) % pieces.Length];
            if (i > 0 && IsOneArc(At(first + i - 1), piece))
            {
                sides[^1] = (sides[^1].Start, sides[^1].Length + piece.Length);
            }
            else
            {
                sides.Add((start, piece.Length));
            }
        }

        double longest = sides.Max(side => side.Length);
        (double at, double length) = sides.First(side => side.Length > longest - Rounding);
        return at + (length / 2);
    }

    // Written arcs are cut where they turn far.
    private static bool IsOneArc(PathPiece one, PathPiece next) => !one.IsLine && !next.IsLine && one.Bulge * next.Bulge > 0
        && Math.Abs(one.Radius - next.Radius) < Rounding && one.Centre.DistanceTo(next.Centre) < Rounding;

    /// <summary>Of the teeth: in the middle of a land.</summary>
    public static double OnTeeth(Loop loop, Lands lands, RouteTask task)
    {
        // A pointed tip is no place to start, and a tool may not reach a root at all.
        bool atRoot = task.Plan.Start == StartPlace.Root;
        List<Stretch> places = atRoot ? lands.Roots : lands.Tips;
        if (places.Count == 0 || (!atRoot && places[0].From == places[0].To))
        {
            places = atRoot ? lands.Tips : lands.Roots;
            task.Remarks.Add(atRoot
                ? "The teeth have no root that the tool reaches: the contour starts on a tip."
                : "The teeth have no tip land: the contour starts in a root.");
        }

        (double at, double length) = loop.Of(places[places.Count / 2]);
        return at + (length / 2);
    }
}
