using GearBlanks.Cutting;
using GearBlanks.Files.Dxf;

namespace GearBlanks.Files.Tests.Readers;

/// <summary>LibreCAD's dxf2pdf: what it draws on paper at 1:1, its origin at the page's lower left corner, in steps of 1/1200 inch.</summary>
public static class LibreCad
{
    private const double Tolerance = 0.05;
    private const double MillimetresPerPoint = 25.4 / 72;

    // timeout's own answer when it had to end the program.
    private const int EndedByTimeout = 124;

    public static IReadOnlyList<string> Compare(string file, Drawing drawing, DxfVersion version) => Compare(file, drawing, secondsAllowed: 20);

    /// <summary>LibreCAD never ends on files that are cut off, and calls rubbish done: only what it drew counts.</summary>
    public static IReadOnlyList<string> Compare(string file, Drawing drawing, int secondsAllowed)
    {
        string pdf = Path.ChangeExtension(file, ".librecad.pdf");
        File.Delete(pdf);
        ReaderProcess.Output output = ReaderProcess.Run("timeout", FormattableString.Invariant($"{secondsAllowed}"), "librecad", "dxf2pdf", "-o", pdf, file);
        if (output.ExitCode is 126 or 127)
        {
            throw new InvalidOperationException("The reader librecad is not installed; tests/run installs it.");
        }

        Differences differences = new();
        if (output.ExitCode == EndedByTimeout || !File.Exists(pdf))
        {
            differences.Add(output.ExitCode == EndedByTimeout ? "did not end" : "drew nothing");
            return differences.Found;
        }

        // A polyline is drawn piece by piece, so only the whole can be compared.
        Extent drawn = PdfStrokes.Read(pdf).Paths.Aggregate(Extent.Nothing, (all, path) => all.With(path.Box));
        Extent wanted = Shape.Of(drawing).Aggregate(Extent.Nothing, (all, shape) => all.With(shape.Box));
        Extent inMillimetres = new(
            drawn.Left * MillimetresPerPoint, drawn.Bottom * MillimetresPerPoint, drawn.Right * MillimetresPerPoint, drawn.Top * MillimetresPerPoint);
        differences.Expect("drawn box", wanted, inMillimetres, Tolerance);
        return differences.Found;
    }
}
