using System.Collections.Immutable;
using GearBlanks.Curves;
using GearBlanks.Teeth;

namespace GearBlanks.Cutting.Routes;

/// <summary>
/// Makes of a drawing's contours what a machine follows: where each starts, how the tool comes to it and leaves it, and where it stops for tabs. The order of the
/// layers stays: what lies inside a part comes before its outside.
/// </summary>
public static class Router
{
    // mm: common practice, no source. A lead keeps so far from everything but the place where it meets its contour.
    private const double Margin = 0.05;

    /// <summary>The drawing with its contours routed, what there was no room for, a sentence an item, and what became of the plan in words.</summary>
    /// <param name="drawing">The drawing of one part, its contours closed.</param>
    /// <param name="teeth">The part's teeth.</param>
    /// <param name="plan">What is asked for.</param>
    /// <param name="centre">Diameter of the beam or tool whose centre runs on the contours, mm; 0 where they are the part itself.</param>
    /// <param name="tool">Diameter of the beam or tool where the shop moves it off the contours, mm; 0 where that is not known.</param>
    public static (Drawing Drawing, ImmutableArray<string> Remarks, string Words) Of(Drawing drawing, Toothing teeth, RoutePlan plan, double centre, double tool)
    {
        if (plan == RoutePlan.None)
        {
            return (drawing, [], "");
        }

        Curve[] all = [.. drawing.Layers.Where(IsCut).SelectMany(Contours).SelectMany(Pieces).Select(piece => piece.AsCurve())];
        var task = new RouteTask(teeth, plan, centre, Margin + (centre > 0 ? 0 : tool / 2), all) { AtTabs = centre > 0 ? centre : tool };
        Drawing routed = drawing with { Layers = [.. drawing.Layers.Select(layer => IsCut(layer) ? Routed(layer, task) : layer)] };
        return (routed, [.. task.Remarks.Distinct()], task.Words);
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
        List<Tab> tabs = isOutside && task.Plan.Tabs > 0 ? Tabs.Of(loop, lands, task) : [];
        if (tabs.Count > 0)
        {
            return [.. tabs.Select((tab, i) => WithLeads(loop.Between(tab.To, i + 1 < tabs.Count ? tabs[i + 1].From : tabs[0].From + loop.Length), loop, task, isOutside, besideTab: true))];
        }

        bool isLed = task.Plan.Lead is not null;
        double start = !isLed && (lands is null || task.Plan.Start == StartPlace.Anywhere) ? 0
            : lands is null ? Starts.OnLongest(loop)
            : Starts.OnTeeth(loop, lands, task);
        ArcPath open = loop.Between(start, start + loop.Length);
        return isLed ? [WithLeads(open, loop, task, isOutside, besideTab: false)]
            : start == 0 ? [path]
            : [new ArcPath(open.Vertices.RemoveAt(open.Vertices.Length - 1), true)];
    }

    private static ArcPath WithLeads(ArcPath open, Loop loop, RouteTask task, bool isOutside, bool besideTab) =>
        task.Plan.Lead is null ? open : Leads.With(open, loop, task, isOutside, besideTab);

    private static ArcPath AsPath(Circle circle) => new(
        [.. Enumerable.Range(0, 4).Select(i => new PathVertex(circle.Centre + (Vector.AtAngle(i * Math.PI / 2) * circle.Radius), PathPiece.QuarterBulge))], true);
}
