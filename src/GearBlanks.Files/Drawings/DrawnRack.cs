using System.Globalization;
using GearBlanks.Curves;

namespace GearBlanks.Files.Drawings;

/// <summary>Finds a rack in a drawing, wherever it lies and however it is turned: the contour whose teeth stand along a straight line.</summary>
internal static class DrawnRack
{
    // rad: lines that differ by less have one direction.
    private const double OneDirection = 1e-3;

    // Of the directions that a contour has: its back, lands and flanks are among them.
    private const int MostDirections = 8;

    // Of the depth: an end that misses the root line by less ends on it.
    private const double Level = 0.005;

    // Halvings until a height does not change any more.
    private const int Halvings = 60;

    /// <summary>The rack; null where the contour is none.</summary>
    public static DrawnGear? Of(DrawnContour outside, int holes, DrawingChoice choice, IReadOnlyCollection<string> told)
    {
        (ToothRow? row, double turn) = (null, 0);
        foreach (double direction in Directions(outside).SelectMany(angle => new[] { angle, angle + Math.PI }))
        {
            if (ToothRow.Of(outside.Path.Moved(Motion.Turn(-direction))) is { } found && found.Tips.Length > (row?.Tips.Length ?? 0))
            {
                (row, turn) = (found, direction);
            }
        }

        if (row is null)
        {
            return null;
        }

        turn += Math.Atan(row.Slope);
        row = ToothRow.Of(outside.Path.Moved(Motion.Turn(-turn))) ?? row;
        return Made(row, turn, holes, choice, told);
    }

    private static IEnumerable<double> Directions(DrawnContour contour) => contour.Pieces.OfType<Line>()
        .Select(line => line.To - line.From)
        .GroupBy(way => (long)Math.Floor(Folded(way) / OneDirection))
        .OrderByDescending(group => group.Sum(way => way.Length)).ThenBy(group => group.Key)
        .Take(MostDirections)
        .Select(group => Folded(group.MaxBy(way => way.Length)));

    private static double Folded(Vector way) => way.Angle < 0 ? way.Angle + Math.PI : way.Angle;

    private static DrawnGear Made(ToothRow row, double turn, int holes, DrawingChoice choice, IReadOnlyCollection<string> told)
    {
        List<PathVertex> teeth = Teeth(row);
        double middle = (Middle(row, row.Tips[0]) + Middle(row, row.Tips[^1])) / 2;
        double reference = choice.Centre is { } given ? Motion.Turn(-turn).Apply(given).Y : Reference(row);
        Motion place = Motion.Shift(new Vector(-middle, -reference));
        double depth = row.Tip - row.Root;
        PathVertex[] back = [new(new Point(teeth[^1].Point.X, row.Root - depth), 0), new(new Point(teeth[0].Point.X, row.Root - depth), 0)];
        Point centre = choice.Centre ?? Motion.Turn(turn).Apply(new Point(middle, reference));
        return new DrawnGear(new ArcPath([.. teeth, .. back], true).Moved(place), false, centre, holes, [.. told, InWords(row, reference, centre, choice)])
        {
            Rack = (Math.Max(row.Root, Math.Max(teeth[0].Point.Y, teeth[^1].Point.Y)) - reference, row.Tip - reference),
        };
    }

    private static string InWords(ToothRow row, double reference, Point centre, DrawingChoice choice)
    {
        double pitch = Pitch(row);
        string line = choice.Centre is null
            ? string.Create(CultureInfo.InvariantCulture, $"the line on which teeth and gaps are equally wide, through {DrawnPart.InWords(centre)}; {choice.CentreOption} X Y gives a point of another one")
            : $"the line along the teeth through {DrawnPart.InWords(centre)}";
        return string.Create(
            CultureInfo.InvariantCulture,
            $"Taken for a rack: {row.Tips.Length} teeth, pitch {pitch:0.####} mm, module {pitch / Math.PI:0.####} mm. The distance counts from {line}. It lies {row.Tip - reference:0.####} mm below the tips.");
    }

    private static double Pitch(ToothRow row) => (Middle(row, row.Tips[0]) - Middle(row, row.Tips[^1])) / (row.Tips.Length - 1);

    private static double Middle(ToothRow row, int tip)
    {
        double height = (row.Tip + row.Root) / 2;
        return (Across(row, tip, -1, height) + Across(row, tip, 1, height)) / 2;
    }

    // From root to root over all the teeth, right to left.
    private static List<PathVertex> Teeth(ToothRow row)
    {
        (int first, PathVertex? before) = End(row, row.Tips[0], -1) ?? (row.Roots[0], null);
        (int last, PathVertex? after) = End(row, row.Tips[^1], 1) ?? (row.Roots[^1], null);
        List<PathVertex> teeth = [];
        int count = row.Vertices.Length;
        for (int i = first; ; i = (i + 1) % count)
        {
            teeth.Add(row.Vertices[i]);
            if (i == last)
            {
                break;
            }
        }

        if (before is { } cut)
        {
            teeth.Insert(0, cut);
        }

        // A cut piece is as long as what is left of it says.
        teeth[^1] = teeth[^1] with { Bulge = after?.Bulge ?? 0 };
        if (after is { } end)
        {
            teeth.Add(end with { Bulge = 0 });
        }

        return teeth;
    }

    // From a tip outward down to the root line: the vertex that lies on it, or the last one above it and where the piece beyond passes it.
    private static (int Vertex, PathVertex? Cut)? End(ToothRow row, int tip, int way)
    {
        int count = row.Vertices.Length;
        double near = Level * (row.Tip - row.Root);
        int at = tip;
        for (int steps = 0; steps < count; steps++)
        {
            int next = (at + way + count) % count;
            double height = row.Vertices[next].Point.Y - row.Root;
            if (height < -near)
            {
                bool isOn = Math.Abs(row.Vertices[at].Point.Y - row.Root) <= near;
                return isOn ? (at, null) : (at, CutAt(row, at, next, way));
            }

            if (Math.Abs(row.Vertices[at].Point.Y - row.Root) <= near && height > near)
            {
                return (at, null);
            }

            at = next;
        }

        return null;
    }

    // Backward the vertex before the tip begins with the rest of the piece; forward the bulge belongs to the last vertex above.
    private static PathVertex CutAt(ToothRow row, int above, int below, int way)
    {
        (PathPiece piece, double share) = Crossing(row, above, below, way, row.Root);
        return new PathVertex(ToothRow.At(piece, share), Math.Tan((way > 0 ? share : 1 - share) * Math.Atan(piece.Bulge)));
    }

    // ISO 53: the line on which the teeth are as wide as half the pitch; where there is none, halfway from tip to root.
    private static double Reference(ToothRow row)
    {
        double half = Pitch(row) / 2;
        (double low, double high) = (row.Root, row.Tip);
        double Width(double height) => Enumerable.Range(1, row.Tips.Length - 2).Average(i => Across(row, row.Tips[i], -1, height) - Across(row, row.Tips[i], 1, height));
        double margin = Level * (high - low);
        if (!(Width(low + margin) > half && Width(high - margin) < half))
        {
            return (low + high) / 2;
        }

        for (int i = 0; i < Halvings; i++)
        {
            double height = (low + high) / 2;
            (low, high) = Width(height) > half ? (height, high) : (low, height);
        }

        return (low + high) / 2;
    }

    // Where a side of a tooth passes a height on its way down from the tip.
    private static double Across(ToothRow row, int tip, int way, double height)
    {
        int count = row.Vertices.Length;
        for (int at = tip; ; at = (at + way + count) % count)
        {
            int next = (at + way + count) % count;
            if (row.Vertices[next].Point.Y <= height)
            {
                (PathPiece piece, double share) = Crossing(row, at, next, way, height);
                return ToothRow.At(piece, share).X;
            }
        }
    }

    // The piece between two neighbours, the first one above a height, and its share up to there.
    private static (PathPiece Piece, double Share) Crossing(ToothRow row, int above, int below, int way, double height)
    {
        PathVertex start = row.Vertices[way > 0 ? above : below];
        var piece = new PathPiece(start.Point, row.Vertices[way > 0 ? below : above].Point, start.Bulge);
        (double high, double low) = way > 0 ? (0.0, 1.0) : (1.0, 0.0);
        for (int i = 0; i < Halvings; i++)
        {
            double share = (high + low) / 2;
            (high, low) = ToothRow.At(piece, share).Y > height ? (share, low) : (high, share);
        }

        return (piece, high);
    }
}
