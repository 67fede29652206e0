using System.Security;
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
        WriteHead(text, drawing.Title, extent.Grown(Margin));
        foreach (DrawingLayer layer in drawing.Layers)
        {
            WriteLayer(text, layer);
        }

        text.Add("</svg>\n"u8);
        return text.ToArray();
    }

    private static void WriteHead(ByteText text, string title, Extent view)
    {
        text.Add("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" width=\""u8);
        text.Add(view.Width, Decimals);
        text.Add("mm\" height=\""u8);
        text.Add(view.Height, Decimals);
        text.Add("mm\" viewBox=\""u8);
        AddPair(text, new Point(view.Left, view.Top));
        text.Add(" "u8);
        text.Add(view.Width, Decimals);
        text.Add(" "u8);
        text.Add(view.Height, Decimals);
        text.Add("\">\n<title>"u8);
        text.Add(SecurityElement.Escape(title));
        text.Add("</title>\n"u8);
    }

    private static void WriteLayer(ByteText text, DrawingLayer layer)
    {
        text.Add("<g id=\""u8);
        text.Add(layer.Name);
        text.Add("\" fill=\"none\" stroke=\""u8);
        text.Add(ColourOf(layer.Operation));
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
            WritePath(text, InQuarters(circle));
        }

        text.Add("</g>\n"u8);
    }

    private static void WritePath(ByteText text, ArcPath path)
    {
        text.Add("<path d=\"M"u8);
        AddPair(text, path.Vertices[0].Point);
        for (int i = 0; i < PathPiece.CountIn(path); i++)
        {
            PathPiece piece = PathPiece.At(path, i);

            // Z draws the straight piece back to the first vertex itself.
            if (!(path.Closed && piece.IsLine && piece.To == path.Vertices[0].Point))
            {
                AddPiece(text, piece);
            }
        }

        text.Add(path.Closed ? "Z\"/>\n"u8 : "\"/>\n"u8);
    }

    private static void AddPiece(ByteText text, PathPiece piece)
    {
        if (piece.IsLine)
        {
            text.Add("L"u8);
        }
        else
        {
            text.Add("A"u8);
            double radius = piece.Radius;
            text.Add(radius, Decimals);
            text.Add(" "u8);
            text.Add(radius, Decimals);

            // With Y downwards SVG counts the other sense as positive.
            text.Add(piece.Bulge > 0 ? " 0 0 0 "u8 : " 0 0 1 "u8);
        }

        AddPair(text, piece.To);
    }

    // Quarters: where half circles are read in single precision, the least rounding of their ends moves the centre.
    private static ArcPath InQuarters(Circle circle)
    {
        (double x, double y) = (circle.Centre.X, circle.Centre.Y);
        double bulge = Math.Tan(Math.PI / 8);
        return new(
        [
            new(new Point(x + circle.Radius, y), bulge),
            new(new Point(x, y + circle.Radius), bulge),
            new(new Point(x - circle.Radius, y), bulge),
            new(new Point(x, y - circle.Radius), bulge),
        ], Closed: true);
    }

    private static void AddPair(ByteText text, Point point)
    {
        text.Add(point.X, Decimals);
        text.Add(" "u8);
        text.Add(-point.Y, Decimals);
    }

    // The same operation has the same colour in each file; the colours tell groups apart and mean nothing to a machine.
    private static string ColourOf(Operation operation) => operation switch
    {
        Operation.CutOutside => "#000000",
        Operation.CutHoles => "#b34700",
        Operation.Engrave => "#00663d",
        Operation.Note => "#808080",
        _ => throw new ArgumentOutOfRangeException(nameof(operation), operation, null),
    };
}
