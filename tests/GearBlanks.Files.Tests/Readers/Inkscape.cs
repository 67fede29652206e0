using GearBlanks.Cutting;
using GearBlanks.Files.Svg;

namespace GearBlanks.Files.Tests.Readers;

/// <summary>Inkscape's query: the box of each layer's group with its stroke, in pixels of 1/96 inch from the page's upper left corner.</summary>
public static class Inkscape
{
    private const double Tolerance = 0.003;
    private const double MillimetresPerPixel = 25.4 / 96;

    public static IReadOnlyList<string> Compare(string file, Drawing drawing)
    {
        ReaderProcess.Output output = ReaderProcess.Run("inkscape", "--query-all", file);
        Differences differences = new();
        Dictionary<string, double[]> read = output.Text.Split('\n', StringSplitOptions.RemoveEmptyEntries)
            .Select(line => line.Split(','))
            .Where(parts => parts.Length == 5)
            .ToDictionary(parts => parts[0], parts => parts[1..].Select(Number).ToArray());
        ILookup<string, Shape> layers = Shape.Of(drawing).ToLookup(shape => shape.Layer);
        Extent page = layers.SelectMany(layer => layer).Aggregate(Extent.Nothing, (all, shape) => all.With(shape.Box)).Grown(SvgWriter.Margin);
        foreach (IGrouping<string, Shape> layer in layers)
        {
            if (read.TryGetValue(layer.Key, out double[]? box))
            {
                differences.Expect(layer.Key, layer.Aggregate(Extent.Nothing, (all, shape) => all.With(shape.Box)), OnDrawing(box, page), Tolerance);
            }
            else
            {
                differences.Add($"group {layer.Key} not found");
            }
        }

        return differences.Found;
    }

    // Joins and ends are round, so the stroke adds half its width on every side.
    private static Extent OnDrawing(double[] box, Extent page)
    {
        double left = page.Left + (box[0] * MillimetresPerPixel);
        double top = page.Top - (box[1] * MillimetresPerPixel);
        return new Extent(left, top - (box[3] * MillimetresPerPixel), left + (box[2] * MillimetresPerPixel), top).Grown(-SvgWriter.StrokeWidth / 2);
    }

    private static double Number(string text) =>
        Numbers.TryParse(text, out double number) ? number : throw new FormatException($"Inkscape answered '{text}'.");
}
