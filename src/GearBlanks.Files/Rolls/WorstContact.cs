using System.Globalization;
using GearBlanks.Curves;
using GearBlanks.Files.Svg.Overview;
using GearBlanks.Rolling;

namespace GearBlanks.Files.Rolls;

/// <summary>The worst contact of a roll, magnified, with a bar for its scale.</summary>
internal static class WorstContact
{
    private const double Letter = 2.4;

    // Light enough that both show where they overlap.
    private const double Shade = 0.3;

    private static readonly Ink Text = new(Look.Dark, 0.24);
    private static readonly Ink First = new("#1f5f8b", 0.25);
    private static readonly Ink Second = new("#c0561f", 0.25);

    /// <summary>Draws it in a square whose lower left corner and side are given, mm.</summary>
    public static IEnumerable<Shape> Draw(RollReport report, Point corner, double side)
    {
        ContactView view = report.Worst;
        double scale = side / (2 * view.Size);
        var box = new ViewBox(corner.X, corner.Y, corner.X + side, corner.Y + side);
        Point At(Point point) => new(corner.X + (side / 2) + ((point.X - view.Place.X) * scale), corner.Y + (side / 2) + ((point.Y - view.Place.Y) * scale));
        foreach ((IEnumerable<Point> contour, RollKind kind, Ink ink) in ((IEnumerable<Point>, RollKind, Ink)[])[(view.First.Select(At), report.Request.First.Kind, First), (view.Second.Select(At), report.Request.Second.Kind, Second)])
        {
            yield return Material(contour, kind, box, ink);
            yield return new Shape([.. box.Inside([.. contour]).Select(ArcPath.Strokes)], ink);
        }

        yield return new Shape([box.Frame], new Ink(Look.Dark, 0.15));
        yield return Cross(new Point(corner.X + (side / 2), corner.Y + (side / 2)));
        double bar = Bar(view.Size);
        var start = new Point(box.Right + 8, box.Bottom + 4);
        yield return new Shape([ArcPath.Strokes([start + new Vector(0, 1), start + new Vector(0, -1)]), ArcPath.Strokes([start, start + new Vector(bar * scale, 0)]), ArcPath.Strokes([start + new Vector(bar * scale, 1), start + new Vector(bar * scale, -1)])], new Ink(Look.Dark, 0.3));
        double y = box.Top - 3;
        foreach ((string words, Ink ink) in Captions(report, bar, scale))
        {
            foreach (string line in Lettered.Wrap(words, Letter, 70))
            {
                yield return Lettered.At(line, Letter, new Point(box.Right + 8, y), ink);
                y -= 4.5;
            }
        }
    }

    private static IEnumerable<(string Words, Ink Ink)> Captions(RollReport report, double bar, double scale)
    {
        yield return (string.Create(CultureInfo.InvariantCulture, $"{(report.Interference is null ? "contact farthest from the mean" : "deepest interference")}, {scale:0.#} times its size; bar {bar:0.####} mm"), Text);
        yield return ($"material of {report.Request.First.Name}", new Ink(First.Stroke, Text.Width));
        yield return ($"material of {report.Request.Second.Name}", new Ink(Second.Stroke, Text.Width));
        yield return (string.Create(CultureInfo.InvariantCulture, $"{report.Request.First.Name} turned by {report.Worst.Turn * 180 / Math.PI:0.###} degrees"), Text);
        if (report.Interference is { } found)
        {
            yield return (string.Create(CultureInfo.InvariantCulture, $"{found.Depth:0.####} mm deep, at radius {found.FirstRadius:0.###} mm of {report.Request.First.Name}"), Text);
        }
    }

    // A ring's lies outside its contour.
    private static Shape Material(IEnumerable<Point> contour, RollKind kind, ViewBox box, Ink ink)
    {
        List<Point> covered = box.Covered(contour);
        ArcPath[] within = covered.Count > 2 ? [new ArcPath([.. covered.Select(point => new PathVertex(point, 0))], true)] : [];
        return new Shape(kind == RollKind.Ring ? [box.Frame, .. within] : [.. within], new Ink(null, 0, ink.Stroke, Shade));
    }

    private static Shape Cross(Point middle) => new(
        [ArcPath.Strokes([middle + new Vector(-2.5, 0), middle + new Vector(2.5, 0)]), ArcPath.Strokes([middle + new Vector(0, -2.5), middle + new Vector(0, 2.5)])],
        new Ink("#5a6670", 0.12));

    // 1, 2 or 5 times a power of ten, about a third of the picture.
    private static double Bar(double size)
    {
        double power = Math.Pow(10, Math.Floor(Math.Log10(0.7 * size)));
        return power * ((0.7 * size / power) switch { >= 5 => 5, >= 2 => 2, _ => 1.0 });
    }
}
