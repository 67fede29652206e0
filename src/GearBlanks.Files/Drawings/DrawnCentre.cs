using GearBlanks.Curves;

namespace GearBlanks.Files.Drawings;

/// <summary>Finds the axis of a part from the hole in its middle.</summary>
internal static class DrawnCentre
{
    // Of a turn: arcs of so much of one circle are what a shaft touches.
    private const double LeastOfBore = Math.PI;

    /// <summary>The centre of the hole in which the contour's middle lies, and what was taken for it; null where there is none.</summary>
    public static (Point Centre, string? Remark)? Of(DrawnContour outside, IEnumerable<DrawnContour> holes)
    {
        if (holes.Where(hole => hole.Contains(outside.Centroid)).MinBy(hole => hole.Area) is not { } bore)
        {
            return null;
        }

        if (bore.AsCircle is { } circle)
        {
            return (circle.Centre, null);
        }

        Arc? widest = bore.Pieces.OfType<Arc>().Where(arc => arc.Sweep > 0).GroupBy(arc => (Math.Round(arc.Centre.X, 3), Math.Round(arc.Centre.Y, 3)))
            .Where(group => group.Sum(arc => arc.Sweep) >= LeastOfBore).SelectMany(group => group).MaxBy(arc => arc.Sweep);
        return widest is not null
            ? (widest.Centre, null)
            : (bore.Centroid, "The bore is no circle: its centroid is taken for the axis.");
    }
}
