using System.Globalization;
using GearBlanks.Curves;
using GearBlanks.Files.Svg.Overview;
using GearBlanks.Rolling;

namespace GearBlanks.Files.Rolls;

/// <summary>The worst contact of a roll, magnified, with a bar for its scale.</summary>
internal static class WorstContact
{
    private const double Letter = 2.4;

    private static readonly Ink Text = new(Look.Dark, 0.24);
    private static readonly Ink First = new("#1f5f8b", 0.25);
    private static readonly Ink Second = new("#c0561f", 0.25);

    /// <summary>Draws it in a square whose lower left corner and side are given, mm.</summary>
    public static IEnumerable<Shape> Draw(RollReport report, Point corner, double side)
    {
        ContactView view = report.Worst;
        double scale = side / (2 * view.Size);
        var box = new Box(corner.X, corner.Y, corner.X + side, corner.Y + side);
        Point At(Point point) => new(corner.X + (side / 2) + ((point.X - view.Place.X) * scale), corner.Y + (side / 2) + ((point.Y - view.Place.Y) * scale));
        yield return new Shape([.. Inside([.. view.First.Select(At)], box).Select(ArcPath.Strokes)], First);
        yield return new Shape([.. Inside([.. view.Second.Select(At)], box).Select(ArcPath.Strokes)], Second);
        yield return new Shape([new ArcPath([new(new Point(box.Left, box.Bottom), 0), new(new Point(box.Right, box.Bottom), 0), new(new Point(box.Right, box.Top), 0), new(new Point(box.Left, box.Top), 0)], true)], new Ink(Look.Dark, 0.15));
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
        yield return (report.Request.First.Name, new Ink(First.Stroke, Text.Width));
        yield return (report.Request.Second.Name, new Ink(Second.Stroke, Text.Width));
        yield return (string.Create(CultureInfo.InvariantCulture, $"{report.Request.First.Name} turned by {report.Worst.Turn * 180 / Math.PI:0.###} degrees"), Text);
        if (report.Interference is { } found)
        {
            yield return (string.Create(CultureInfo.InvariantCulture, $"{found.Depth:0.####} mm deep, radius {found.FirstRadius:0.###} mm"), Text);
        }
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

    // The parts of a chain of lines within the box, cut at its edges.
    private static IEnumerable<List<Point>> Inside(Point[] chain, Box box)
    {
        List<Point> run = [];
        for (int i = 1; i < chain.Length; i++)
        {
            if (box.Clip(chain[i - 1], chain[i]) is not var (from, to))
            {
                continue;
            }

            if (run.Count > 0 && run[^1].DistanceTo(from) > 1e-9)
            {
                yield return run;
                run = [];
            }

            run = run.Count == 0 ? [from] : run;
            if (to.DistanceTo(run[^1]) > 1e-4)
            {
                run.Add(to);
            }
        }

        if (run.Count > 1)
        {
            yield return run;
        }
    }

    private readonly record struct Box(double Left, double Bottom, double Right, double Top)
    {
        public (Point From, Point To)? Clip(Point from, Point to)
        {
            (double low, double high) = (0, 1);
            Vector along = to - from;
            Narrow(-along.X, from.X - Left, ref low, ref high);
            Narrow(along.X, Right - from.X, ref low, ref high);
            Narrow(-along.Y, from.Y - Bottom, ref low, ref high);
            Narrow(along.Y, Top - from.Y, ref low, ref high);
            return low < high ? (from + (along * low), from + (along * high)) : null;
        }

        private static void Narrow(double outward, double room, ref double low, ref double high)
        {
            if (outward > 0)
            {
                high = Math.Min(high, room / outward);
            }
            else if (outward < 0)
            {
                low = Math.Max(low, room / outward);
            }
            else if (room < 0)
            {
                high = low;
            }
        }
    }
}
