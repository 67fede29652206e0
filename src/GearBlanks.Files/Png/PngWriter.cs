using GearBlanks.Curves;
using GearBlanks.Cutting;
using SkiaSharp;

namespace GearBlanks.Files.Png;

/// <summary>
/// Draws drawings as PNG: pictures to look at, not to cut by. White ground, every operation in its colour, true proportions but no true
/// size. The same drawing gives the same bytes on one machine; another kind of processor may shade edges otherwise.
/// </summary>
public static class PngWriter
{
    /// <summary>Length of the picture's longer side, pixels.</summary>
    internal const int LongEdge = 1200;

    /// <summary>Free space around the shapes, pixels.</summary>
    internal const int Margin = 24;

    /// <summary>Width of every stroke, pixels, half of it on each side of the shape.</summary>
    internal const double StrokeWidth = 1.6;

    /// <summary>The whole file.</summary>
    /// <param name="drawing">The shapes, mm.</param>
    /// <exception cref="ArgumentException">The drawing cannot be written, as in <see cref="Svg.SvgWriter.Write"/>.</exception>
    public static byte[] Write(Drawing drawing)
    {
        var view = new PngView(DrawingRules.Require(drawing));
        using var bitmap = new SKBitmap(new SKImageInfo(view.Width, view.Height, SKColorType.Rgba8888, SKAlphaType.Opaque));
        using (var canvas = new SKCanvas(bitmap))
        {
            canvas.Clear(SKColors.White);
            foreach (DrawingLayer layer in drawing.Layers)
            {
                Draw(canvas, layer, view);
            }
        }

        using SKPixmap pixels = bitmap.PeekPixels();
        using SKData file = pixels.Encode(SKPngEncoderOptions.Default)!;
        return file.ToArray();
    }

    private static void Draw(SKCanvas canvas, DrawingLayer layer, PngView view)
    {
        using var stroke = new SKPaint
        {
            Style = SKPaintStyle.Stroke,
            StrokeWidth = (float)StrokeWidth,
            StrokeJoin = SKStrokeJoin.Round,
            StrokeCap = SKStrokeCap.Round,
            IsAntialias = true,
            Color = SKColor.Parse(OperationColours.Of(layer.Operation)),
        };
        foreach (ArcPath path in layer.Paths)
        {
            using SKPath drawn = PngPaths.Of(path, view);
            canvas.DrawPath(drawn, stroke);
        }

        foreach (Circle circle in layer.Circles)
        {
            canvas.DrawCircle(view.At(circle.Centre), (float)(circle.Radius * view.Scale), stroke);
        }
    }
}
