using System.Globalization;
using System.Text;
using GearBlanks.Files.Drawings;
using GearBlanks.Mechanisms;

namespace GearBlanks.Files.Tests.Drawings;

/// <summary>Drawings written by hand, and what the reader makes of them.</summary>
internal static class Drawn
{
    public static DrawnGear Read(string content, params string[] layers)
    {
        Outcome<DrawnGear> read = Parse(content, layers);
        Assert.True(read.Value is not null, string.Join('\n', read.Problems));
        return read.Value;
    }

    public static Problem Refused(string content, params string[] layers) => Assert.Single(Parse(content, layers).Problems);

    public static string Dxf(string entities, string tables = "") =>
        $"0\nSECTION\n2\nHEADER\n9\n$INSUNITS\n70\n4\n0\nENDSEC\n{tables}0\nSECTION\n2\nENTITIES\n{entities}0\nENDSEC\n0\nEOF\n";

    /// <summary>A table of layers: each by its name, its flags and its colour.</summary>
    public static string Layers(params (string Name, int Flags, int Colour)[] layers) =>
        "0\nSECTION\n2\nTABLES\n0\nTABLE\n2\nLAYER\n" + string.Concat(layers.Select(layer => Text($"0\nLAYER\n2\n{layer.Name}\n70\n{layer.Flags}\n62\n{layer.Colour}\n"))) + "0\nENDTAB\n0\nENDSEC\n";

    public static string Line(double x, double y, double toX, double toY, string layer = "0") => Text($"0\nLINE\n8\n{layer}\n10\n{x}\n20\n{y}\n11\n{toX}\n21\n{toY}\n");

    public static string Circle(double x, double y, double radius, string layer = "0") => Text($"0\nCIRCLE\n8\n{layer}\n10\n{x}\n20\n{y}\n40\n{radius}\n");

    public static string Polygon(IEnumerable<(double X, double Y)> points, string layer = "0") =>
        $"0\nLWPOLYLINE\n8\n{layer}\n70\n1\n" + string.Concat(points.Select(point => Text($"10\n{point.X}\n20\n{point.Y}\n")));

    public static string Lines(IReadOnlyList<(double X, double Y)> points) =>
        string.Concat(points.Select((from, i) => Line(from.X, from.Y, points[(i + 1) % points.Count].X, points[(i + 1) % points.Count].Y)));

    /// <summary>A square about the origin with a bore.</summary>
    public static string Plate(double side = 20) => Polygon(Square(side)) + Circle(0, 0, 3);

    public static (double X, double Y)[] Square(double side) => [(-side / 2, -side / 2), (side / 2, -side / 2), (side / 2, side / 2), (-side / 2, side / 2)];

    public static string Svg(string content) => $"<svg xmlns='http://www.w3.org/2000/svg' width='100mm' height='100mm' viewBox='-50 -50 100 100'>\n{content}\n</svg>";

    public static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private static Outcome<DrawnGear> Parse(string content, string[] layers) =>
        DrawingReader.Parse(Encoding.UTF8.GetBytes(content), "drawing", DrawingChoice.All with { Layers = [.. layers] });
}
