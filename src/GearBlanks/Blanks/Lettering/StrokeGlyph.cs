using System.Collections.Immutable;
using System.Globalization;
using GearBlanks.Curves;

namespace GearBlanks.Blanks.Lettering;

/// <summary>One letter shape, read from its line in <see cref="StrokeGlyphs"/>; a capital's height is 1.</summary>
/// <param name="Advance">Distance to the next letter's origin.</param>
/// <param name="Strokes">Runs of straight pieces.</param>
internal sealed record StrokeGlyph(double Advance, ImmutableArray<ImmutableArray<Point>> Strokes)
{
    // Twelve pieces to a full round: at 3 mm height they stray less than 0.04 mm from the curve.
    private const int PiecesPerCorner = 3;

    /// <summary>The box that the strokes fill; null where there are none.</summary>
    internal (Point Least, Point Most)? Ink { get; } = Strokes.IsEmpty ? null : (
        new Point(Strokes.Min(stroke => stroke.Min(point => point.X)), Strokes.Min(stroke => stroke.Min(point => point.Y))),
        new Point(Strokes.Max(stroke => stroke.Max(point => point.X)), Strokes.Max(stroke => stroke.Max(point => point.Y))));

    /// <summary>Reads a line of the table.</summary>
    internal static StrokeGlyph Read(string line)
    {
        string[] strokes = line[2..].Split(" ; ");
        string[] first = strokes[0].Split(' ', 2);
        double advance = Number(first[0]);
        if (first.Length == 1)
        {
            return new StrokeGlyph(advance, []);
        }

        strokes[0] = first[1];
        return new StrokeGlyph(advance, [.. strokes.Select(ReadStroke)]);
    }

    private static ImmutableArray<Point> ReadStroke(string stroke)
    {
        List<Point> points = [];
        Point? corner = null;
        foreach (string mark in stroke.Split(' '))
        {
            bool isCorner = mark[0] == '(';
            Point point = ReadPoint(isCorner ? mark.AsSpan(1, mark.Length - 2) : mark);
            if (corner is { } rounded)
            {
                AddRound(points, rounded, isCorner ? rounded + ((point - rounded) * 0.5) : point);
            }
            else if (!isCorner)
            {
                points.Add(point);
            }

            corner = isCorner ? point : null;
        }

        return [.. points];
    }

    private static void AddRound(List<Point> points, Point corner, Point end)
    {
        Vector toStart = points[^1] - corner;
        Vector toEnd = end - corner;
        for (int piece = 1; piece < PiecesPerCorner; piece++)
        {
            double angle = Math.PI / 2 * piece / PiecesPerCorner;
            points.Add(corner + (toStart * (1 - Math.Sin(angle))) + (toEnd * (1 - Math.Cos(angle))));
        }

        points.Add(end);
    }

    private static Point ReadPoint(ReadOnlySpan<char> mark)
    {
        int comma = mark.IndexOf(',');
        return new Point(Number(mark[..comma]), Number(mark[(comma + 1)..]));
    }

    private static double Number(ReadOnlySpan<char> digits) =>
        int.Parse(digits, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture) / (double)StrokeGlyphs.CapitalHeight;
}
