using System.Globalization;
using GearBlanks.Curves;

namespace GearBlanks.Files.Drawings;

/// <summary>Finds the one part among the strokes of a drawing.</summary>
internal static class DrawnPart
{
    private const int MostPieces = 400_000;

    /// <exception cref="DrawingException">There is none, there are several, or a contour is open or crosses.</exception>
    public static DrawnGear Of(List<Stroke> strokes, Point? centre, string centreOption, IEnumerable<string> remarks)
    {
        (List<Stroke> closed, List<Stroke> open) = Chains.Of(strokes);
        DrawnContour[] all = [.. closed.Where(stroke => stroke.Vertices.Count > 1).Select(stroke => new DrawnContour(stroke)).Where(contour => contour.Area > 0)];
        HashSet<string> lettered = [.. open.Select(stroke => stroke.Layer)];
        DrawnContour? outside = all.MaxBy(contour => contour.Area);
        RequireClosed(open, outside);
        if (outside is null)
        {
            throw new DrawingException(0, null, "There is no closed contour in this drawing", "the contour of one gear, closed");
        }

        DrawnContour[] contours = [.. all.Where(contour => !lettered.Contains(contour.Layer))];
        DrawnContour[] holes = [.. contours.Where(contour => contour != outside)];
        RequireFew(contours);
        if (ContourCrossings.First(contours) is var (at, line))
        {
            throw new DrawingException(line, null, $"Contours cross at {InWords(at)}", "contours that neither cross nor touch, none drawn twice");
        }

        RequireOnePart(outside, holes);

        string[] told = [.. remarks, .. lettered.Count > 0 ? [$"Layers with open lines were left out as lettering or marks: {string.Join(", ", lettered.Order(StringComparer.Ordinal))}."] : Array.Empty<string>()];
        return Toothed(outside, holes, centre, centreOption, told);
    }

    // A round outside without teeth is a ring's rim: the largest hole has them.
    private static DrawnGear Toothed(DrawnContour outside, DrawnContour[] holes, Point? centre, string centreOption, string[] told)
    {
        if (outside.AsCircle is { } rim && holes.MaxBy(hole => hole.Area) is { } inside)
        {
            Point middle = centre ?? rim.Centre;
            return new DrawnGear(Centred(inside, middle), true, middle, holes.Length - 1, [.. told]);
        }

        if (centre is { } given)
        {
            return new DrawnGear(Centred(outside, given), false, given, holes.Length, [.. told]);
        }

        (Point found, string? remark) = DrawnCentre.Of(outside, holes) ?? throw new DrawingException(
            outside.Line, null, "The part has no bore in its middle, so its axis is not known",
            $"{centreOption} X Y, the axis in the drawing's own coordinates as mm; the middle of the contour is {InWords(outside.Centroid)}");
        return new DrawnGear(Centred(outside, found), false, found, holes.Length, [.. told, .. remark is null ? Array.Empty<string>() : [remark]]);
    }

    private static ArcPath Centred(DrawnContour contour, Point centre) => contour.Contains(centre)
        ? contour.Path.Moved(Motion.Shift(default(Point) - centre))
        : throw new DrawingException(contour.Line, null, $"The axis at {InWords(centre)} lies outside the contour", $"an axis within it; its middle is {InWords(contour.Centroid)}");

    // Lettering and marks are open lines on layers of their own; the layer of the contour has none, and none runs around it.
    private static void RequireClosed(List<Stroke> open, DrawnContour? outside)
    {
        Stroke? gap = outside is null
            ? open.MaxBy(stroke => stroke.Vertices.Count)
            : open.Find(stroke => stroke.Layer == outside.Layer || RunsAround(stroke, outside.Centroid));
        if (gap is not null)
        {
            throw new DrawingException(
                gap.Line, gap.Layer.Length == 0 ? null : gap.Layer, $"This contour is open: it begins at {InWords(gap.Start)} and ends at {InWords(gap.End)}",
                "closed contours whose ends meet within 0.005 mm; lettering and marks on a layer of their own");
        }
    }

    private static bool RunsAround(Stroke stroke, Point middle)
    {
        double turned = 0;
        for (int i = 1; i < stroke.Vertices.Count; i++)
        {
            turned += (stroke.Vertices[i - 1].Point - middle).AngleTo(stroke.Vertices[i].Point - middle);
        }

        return Math.Abs(turned) > Math.PI;
    }

    private static void RequireFew(DrawnContour[] contours)
    {
        if (contours.Sum(contour => contour.Pieces.Length) > MostPieces)
        {
            throw new DrawingException(0, null, "This drawing has too many pieces to be a gear's", $"at most {MostPieces}");
        }
    }

    private static void RequireOnePart(DrawnContour outside, DrawnContour[] holes)
    {
        foreach (DrawnContour hole in holes)
        {
            if (!outside.Contains(hole.Pieces[0].StartPoint))
            {
                throw new DrawingException(
                    hole.Line, null, $"There are two parts in this drawing, about {InWords(outside.Centroid)} and {InWords(hole.Centroid)}", "a file for each part");
            }

            if (holes.FirstOrDefault(other => other != hole && other.Area > hole.Area && other.Contains(hole.Pieces[0].StartPoint)) is { } around)
            {
                throw new DrawingException(
                    hole.Line, null, $"There are two parts in this drawing: one at {InWords(hole.Centroid)} lies in a hole about {InWords(around.Centroid)} of the other", "a file for each part");
            }
        }
    }

    private static string InWords(Point point) => string.Create(CultureInfo.InvariantCulture, $"({Math.Round(point.X, 3) + 0.0:0.###}, {Math.Round(point.Y, 3) + 0.0:0.###})");
}
