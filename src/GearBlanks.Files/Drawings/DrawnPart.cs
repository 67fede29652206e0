using System.Globalization;
using GearBlanks.Curves;

namespace GearBlanks.Files.Drawings;

/// <summary>Finds the one part among the strokes of a drawing.</summary>
internal static class DrawnPart
{
    private const int MostPieces = 400_000;

    // Of the largest area: a construction circle among lettering is hardly larger than the contour itself.
    private const double Comparable = 0.5;

    /// <exception cref="DrawingException">There is none, there are several, or a contour is open or crosses.</exception>
    public static DrawnGear Of(IReadOnlyCollection<Stroke> strokes, DrawingChoice choice, IEnumerable<string> remarks)
    {
        var told = new List<string>(remarks);
        var nothing = new LeftOut("they have no length");
        var specks = new LeftOut("they are shorter than ends may gape");
        Chains chains = Chains.Of(Sized(DrawnLayers.Chosen(strokes, choice.Layers), nothing));
        chains.Open.RemoveAll(stroke => IsSpeck(stroke, specks));
        told.AddRange(nothing.Remarks().Concat(specks.Remarks()));
        DrawnContour[] all = [.. Single([.. chains.Closed.Select(stroke => new DrawnContour(stroke)).Where(contour => contour.Area > 0)], told)];
        HashSet<string> lettered = [.. chains.Open.Select(stroke => stroke.Layer)];
        DrawnContour? outside = Outside(all, lettered);
        RequireClosed(chains, outside);
        if (outside is null)
        {
            throw new DrawingException(0, null, "There is no closed contour in this drawing", string.Join(" ", ["the contour of one gear, closed", .. told.Select(remark => $"({remark})")]));
        }

        DrawnContour[] contours = [.. all.Where(contour => !lettered.Contains(contour.Layer))];
        DrawnContour[] holes = [.. contours.Where(contour => contour != outside)];
        RequireFew(contours);
        RequireApart(contours);
        RequireOnePart(outside, holes);
        if (lettered.Count > 0)
        {
            told.Add($"Layers with open lines were left out as lettering or marks: {string.Join(", ", lettered.Order(StringComparer.Ordinal))}.");
        }

        return Toothed(outside, holes, choice, told);
    }

    private static IEnumerable<Stroke> Sized(IEnumerable<Stroke> strokes, LeftOut nothing)
    {
        foreach (Stroke stroke in strokes)
        {
            if (stroke.IsNothing)
            {
                nothing.Add(stroke.Kind, stroke.Line, stroke.Layer);
            }
            else
            {
                yield return stroke;
            }
        }
    }

    private static bool IsSpeck(Stroke stroke, LeftOut specks)
    {
        bool isSpeck = stroke.Reach <= Chains.Joint;
        if (isSpeck)
        {
            specks.Add(stroke.Kind, stroke.Line, stroke.Layer);
        }

        return isSpeck;
    }

    // Each contour once; what is drawn again is told.
    private static List<DrawnContour> Single(DrawnContour[] contours, List<string> told)
    {
        List<DrawnContour> kept = [];
        foreach (DrawnContour contour in contours)
        {
            if (kept.Find(contour.IsTwinOf) is { } twin)
            {
                told.Add($"Drawn twice, read once: the contour in line {InWords(contour)} lies upon the one in line {InWords(twin)}. A machine may cut it twice.");
            }
            else
            {
                kept.Add(contour);
            }
        }

        return kept;
    }

    private static DrawnContour? Outside(DrawnContour[] all, HashSet<string> lettered)
    {
        DrawnContour? largest = all.MaxBy(contour => contour.Area);
        DrawnContour? clean = all.Where(contour => !lettered.Contains(contour.Layer)).MaxBy(contour => contour.Area);
        return clean is not null && clean.Area >= Comparable * largest!.Area ? clean : largest;
    }

    private static void RequireApart(DrawnContour[] contours)
    {
        if (ContourCrossings.First(contours) is not var (at, one, other))
        {
            return;
        }

        (one, other) = one.Line <= other.Line ? (one, other) : (other, one);
        string[] layers = [.. contours.Select(contour => contour.Layer).Where(layer => layer.Length > 0).Distinct().Order(StringComparer.Ordinal)];
        throw new DrawingException(
            other.Line, null,
            one == other ? $"Contours cross at {InWords(at)}: the one in line {InWords(one)} crosses itself" : $"Contours cross at {InWords(at)}: the one in line {InWords(one)} and the one in line {InWords(other)}",
            "contours that neither cross nor touch, none drawn twice" + (layers.Length > 1 ? $"; --layer NAME reads the layer of the contour alone, layers: {DrawnLayers.InWords(layers)}" : "; remove circles and lines that only help to draw"));
    }

    private static string InWords(DrawnContour contour) => string.Create(
        CultureInfo.InvariantCulture, $"{contour.Line}{(contour.Layer.Length > 0 ? $", layer {contour.Layer}" : "")}");

    // A round outside without teeth is a ring's rim: the largest hole has them.
    private static DrawnGear Toothed(DrawnContour outside, DrawnContour[] holes, DrawingChoice choice, List<string> told)
    {
        if (outside.AsCircle is { } rim && holes.MaxBy(hole => hole.Area) is { } inside)
        {
            Point middle = choice.Centre ?? rim.Centre;
            return new DrawnGear(Centred(inside, middle), true, middle, holes.Length - 1, [.. told]);
        }

        if (DrawnRack.Of(outside, holes.Length, choice, told) is { } rack)
        {
            return rack;
        }

        if (choice.Centre is { } given)
        {
            return new DrawnGear(Centred(outside, given), false, given, holes.Length, [.. told]);
        }

        (Point found, string? remark) = DrawnCentre.Of(outside, holes) ?? throw new DrawingException(
            outside.Line, null, "The part has no bore in its middle, so its axis is not known",
            $"{choice.CentreOption} X Y, the axis in the drawing's own coordinates as mm; the middle of the contour is {InWords(outside.Centroid)}");
        return new DrawnGear(Centred(outside, found), false, found, holes.Length, [.. told, .. remark is null ? Array.Empty<string>() : [remark]]);
    }

    private static ArcPath Centred(DrawnContour contour, Point centre) => contour.Contains(centre)
        ? contour.Path.Moved(Motion.Shift(default(Point) - centre))
        : throw new DrawingException(contour.Line, null, $"The axis at {InWords(centre)} lies outside the contour", $"an axis within it; its middle is {InWords(contour.Centroid)}");

    // Lettering and marks are open lines on layers of their own; the layer of the contour has none, and none runs around it.
    private static void RequireClosed(Chains chains, DrawnContour? outside)
    {
        Stroke? gap = outside is null
            ? chains.Open.MaxBy(stroke => stroke.Vertices.Count)
            : chains.Open.Find(stroke => stroke.Layer == outside.Layer || RunsAround(stroke, outside.Centroid));
        if (gap is null)
        {
            return;
        }

        string? layer = gap.Layer.Length == 0 ? null : gap.Layer;
        throw chains.Branches.Find(branch => branch.Layer == gap.Layer) is { Layer: not null } branch
            ? new DrawingException(
                branch.Line, layer, $"At {InWords(branch.At)} mm three lines meet: it cannot be told which is the contour", "contours whose pieces meet two by two, none drawn twice")
            : new DrawingException(
                gap.Line, layer, $"This contour is open: it begins at {InWords(gap.Start)} and ends at {InWords(gap.End)}",
                "closed contours whose ends meet within 0.005 mm; lettering and marks on a layer of their own");
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

    public static string InWords(Point point) => string.Create(CultureInfo.InvariantCulture, $"({Math.Round(point.X, 3) + 0.0:0.###}, {Math.Round(point.Y, 3) + 0.0:0.###})");
}
