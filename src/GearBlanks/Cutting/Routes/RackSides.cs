using GearBlanks.Curves;

namespace GearBlanks.Cutting.Routes;

/// <summary>Where tabs hold a rack: on tip lands, along its back and at its ends, evenly round the rectangle about it.</summary>
internal static class RackSides
{
    // mm: an end or the back lies on a side of the rectangle but for rounding.
    private const double Rounding = 1e-6;

    /// <summary>The places, from the middle of the back on.</summary>
    /// <param name="loop">The rack's contour.</param>
    /// <param name="tips">Its tip lands.</param>
    /// <param name="plan">How many tabs, and how wide.</param>
    /// <param name="tool">Diameter of the tool, mm; 0 where it is not known.</param>
    /// <param name="least">The least width of a tab, mm.</param>
    public static IEnumerable<TabPlace> Places(Loop loop, IEnumerable<Stretch> tips, RoutePlan plan, double tool, double least)
    {
        Extent box = loop.Pieces.Aggregate(Extent.Nothing, (extent, each) => extent.With(Around(each.Piece.From)));
        TabPlace[] lands = [.. tips.Select(tip => Tabs.InMiddle(loop, tip)).Where(Holds)];
        (PathPiece Piece, double Start)[] sides = [.. loop.Pieces.Where(each => IsSide(each.Piece, box) && Holds(Middle(each)))];
        return Enumerable.Range(0, plan.Tabs)
            .Select(i => OnBox(box, (double)i / plan.Tabs))
            .SelectMany(target => sides
                .Select(side => Beside(side, target, plan.TabWidth + tool))
                .Concat(lands)
                .OrderBy(place => loop.PointAt(place.Middle).DistanceTo(target))
                .Take(1))
            .Distinct();

        bool Holds(TabPlace place) => Tab.In(loop, place, plan.TabWidth, tool).Width >= least;
    }

    private static TabPlace Middle((PathPiece Piece, double Start) side) => new(side.Start + (side.Piece.Length / 2), side.Piece.Length / 2);

    // As near to a point as the tab still stays on its side.
    private static TabPlace Beside((PathPiece Piece, double Start) side, Point target, double wanted)
    {
        double length = side.Piece.Length;
        double room = Math.Min(wanted, length) / 2;
        double at = (target - side.Piece.From).Dot((side.Piece.To - side.Piece.From).Unit);
        double middle = Math.Clamp(at, room, length - room);
        return new TabPlace(side.Start + middle, Math.Min(middle, length - middle));
    }

    private static bool IsSide(PathPiece piece, Extent box) => piece.IsLine
        && (Both(point => point.Y - box.Bottom, piece) || Both(point => point.X - box.Left, piece) || Both(point => point.X - box.Right, piece));

    private static bool Both(Func<Point, double> off, PathPiece piece) => Math.Abs(off(piece.From)) < Rounding && Math.Abs(off(piece.To)) < Rounding;

    // A share of the way round, counter-clockwise from the middle of the back.
    private static Point OnBox(Extent box, double share)
    {
        double way = (share * 2 * (box.Width + box.Height)) + (box.Width / 2);
        double onEnd = way - box.Width;
        double onTips = onEnd - box.Height;
        double onOther = onTips - box.Width;
        double onBack = onOther - box.Height;
        return onBack > 0 ? new Point(box.Left + onBack, box.Bottom)
            : onOther > 0 ? new Point(box.Left, box.Top - onOther)
            : onTips > 0 ? new Point(box.Right - onTips, box.Top)
            : onEnd > 0 ? new Point(box.Right, box.Bottom + onEnd)
            : new Point(box.Left + way, box.Bottom);
    }

    private static Extent Around(Point point) => new(point.X, point.Y, point.X, point.Y);
}
