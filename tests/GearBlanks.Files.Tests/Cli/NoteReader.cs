using System.Globalization;
using GearBlanks.Blanks.Lettering;
using GearBlanks.Curves;

namespace GearBlanks.Files.Tests.Cli;

/// <summary>Finds words among the strokes of a DXF file's note, wherever on the sheet they are.</summary>
internal static class NoteReader
{
    private const double Height = 2.5;

    // Markings are rounded to a micrometre: half of one at the first point and half at the other.
    private const double Agreement = 0.00101;

    /// <summary>True where every stroke of the words is there, all moved by the same.</summary>
    public static bool Says(string dxf, string words)
    {
        Point[][] strokes = [.. Strokes(dxf)];
        Point[][] wanted = [.. StrokeFont.Lay(words, Height, default).Select(path => path.Vertices.Select(vertex => vertex.Point).ToArray())];
        return strokes.Where(stroke => stroke.Length == wanted[0].Length).Any(stroke =>
        {
            (double x, double y) = (stroke[0].X - wanted[0][0].X, stroke[0].Y - wanted[0][0].Y);
            return wanted.All(one => strokes.Any(other => Same(one, other, x, y)));
        });
    }

    private static bool Same(Point[] one, Point[] other, double x, double y) =>
        one.Length == other.Length
        && one.Zip(other).All(pair => Math.Abs(pair.First.X + x - pair.Second.X) < Agreement && Math.Abs(pair.First.Y + y - pair.Second.Y) < Agreement);

    // The points of all polylines on the layer note: tags come in pairs of lines, a code and a value.
    private static IEnumerable<Point[]> Strokes(string dxf)
    {
        string[] lines = dxf.Split("\r\n");
        (int Code, string Value)[] tags = [.. lines.Chunk(2).Where(pair => pair.Length == 2).Select(pair => (int.Parse(pair[0], CultureInfo.InvariantCulture), pair[1]))];
        for (int i = 0; i < tags.Length; i++)
        {
            if (tags[i] is not (0, "LWPOLYLINE"))
            {
                continue;
            }

            (int Code, string Value)[] body = [.. tags.Skip(i + 1).TakeWhile(tag => tag.Code != 0)];
            if (body.Contains((8, "note")))
            {
                yield return [.. Numbers(body, 10).Zip(Numbers(body, 20), (x, y) => new Point(x, y))];
            }
        }
    }

    private static IEnumerable<double> Numbers(IEnumerable<(int Code, string Value)> tags, int code) =>
        tags.Where(tag => tag.Code == code).Select(tag => double.Parse(tag.Value, CultureInfo.InvariantCulture));
}
