using System.Collections.Immutable;
using GearBlanks.Curves;

namespace GearBlanks.Blanks.Lettering;

/// <summary>Upright lettering: one block of lines beside the bore, or lines above and below it.</summary>
internal static class LetteringLines
{
    /// <summary>What stands between two parts on one line.</summary>
    internal const string Gap = "  ";

    private const int MostLinesInBlock = 3;
    private const int MostLines = 4;
    private const double LinePitch = 1.7;
    private const int Offsets = 9;

    /// <summary>Shapes worth trying, the plainest first; not all of them fit the face.</summary>
    internal static IEnumerable<ImmutableArray<ArcPath>> Shapes(ImmutableArray<string> parts, double height, LetteringFace face)
    {
        for (int count = 1; count <= Math.Min(MostLines, parts.Length); count++)
        {
            ImmutableArray<string> lines = Lines(parts, count);
            IEnumerable<ImmutableArray<ArcPath>> blocks = lines.Length <= MostLinesInBlock ? Blocks(lines, height, face) : [];
            IEnumerable<ImmutableArray<ArcPath>> pairs = lines.Length > 1 ? Pairs(lines, height, face) : [];
            foreach (ImmutableArray<ArcPath> shape in pairs.Concat(blocks))
            {
                yield return shape;
            }
        }
    }

    /// <summary>The parts on at most so many lines of about the same length.</summary>
    private static ImmutableArray<string> Lines(ImmutableArray<string> parts, int count)
    {
        double total = parts.Sum(part => StrokeFont.WidthOf(part, 1));
        double before = 0;
        List<string>[] lines = [.. Enumerable.Range(0, count).Select(_ => new List<string>())];
        foreach (string part in parts)
        {
            double width = StrokeFont.WidthOf(part, 1);
            lines[(int)Math.Min(count - 1, count * (before + (width / 2)) / total)].Add(part);
            before += width;
        }

        return [.. lines.Where(line => line.Count > 0).Select(line => string.Join(Gap, line))];
    }

    private static IEnumerable<ImmutableArray<ArcPath>> Blocks(ImmutableArray<string> lines, double height, LetteringFace face)
    {
        ImmutableArray<ArcPath> block = Block(lines, height, out Vector half);
        if (face.InnerEdge == 0)
        {
            yield return block;
        }

        foreach (double y in OffsetsFrom(face.InnerEdge + half.Y, Farthest(half.X, half.Y, face.OuterEdge)))
        {
            yield return Shifted(block, new Vector(0, y));
            yield return Shifted(block, new Vector(0, -y));
        }

        foreach (double x in OffsetsFrom(face.InnerEdge + half.X, Farthest(half.Y, half.X, face.OuterEdge)))
        {
            yield return Shifted(block, new Vector(x, 0));
            yield return Shifted(block, new Vector(-x, 0));
        }
    }

    private static IEnumerable<ImmutableArray<ArcPath>> Pairs(ImmutableArray<string> lines, double height, LetteringFace face)
    {
        int aboveCount = (lines.Length + 1) / 2;
        ImmutableArray<ArcPath> above = Block(lines[..aboveCount], height, out Vector halfAbove);
        ImmutableArray<ArcPath> below = Block(lines[aboveCount..], height, out Vector halfBelow);
        double half = Math.Max(halfAbove.Y, halfBelow.Y);
        double nearest = Math.Max(face.InnerEdge, (LinePitch - 1) / 2 * height);
        foreach (double y in OffsetsFrom(nearest + half, Farthest(Math.Max(halfAbove.X, halfBelow.X), half, face.OuterEdge)))
        {
            yield return [.. Shifted(above, new Vector(0, y)), .. Shifted(below, new Vector(0, -y))];
        }
    }

    /// <summary>Centred lines, their ink's box centred on the origin.</summary>
    private static ImmutableArray<ArcPath> Block(ImmutableArray<string> lines, double height, out Vector half)
    {
        ImmutableArray<ArcPath> strokes =
        [
            .. lines.SelectMany((line, index) => StrokeFont.Lay(
                line, height, new Point(-StrokeFont.WidthOf(line, height) / 2, -index * LinePitch * height))),
        ];
        if (strokes.IsEmpty)
        {
            half = default;
            return strokes;
        }

        Point[] points = [.. strokes.SelectMany(stroke => stroke.Vertices).Select(vertex => vertex.Point)];
        Point least = new(points.Min(point => point.X), points.Min(point => point.Y));
        Point most = new(points.Max(point => point.X), points.Max(point => point.Y));
        half = (most - least) * 0.5;
        return Shifted(strokes, default(Point) - (least + half));
    }

    /// <summary>How far out a box may go before its far side leaves the rim, or the chord of its near side becomes too short.</summary>
    private static double Farthest(double halfAlong, double halfAcross, double rim) => halfAlong > rim
        ? double.NegativeInfinity
        : Math.Min(rim - halfAcross, halfAcross + Math.Sqrt((rim * rim) - (halfAlong * halfAlong)));

    // From the middle of the room outwards: lettering looks best where it has air on both sides.
    private static IEnumerable<double> OffsetsFrom(double least, double most) => least > most
        ? []
        : Enumerable.Range(0, Offsets)
            .OrderBy(index => Math.Abs(index - (Offsets / 2)))
            .Select(index => least + ((most - least) * index / (Offsets - 1)));

    private static ImmutableArray<ArcPath> Shifted(ImmutableArray<ArcPath> strokes, Vector by) =>
        [.. strokes.Select(stroke => stroke.Moved(Motion.Shift(by)))];
}
