using System.Collections.Immutable;
using GearBlanks.Curves;
using GearBlanks.Findings;

namespace GearBlanks.Cutting.Routes;

/// <summary>Gives an open contour the leads that there is room for.</summary>
internal static class Leads
{
    // mm: common practice, no source. A lead is halved until it is clear; a shorter one is of no use.
    private const double Least = 0.1;

    /// <summary>The contour with its way in before it and its way out behind.</summary>
    /// <param name="open">The contour, open; its ends meet but for a tab.</param>
    /// <param name="loop">The whole contour.</param>
    /// <param name="task">What is asked for.</param>
    /// <param name="isOutside">True where the scrap is on the right.</param>
    /// <param name="besideTab">True where it begins and ends at tabs.</param>
    public static ArcPath With(ArcPath open, Loop loop, RouteTask task, bool isOutside, bool besideTab)
    {
        Curve first = PathPiece.At(open, 0).AsCurve();
        Curve last = PathPiece.At(open, open.Vertices.Length - 2).AsCurve();
        (Vector leaving, Vector arriving) = (first.TangentAt(first.Start).Unit, last.TangentAt(last.End).Unit);
        (Point begin, Point end) = (open.Vertices[0].Point, open.Vertices[^1].Point);
        (Join into, Join outOf) = besideTab
            ? (Join.BesideTab(begin, leaving, isOutside), Join.BesideTab(end, arriving, isOutside).Reversed)
            : (Join.Of(begin, arriving, leaving, isOutside), Join.Of(end, arriving, leaving, isOutside).Reversed);
        ImmutableArray<PathVertex> vertices = open.Vertices;
        vertices = Fitted(outOf, loop, task, isOutside) is { } wayOut ? vertices.SetItem(vertices.Length - 1, new PathVertex(wayOut.To, -wayOut.Bulge)).Add(new PathVertex(wayOut.From, 0)) : vertices;
        vertices = Fitted(into, loop, task, isOutside) is { } wayIn ? vertices.Insert(0, new PathVertex(wayIn.From, wayIn.Bulge)) : vertices;
        return new ArcPath(vertices, false);
    }

    // As long as asked for, else half as long and so on.
    private static PathPiece? Fitted(Join join, Loop loop, RouteTask task, bool isOutside)
    {
        string where = isOutside ? "to the outside" : "in a hole";
        (LeadForm form, double asked) = (task.Plan.Lead!.Value, task.Plan.LeadLength);
        string room = $"come closer than {Words.Mm(task.Margin)} to {(task.Centre > 0 ? "the tool's path round the part" : "the part")} again";
        double length = asked;
        for (; length >= Math.Min(asked, Least); length /= 2)
        {
            if (Lead.To(join, form, length) is not { } lead)
            {
                task.Remarks.Add($"A lead {where} is left out: the contour starts in a corner, where an arc cannot touch it. Start on a tip, or ask for a straight lead.");
                return null;
            }

            if (loop.Surrounds(lead.From) != isOutside && Lead.IsClear(lead, join, task.Contours, task.Margin))
            {
                task.Leads.Add(length);
                if (length < asked)
                {
                    task.Remarks.Add($"A lead {where} is shortened to {Words.Mm(length)}: a longer one, such as {Words.Mm(length * 2)}, would {room}.");
                }

                return lead;
            }
        }

        task.Remarks.Add($"A lead {where} is left out: even one of {Words.Mm(length * 2)} would {room}.");
        return null;
    }
}
