using System.Collections.Immutable;
using GearBlanks.Curves;

namespace GearBlanks.Blanks.Lettering;

/// <summary>Upright lettering in a rectangle: one block of lines, halfway up, as near the middle as holes let it.</summary>
internal static class LetteringBar
{
    private const double LeastHeight = 2;
    private const double MostHeight = 3;
    private const double HeightStep = 0.5;

    // mm: a hole is passed by within this.
    private const double Step = 1;

    /// <summary>Places a text; null where it does not fit at the least height.</summary>
    /// <param name="text">The text, with <see cref="LetteringLayout.Break"/> where a new line may begin.</param>
    /// <param name="least">Lower left corner of the room.</param>
    /// <param name="most">Upper right corner of the room.</param>
    /// <param name="holes">Holes with their clearance.</param>
    public static PlacedLettering? Place(string text, Point least, Point most, ImmutableArray<Circle> holes)
    {
        ImmutableArray<string> parts = [.. text.Split(LetteringLayout.Break, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)];
        for (double height = MostHeight; height >= LeastHeight; height -= HeightStep)
        {
            for (int lines = 1; lines <= parts.Length; lines++)
            {
                if (Place(LetteringLines.Lines(parts, lines), height, least, most, holes) is { } strokes)
                {
                    return new PlacedLettering(strokes, height);
                }
            }
        }

        return null;
    }

    private static ImmutableArray<ArcPath>? Place(ImmutableArray<string> lines, double height, Point least, Point most, ImmutableArray<Circle> holes)
    {
        var block = new LineBlock(lines, height);
        double room = ((most.X - least.X) / 2) - block.Half.X;
        if (room < 0 || most.Y - least.Y < 2 * block.Half.Y)
        {
            return null;
        }

        var middle = new Point((least.X + most.X) / 2, (least.Y + most.Y) / 2);
        int steps = (int)Math.Floor(room / Step);
        foreach (int step in Enumerable.Range(-steps, (2 * steps) + 1).OrderBy(Math.Abs))
        {
            var shift = new Vector(middle.X + (step * Step), middle.Y);
            if (holes.All(hole => block.Laid.IsClearOf(hole.Centre - shift, hole.Radius)))
            {
                return [.. block.Laid.Strokes.Select(stroke => stroke.Moved(Motion.Shift(shift)))];
            }
        }

        return null;
    }
}
