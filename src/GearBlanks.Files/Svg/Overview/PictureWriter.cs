using GearBlanks.Curves;

namespace GearBlanks.Files.Svg.Overview;

/// <summary>Writes pictures as SVG: paths only, no fonts, no transforms; the same picture gives the same bytes anywhere.</summary>
internal static class PictureWriter
{
    // A tenth of a micrometre: far finer than the curves are fitted.
    private const int Decimals = 4;

    public static byte[] Write(Picture picture)
    {
        var text = new ByteText();
        SvgHead.Add(text, picture.Title, picture.View, Decimals);
        foreach (PictureLayer layer in picture.Layers)
        {
            text.Add("<g id=\""u8);
            text.Add(layer.Name);
            text.Add("\" fill-rule=\"evenodd\" stroke-linejoin=\"round\" stroke-linecap=\"round\">\n"u8);
            foreach (Figure figure in layer.Figures)
            {
                Write(text, figure);
            }

            text.Add("</g>\n"u8);
        }

        text.Add("</svg>\n"u8);
        return text.ToArray();
    }

    private static void Write(ByteText text, Figure figure)
    {
        text.Add("<g>"u8);
        SvgHead.AddTitle(text, figure.Title);
        foreach (Shape shape in figure.Shapes.Where(shape => shape.Paths.Length > 0))
        {
            Write(text, shape);
        }

        text.Add("</g>\n"u8);
    }

    private static void Write(ByteText text, Shape shape)
    {
        text.Add("<path fill=\""u8);
        text.Add(shape.Ink.Fill ?? "none");
        if (shape.Ink is { Fill: not null, Opacity: < 1 })
        {
            text.Add("\" fill-opacity=\""u8);
            text.Add(shape.Ink.Opacity, Decimals);
        }

        if (shape.Ink.Stroke is { } stroke)
        {
            text.Add("\" stroke=\""u8);
            text.Add(stroke);
            text.Add("\" stroke-width=\""u8);
            text.Add(shape.Ink.Width, Decimals);
        }

        text.Add("\" d=\""u8);
        foreach (ArcPath path in shape.Paths)
        {
            SvgPaths.AddData(text, path, Decimals);
        }

        text.Add("\"/>\n"u8);
    }
}
