using System.Collections.Immutable;
using GearBlanks.Curves;
using GearBlanks.Findings;
using GearBlanks.Teeth;

namespace GearBlanks.Cutting.Routes;

/// <summary>
/// Makes of a drawing's contours what a machine follows: where each starts, how the tool comes to it and leaves it, and where it stops for tabs. The order of the
/// layers stays: what lies inside a part comes before its outside.
/// </summary>
public static class Router
{
    // mm: common practice, no source. A lead keeps so far from everything but the place where it meets its contour, and a narrower tab holds nothing.
    private const double Margin = 0.05;
    private const double LeastTab = 0.2;

    // Of a land: a tab as wide as its land would leave nothing to cut.
    private const double Shrink = 0.02;

    // A lead is halved so often until it is clear; a shorter one is left out.
    private const int Halvings = 4;

    /// <summary>The drawing with its contours routed, and what there was no room for, a sentence an item.</summary>
    /// <param name="drawing">The drawing of one part, its contours closed.</param>
    /// <param name="teeth">The part's teeth.</param>
    /// <param name="plan">What is asked for.</param>
    /// <param name="centre">Diameter of the beam or tool whose centre runs on the contours, mm; 0 where they are the part itself.</param>
    /// <param name="tool">Diameter of the beam or tool where the shop moves it off the contours, mm; 0 where that is not known.</param>
    public static (Drawing Drawing, ImmutableArray<string> Remarks) Of(Drawing drawing, Toothing teeth, RoutePlan plan, double centre, double tool)
    {
        if (plan == RoutePlan.None)
        {
            return (drawing, []);
        }

        var remarks = new List<string>();
        Curve[] all = [.. drawing.Layers.Where(IsCut).SelectMany(Contours).SelectMany(Pieces).Select(piece => piece.AsCurve())];
        var task = new RouteTask(teeth, plan, centre, Margin + (centre > 0 ? 0 : tool / 2), all, remarks);
        return (drawing with { Layers = [.. drawing.Layers.Select(layer => IsCut(layer) ? Routed(layer, task) : layer)] }, [.. remarks.Distinct()]);
    }

    private static bool IsCut(DrawingLayer layer) => layer.Operation is Operation.CutOutside or Operation.CutHoles;

    private static IEnumerable<ArcPath> Contours(DrawingLayer layer) => layer.Paths.Concat(layer.Circles.Select(AsPath));

    private static IEnumerable<PathPiece> Pieces(ArcPath path) => Enumerable.Range(0, PathPiece.CountIn(path)).Select(i => PathPiece.At(path, i));

    // The teeth are the first path of the layer that they are cut on; a disc has none.
    private static DrawingLayer Routed(DrawingLayer layer, RouteTask task)
    {
        bool hasTeeth = layer.Paths.Length > 0 && (task.Teeth is RingGear) == (layer.Operation == Operation.CutHoles);
        bool isOutside = layer.Operation == Operation.CutOutside;
        if (task.Plan.Lead is null && !(isOutside && task.Plan.Tabs > 0))
        {
            return hasTeeth ? layer with { Paths = layer.Paths.SetItem(0, Route(layer.Paths[0], task, hasTeeth: true, isOutside)[0]) } : layer;
        }

        return layer with
        {
            Paths = [.. Contours(layer).SelectMany((path, i) => Route(path, task, hasTeeth && i == 0, isOutside))],
            Circles = [],
            IsRouted = true,
        };
    }

    private static ImmutableArray<ArcPath> Route(ArcPath path, RouteTask task, bool hasTeeth, bool isOutside)
    {
        var loop = new Loop(path);
        Lands? lands = hasTeeth ? new Lands(path, task.Teeth, task.Centre / 2) : null;
        (double From, double To)[] tabs = isOutside && task.Plan.Tabs > 0 ? [.. Tabs(loop, lands, task)] : [];
        if (tabs.Length > 0)
        {
            return [.. tabs.Select((tab, i) => WithLeads(loop.Between(tab.To, i + 1 < tabs.Length ? tabs[i + 1].From : tabs[0].From + loop.Length), task, isOutside, besideTab: true))];
        }

        double start = lands is null ? 0 : StartOf(loop, lands, task);
        ArcPath open = loop.Between(start, start + loop.Length);
        return task.Plan.Lead is null
            ? [start == 0 ? path : new ArcPath(open.Vertices.RemoveAt(open.Vertices.Length - 1), true)]
            : [WithLeads(open, task, isOutside, besideTab: false)];
    }

    private static double StartOf(Loop loop, Lands lands, RouteTask task)
    {
        if (task.Plan.Start == StartPlace.Anywhere && task.Plan.Lead is null)
        {
            return 0;
        }

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

    // Evenly round the rim, or over the tip lands: as wide as asked for, else as wide as the land.
    private static IEnumerable<(double From, double To)> Tabs(Loop loop, Lands? lands, RouteTask task)
    {
        RoutePlan plan = task.Plan;
        List<Stretch>? tips = lands?.Tips;
        int count = Math.Min(plan.Tabs, tips?.Count ?? plan.Tabs);
        (double Start, double Length)[] places = [.. Enumerable.Range(0, count).Select(i => tips is null
            ? (i * loop.Length / count, loop.Length / count)
            : loop.Of(tips[i * tips.Count / count]))];
        double room = places.Min(place => place.Length) - task.Centre;
        double width = Math.Min(plan.TabWidth, room * (1 - Shrink));
        if (width < LeastTab)
        {
            task.Remarks.Add($"There are no tabs: {(lands is null ? "the rim" : "a tip land")} leaves {Words.Mm(Math.Max(0, room))} for one, and less than {Words.Mm(LeastTab)} holds nothing.");
            return [];
        }

        if (width < plan.TabWidth)
        {
            task.Remarks.Add($"The tabs are {Words.Mm(Math.Floor(width * 1000) / 1000)} wide: the {(lands is null ? "rim" : "tip lands")} leave no more.");
        }

        if (places.Length < plan.Tabs)
        {
            task.Remarks.Add($"There are {places.Length} tabs: one a tooth.");
        }

        double half = (width + task.Centre) / 2;
        return places.Select(place => (place.Start + (place.Length / 2) - half, place.Start + (place.Length / 2) + half));
    }

    private static ArcPath WithLeads(ArcPath open, RouteTask task, bool isOutside, bool besideTab)
    {
        if (task.Plan.Lead is not { } form)
        {
            return open;
        }

        string where = isOutside ? "to the outside" : "in a hole";
        PathPiece first = PathPiece.At(open, 0);
        PathPiece last = PathPiece.At(open, open.Vertices.Length - 2);
        (Vector leaving, Vector arriving) = (first.AsCurve().TangentAt(first.AsCurve().Start).Unit, last.AsCurve().TangentAt(last.AsCurve().End).Unit);
        PathPiece? way = Clear(first.From, leaving, Scrap(leaving));
        PathPiece? back = Clear(last.To, -arriving, Scrap(arriving));
        ImmutableArray<PathVertex> vertices = open.Vertices;
        vertices = back is { } wayOut ? vertices.SetItem(vertices.Length - 1, new PathVertex(wayOut.To, -wayOut.Bulge)).Add(new PathVertex(wayOut.From, 0)) : vertices;
        vertices = way is { } wayIn ? vertices.Insert(0, new PathVertex(wayIn.From, wayIn.Bulge)) : vertices;
        return new ArcPath(vertices, false);

        Vector Scrap(Vector travel) => isOutside ? travel.TurnedRight : travel.TurnedLeft;

        PathPiece? Clear(Point at, Vector travel, Vector scrap)
        {
            for (int i = 0; i <= Halvings; i++)
            {
                PathPiece lead = Lead.To(at, travel, scrap, form, task.Plan.LeadLength / (1 << i), besideTab);
                if (Lead.IsClear(lead, scrap, task.Contours, task.Margin))
                {
                    if (i > 0)
                    {
                        task.Remarks.Add($"A lead {where} is shortened to {Words.Mm(task.Plan.LeadLength / (1 << i))}: there is no room for {Words.Mm(task.Plan.LeadLength)}.");
                    }

                    return lead;
                }
            }

            task.Remarks.Add($"A lead {where} is left out: there is no room for it.");
            return null;
        }
    }

    private static ArcPath AsPath(Circle circle) => new(
        [.. Enumerable.Range(0, 4).Select(i => new PathVertex(circle.Centre + (Vector.AtAngle(i * Math.PI / 2) * circle.Radius), PathPiece.QuarterBulge))], true);

    private sealed record RouteTask(Toothing Teeth, RoutePlan Plan, double Centre, double Margin, IReadOnlyCollection<Curve> Contours, List<string> Remarks);
}
