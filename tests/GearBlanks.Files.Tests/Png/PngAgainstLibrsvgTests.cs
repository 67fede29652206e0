using System.Globalization;
using GearBlanks.Cutting;
using GearBlanks.Files.Png;
using GearBlanks.Files.Svg;
using GearBlanks.Files.Tests.Readers;

namespace GearBlanks.Files.Tests.Png;

/// <summary>The PNG of a drawing and librsvg's picture of the same drawing's SVG have their ink in the same places.</summary>
public class PngAgainstLibrsvgTests
{
    private const double MillimetresInAnInch = 25.4;
    private const double Inked = 0.25;

    // The shift of a part of a pixel, and the soft edges of both.
    private const int Blur = 2;

    public static TheoryData<string> Gears { get; } = [.. RealGears.All.Keys];

    public static TheoryData<string> Plates { get; } = [.. Samples.All.Keys];

    [Theory, MemberData(nameof(Gears))]
    public void Gears_look_the_same(string name) => AssertAlike(RealGears.All[name]);

    [Theory, MemberData(nameof(Plates))]
    public void Plates_look_the_same(string name) => AssertAlike(Samples.All[name]);

    private static void AssertAlike(Drawing drawing)
    {
        Extent box = Shape.Of(drawing).Aggregate(Extent.Nothing, (all, shape) => all.With(shape.Box));
        double scale = (PngWriter.LongEdge - (2 * PngWriter.Margin)) / Math.Max(box.Width, box.Height);
        using MadeFile png = new("ours.png", PngWriter.Write(drawing));
        using MadeFile svg = new("theirs.svg", SvgWriter.Write(drawing));
        GdalPicture ours = GdalPicture.Read(png.FilePath);
        GdalPicture theirs = GdalPicture.Read(Rendered(svg.FilePath, scale));

        // Both have the drawing in their middle; theirs begins exactly at the margin that SVG files have.
        double right = ((box.Width * scale) - ours.Width) / 2 + (SvgWriter.Margin * scale);
        double down = ((box.Height * scale) - ours.Height) / 2 + (SvgWriter.Margin * scale);
        (int dx, int dy) = ((int)Math.Round(right), (int)Math.Round(down));
        int reach = Blur + (int)Math.Ceiling(Math.Abs((SvgWriter.StrokeWidth * scale) - PngWriter.StrokeWidth) / 2);
        int inked = AssertCovered(ours, theirs, dx, dy, reach);
        Assert.True(inked > 3000, $"only {inked} pixels have ink");
        AssertCovered(theirs, ours, -dx, -dy, reach);
    }

    private static string Rendered(string svg, double scale)
    {
        string file = Path.ChangeExtension(svg, ".png");
        string dpi = (scale * MillimetresInAnInch).ToString("R", CultureInfo.InvariantCulture);
        ReaderProcess.Output output = ReaderProcess.Run("rsvg-convert", "--dpi-x", dpi, "--dpi-y", dpi, "--background-color", "white", "--output", file, svg);
        Assert.True(output.ExitCode == 0, output.Errors);
        return file;
    }

    /// <summary>Each pixel with ink has one in the other picture, shifted, near its place; returns how many there are.</summary>
    private static int AssertCovered(GdalPicture picture, GdalPicture other, int dx, int dy, int reach)
    {
        int inked = 0;
        for (int y = 0; y < picture.Height; y++)
        {
            for (int x = 0; x < picture.Width; x++)
            {
                if (picture.Ink(x, y) > Inked)
                {
                    inked++;
                    Assert.True(HasInkNear(other, x + dx, y + dy, reach), $"ink at {x}, {y} in one picture only");
                }
            }
        }

        return inked;
    }

    private static bool HasInkNear(GdalPicture picture, int x, int y, int reach)
    {
        for (int row = Math.Max(0, y - reach); row <= Math.Min(picture.Height - 1, y + reach); row++)
        {
            for (int column = Math.Max(0, x - reach); column <= Math.Min(picture.Width - 1, x + reach); column++)
            {
                if (picture.Ink(column, row) > Inked / 2)
                {
                    return true;
                }
            }
        }

        return false;
    }
}
