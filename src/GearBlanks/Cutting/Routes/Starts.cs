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
        double longest = loop.Pieces.Max(each => each.Piece.Length);
        (PathPiece piece, double start) = loop.Pieces.First(each => each.Piece.Length > longest - Rounding);
        return start + (piece.Length / 2);
    }

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
