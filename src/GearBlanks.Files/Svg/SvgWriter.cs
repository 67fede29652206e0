using GearBlanks.Curves;
using GearBlanks.Cutting;

namespace GearBlanks.Files.Svg;

/// <summary>
/// Writes drawings as SVG at true size: one user unit is a millimetre, real arcs, a group a layer, no fills and no transforms. UTF-8 with
/// LF; the same drawing gives the same bytes anywhere.
/// </summary>
public static class SvgWriter
{
    /// <summary>Width of every stroke, mm, half of it on each side of the shape.</summary>
    public const double StrokeWidth = 0.1;

    /// <summary>Free space around the shapes, mm.</summary>
    public const double Margin = 2;

    private const int Decimals = 6;

    /// <summary>The whole file. The drawing's origin stays the origin; Y, which points down in SVG, changes its sign.</summary>
    /// <param name="drawing">The shapes, mm.</param>
    /// <exception cref="ArgumentException">
    /// The drawing cannot be written: a layer's name is not fit or occurs twice, a path that is cut is open, an arc exceeds 90 degrees,
    /// a piece has no length, a number is not finite, or there are no shapes.
    /// </exception>
    public static byte[] Write(Drawing drawing)
    {
        Extent extent = DrawingRules.Require(drawing);
        ByteText text = new();
        SvgHead.Add(text, drawing.Title, extent.Grown(Margin), Decimals);
        foreach (DrawingLayer layer in drawing.Layers)
        {
            WriteLayer(text, layer);
        }

        text.Add("</svg>\n"u8);
        return text.ToArray();
    }

    private static void WriteLayer(ByteText text, DrawingLayer layer)
    {
        text.Add("<g id=\""u8);
        text.Add(layer.Name);
        text.Add("\" fill=\"none\" stroke=\""u8);
        text.Add(OperationColours.Of(layer.Operation));
        text.Add("\" stroke-width=\""u8);
        text.Add(StrokeWidth, Decimals);

        // Round joins reach half a stroke beyond the shape and no more, so what is drawn can be measured.
        text.Add("\" stroke-linejoin=\"round\" stroke-linecap=\"round\">\n"u8);
        foreach (ArcPath path in layer.Paths)
        {
            WritePath(text, path);
        }

        foreach (Circle circle in layer.Circles)
        {
            WritePath(text, SvgPaths.InQuarters(circle));
        }

        text.Add("</g>\n"u8);
    }

    private static void WritePath(ByteText text, ArcPath path)
    {
        text.Add("<path d=\""u8);
        SvgPaths.AddData(text, path, Decimals);
        text.Add("\"/>\n"u8);
    }
}
