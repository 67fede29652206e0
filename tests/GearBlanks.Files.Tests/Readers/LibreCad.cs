using GearBlanks.Cutting;
using GearBlanks.Files.Dxf;

namespace GearBlanks.Files.Tests.Readers;

/// <summary>
/// LibreCAD's dxf2pdf: what it draws at 1:1 in the middle of a sheet of A4, in steps of 1/1200 inch. It knows no other paper, and leaves
/// out what lies beside it.
/// </summary>
public static class LibreCad
{
    private const double Tolerance = 0.05;
    private const double MillimetresPerPoint = 25.4 / 72;
    private const double PaperWidth = 210;
    private const double PaperHeight = 297;

    // timeout's own answers: it had to end the program, or could not start it.
    private const int EndedByTimeout = 124;
    private const int NotStarted = 126;
    private const int NotFound = 127;

    public static IReadOnlyList<string> Compare(string file, Drawing drawing, DxfVersion version) => Compare(file, drawing, secondsAllowed: 20);

    /// <summary>LibreCAD never ends on files that are cut off, and calls rubbish done: only what it drew counts.</summary>
    public static IReadOnlyList<string> Compare(string file, Drawing drawing, int secondsAllowed)
    {
        // Whatever name it is given, it writes beside the drawing.
        string pdf = Path.ChangeExtension(file, ".pdf");
        ReaderProcess.Output output = ReaderProcess.Run("timeout", FormattableString.Invariant($"{secondsAllowed}"), "librecad", "dxf2pdf", "--center", file);
        if (output.ExitCode is NotStarted or NotFound)
        {
            throw new InvalidOperationException("The reader librecad is not installed; tests/run installs it.");
        }

        Differences differences = new();
        if (output.ExitCode == EndedByTimeout || !File.Exists(pdf))
        {
            differences.Add(output.ExitCode == EndedByTimeout ? "did not end" : "drew nothing");
        }
        else
        {
            Compare(differences, Shape.Of(drawing), PdfStrokes.Read(pdf).Paths);
        }

        return differences.Found;
    }

    // A polyline is drawn piece by piece; each layer has its own colour.
    private static void Compare(Differences differences, IReadOnlyList<Shape> shapes, IReadOnlyList<PdfStrokes.Stroke> strokes)
    {
        Extent wanted = Around(shapes.Select(shape => shape.Box));
        Extent drawn = Around(strokes.Select(stroke => stroke.Box));
        Assert.True(wanted.Width < PaperWidth && wanted.Height < PaperHeight, "LibreCAD cannot draw this on its paper: try a smaller drawing.");
        differences.Expect("drawn width", wanted.Width, drawn.Width * MillimetresPerPoint, Tolerance);
        differences.Expect("drawn height", wanted.Height, drawn.Height * MillimetresPerPoint, Tolerance);

        IGrouping<string, Shape>[] layers = [.. shapes.GroupBy(shape => shape.Layer)];
        IGrouping<string, PdfStrokes.Stroke>[] colours = [.. strokes.GroupBy(stroke => stroke.Colour)];
        differences.Expect("number of colours", layers.Length, colours.Length);
        foreach ((IGrouping<string, Shape> layer, IGrouping<string, PdfStrokes.Stroke> colour) in layers.Zip(colours))
        {
            Extent box = Around(colour.Select(stroke => stroke.Box));
            differences.Expect($"drawn box of {layer.Key}", Around(layer.Select(shape => shape.Box)), Moved(box, drawn, wanted), Tolerance);
        }
    }

    private static Extent Around(IEnumerable<Extent> boxes) => boxes.Aggregate(Extent.Nothing, (all, box) => all.With(box));

    // Middle upon middle: the sheet's own middle is rounded to a dot.
    private static Extent Moved(Extent box, Extent drawn, Extent wanted)
    {
        double x = ((wanted.Left + wanted.Right) / 2) - ((drawn.Left + drawn.Right) / 2 * MillimetresPerPoint);
        double y = ((wanted.Bottom + wanted.Top) / 2) - ((drawn.Bottom + drawn.Top) / 2 * MillimetresPerPoint);
        return new Extent(
            (box.Left * MillimetresPerPoint) + x, (box.Bottom * MillimetresPerPoint) + y,
            (box.Right * MillimetresPerPoint) + x, (box.Top * MillimetresPerPoint) + y);
    }
}
