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
    private const int Offsets = 9;

    /// <summary>Shapes worth trying, the plainest first; not all of them fit the face.</summary>
    internal static IEnumerable<StrokeSet> Shapes(ImmutableArray<string> parts, double height, LetteringFace face)
    {
        for (int count = 1; count <= Math.Min(MostLines, parts.Length); count++)
        {
            ImmutableArray<string> lines = Lines(parts, count);
            IEnumerable<StrokeSet> blocks = lines.Length <= MostLinesInBlock ? Blocks(lines, height, face) : [];
            IEnumerable<StrokeSet> pairs = lines.Length > 1 ? Pairs(lines, height, face) : [];
            foreach (StrokeSet shape in pairs.Concat(blocks))
            {
                yield return shape;
            }
        }
    }

    /// <summary>The parts on at most so many lines of about the same length.</summary>
    internal static ImmutableArray<string> Lines(ImmutableArray<string> parts, int count)
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

    private static IEnumerable<StrokeSet> Blocks(ImmutableArray<string> lines, double height, LetteringFace face)
    {
        var block = new LineBlock(lines, height);
        Vector half = block.Half;
        if (face.InnerEdge == 0)
        {
            yield return new StrokeSet((block.Laid, default));
        }

        foreach (double y in OffsetsFrom(face.InnerEdge + half.Y, Farthest(half.X, half.Y, face.OuterEdge)))
        {
            yield return new StrokeSet((block.Laid, new Vector(0, y)));
            yield return new StrokeSet((block.Laid, new Vector(0, -y)));
        }

        foreach (double x in OffsetsFrom(face.InnerEdge + half.X, Farthest(half.Y, half.X, face.OuterEdge)))
        {
            yield return new StrokeSet((block.Laid, new Vector(x, 0)));
            yield return new StrokeSet((block.Laid, new Vector(-x, 0)));
        }
    }

    private static IEnumerable<StrokeSet> Pairs(ImmutableArray<string> lines, double height, LetteringFace face)
    {
        int aboveCount = (lines.Length + 1) / 2;
        var above = new LineBlock(lines[..aboveCount], height);
        var below = new LineBlock(lines[aboveCount..], height);
        double half = Math.Max(above.Half.Y, below.Half.Y);
        double nearest = Math.Max(face.InnerEdge, (LineBlock.Pitch - 1) / 2 * height);
        foreach (double y in OffsetsFrom(nearest + half, Farthest(Math.Max(above.Half.X, below.Half.X), half, face.OuterEdge)))
        {
            yield return new StrokeSet((above.Laid, new Vector(0, y)), (below.Laid, new Vector(0, -y)));
        }
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
}
