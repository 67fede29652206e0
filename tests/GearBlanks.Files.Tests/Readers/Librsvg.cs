using GearBlanks.Cutting;
using GearBlanks.Files.Svg;

namespace GearBlanks.Files.Tests.Readers;

/// <summary>
/// librsvg's rsvg-convert to PDF, enlarged so that the PDF's three decimals cost nothing: page size, and each path's box without its stroke.
/// </summary>
public static class Librsvg
{
    private const double Tolerance = 0.003;
    private const int Zoom = 20;
    private const double MillimetresPerPoint = 25.4 / 72 / Zoom;

    public static IReadOnlyList<string> Compare(string file, Drawing drawing)
    {
        string pdf = Path.ChangeExtension(file, ".librsvg.pdf");
        ReaderProcess.Output output = ReaderProcess.Run("rsvg-convert", "--format", "pdf", "--zoom", FormattableString.Invariant($"{Zoom}"), "--output", pdf, file);
        Differences differences = new();
        if (output.ExitCode != 0)
        {
            differences.Add("refused: " + output.Errors);
            return differences.Found;
        }

        PdfStrokes strokes = PdfStrokes.Read(pdf);
        IReadOnlyList<Shape> wanted = Shape.Of(drawing);
        Extent page = wanted.Aggregate(Extent.Nothing, (all, shape) => all.With(shape.Box)).Grown(SvgWriter.Margin);
        differences.Expect("page width", page.Width, strokes.Width * MillimetresPerPoint, Tolerance);
        differences.Expect("page height", page.Height, strokes.Height * MillimetresPerPoint, Tolerance);
        differences.Expect("number of paths", wanted.Count, strokes.Paths.Count);
        foreach ((Shape shape, PdfStrokes.Stroke stroke) in wanted.Zip(strokes.Paths))
        {
            differences.Expect($"path on {shape.Layer}, closed", shape.Closed, stroke.Closed);
            differences.Expect($"path on {shape.Layer}", shape.Box, OnDrawing(stroke.Box, page), Tolerance);
        }

        return differences.Found;
    }

    private static Extent OnDrawing(Extent box, Extent page) => new(
        page.Left + (box.Left * MillimetresPerPoint), page.Bottom + (box.Bottom * MillimetresPerPoint),
        page.Left + (box.Right * MillimetresPerPoint), page.Bottom + (box.Top * MillimetresPerPoint));
}
