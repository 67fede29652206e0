using System.Globalization;
using GearBlanks.Curves;
using GearBlanks.Files.Svg.Overview;

namespace GearBlanks.Files.Rolls;

/// <summary>One diagram: a frame, both axes with their figures and units, and its lines.</summary>
/// <param name="Left">Left edge of the frame, mm.</param>
/// <param name="Bottom">Lower edge of the frame, mm.</param>
/// <param name="Width">Width of the frame, mm.</param>
/// <param name="Height">Height of the frame, mm.</param>
internal sealed record PlotPanel(double Left, double Bottom, double Width, double Height)
{
    private const double Letter = 2.4;
    private const double Tick = 1;
    private const int MostTicks = 6;
    private const int MostPoints = 4000;

    private static readonly Ink Text = new(Look.Dark, 0.24);
    private static readonly Ink Frame = new(Look.Dark, 0.15);
    private static readonly Ink Grid = new("#c8d0d6", 0.1);

    /// <summary>Draws the diagram.</summary>
    /// <param name="title">What goes up, with its unit.</param>
    /// <param name="across">What goes along, with its unit.</param>
    /// <param name="xs">Along, in order.</param>
    /// <param name="lines">Names, colours, and what goes up; not finite where there is nothing.</param>
    public IEnumerable<Shape> Draw(string title, string across, double[] xs, params (string Name, string Colour, double[] Values)[] lines)
    {
        double[] all = [.. lines.SelectMany(line => line.Values).Where(double.IsFinite)];
        (double low, double high) = all.Length == 0 ? (0, 1) : (all.Min(), all.Max());
        double room = Math.Max((high - low) * 0.06, LeastRange(high) / 2);
        (low, high) = (low - room, high + room);
        (double from, double to) = (xs[0], xs[^1]);
        foreach (Shape shape in Axes(low, high, from, to))
        {
            yield return shape;
        }

        foreach ((string _, string colour, double[] values) in lines)
        {
            yield return new Shape([.. Runs(xs, values, point => Place(point, from, to, low, high))], new Ink(colour, 0.25));
        }

        yield return Lettered.At(title, Letter, new Point(Left, Bottom + Height + 2), Text);
        yield return Lettered.At(across, Letter, new Point(Left + Width - Lettered.Width(across, Letter), Bottom - 9), Text);
        double at = Left + Width;
        foreach ((string name, string colour, double[] _) in lines.Where(line => line.Name.Length > 0).Reverse())
        {
            at -= Lettered.Width(name, Letter);
            yield return Lettered.At(name, Letter, new Point(at, Bottom + Height + 2), Text);
            yield return new Shape([ArcPath.Strokes([new Point(at - 7, Bottom + Height + 3.2), new Point(at - 1.5, Bottom + Height + 3.2)])], new Ink(colour, 0.5));
            at -= 12;
        }
    }

    // A line without deviation is drawn as one, not as its rounding magnified.
    private static double LeastRange(double value) => Math.Max(0.001, Math.Abs(value) * 0.001);

    private IEnumerable<Shape> Axes(double low, double high, double from, double to)
    {
        foreach (double value in Ticks(low, high))
        {
            double y = Place(new Point(from, value), from, to, low, high).Y;
            string words = InWords(value, Step(low, high));
            yield return new Shape([ArcPath.Strokes([new Point(Left, y), new Point(Left + Width, y)])], Grid);
            yield return Lettered.At(words, Letter, new Point(Left - 1.5 - Lettered.Width(words, Letter), y - (Letter / 2)), Text);
        }

        foreach (double value in Ticks(from, to))
        {
            double x = Place(new Point(value, low), from, to, low, high).X;
            yield return new Shape([ArcPath.Strokes([new Point(x, Bottom), new Point(x, Bottom - Tick)])], Frame);
            yield return Lettered.Centred(InWords(value, Step(from, to)), Letter, new Point(x, Bottom - 3.5), Text);
        }

        yield return new Shape(
            [new ArcPath([new(new Point(Left, Bottom), 0), new(new Point(Left + Width, Bottom), 0), new(new Point(Left + Width, Bottom + Height), 0), new(new Point(Left, Bottom + Height), 0)], true)],
            Frame);
    }

    private Point Place(Point point, double from, double to, double low, double high) => new(
        Left + (Width * (point.X - from) / (to - from)), Bottom + (Height * (point.Y - low) / (high - low)));

    // Where many positions share a point of the paper, their least and greatest stand for them.
    private static IEnumerable<ArcPath> Runs(double[] xs, double[] values, Func<Point, Point> place)
    {
        int group = Math.Max(1, 2 * xs.Length / MostPoints);
        List<Point> run = [];
        for (int start = 0; start < xs.Length; start += group)
        {
            int end = Math.Min(start + group, xs.Length);
            int low = start;
            int high = start;
            bool isWhole = true;
            for (int i = start; i < end; i++)
            {
                isWhole &= double.IsFinite(values[i]);
                low = values[i] < values[low] ? i : low;
                high = values[i] > values[high] ? i : high;
            }

            if (isWhole)
            {
                run.AddRange(new[] { Math.Min(low, high), Math.Max(low, high) }.Distinct().Select(i => place(new Point(xs[i], values[i]))));
            }

            if ((!isWhole || end == xs.Length) && run.Count > 1)
            {
                yield return ArcPath.Strokes(run);
            }

            run = isWhole ? run : [];
        }
    }

    private static IEnumerable<double> Ticks(double low, double high)
    {
        double step = Step(low, high);
        for (double at = Math.Ceiling(low / step); at * step <= high; at++)
        {
            yield return at * step;
        }
    }

    // 1, 2 or 5 times a power of ten.
    private static double Step(double low, double high)
    {
        double rough = (high - low) / MostTicks;
        double power = Math.Pow(10, Math.Floor(Math.Log10(rough)));
        return power * ((rough / power) switch { <= 1 => 1, <= 2 => 2, <= 5 => 5, _ => 10.0 });
    }

    private static string InWords(double value, double step)
    {
        int decimals = Math.Clamp((int)Math.Ceiling(-Math.Log10(step) - 1e-9), 0, 9);
        return (Math.Round(value, decimals) + 0.0).ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
    }
}
