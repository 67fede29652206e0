using GearBlanks.Curves;

namespace GearBlanks.Files.Svg;

/// <summary>Paths as SVG path data, with real arcs. Y, which points down in SVG, changes its sign.</summary>
internal static class SvgPaths
{
    /// <summary>Adds one path's data, decimals as asked for.</summary>
    public static void AddData(ByteText text, ArcPath path, int decimals)
    {
        text.Add("M"u8);
        AddPair(text, path.Vertices[0].Point, decimals);
        for (int i = 0; i < PathPiece.CountIn(path); i++)
        {
            PathPiece piece = PathPiece.At(path, i);

            // Z draws the straight piece back to the first vertex itself.
            if (!(path.Closed && piece.IsLine && piece.To == path.Vertices[0].Point))
            {
                AddPiece(text, piece, decimals);
            }
        }

        text.Add(path.Closed ? "Z"u8 : ""u8);
    }

    /// <summary>
    /// A circle as quarter arcs: where half circles are read in single precision, the least rounding of their ends moves the centre.
    /// </summary>
    public static ArcPath InQuarters(Circle circle)
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

    /// <summary>Adds a point.</summary>
    public static void AddPair(ByteText text, Point point, int decimals)
    {
        text.Add(point.X, decimals);
        text.Add(" "u8);
        text.Add(-point.Y, decimals);
    }

    private static void AddPiece(ByteText text, PathPiece piece, int decimals)
    {
        if (piece.IsLine)
        {
            text.Add("L"u8);
        }
        else
        {
            text.Add("A"u8);
            double radius = piece.Radius;
            text.Add(radius, decimals);
            text.Add(" "u8);
            text.Add(radius, decimals);

            // With Y downwards SVG counts the other sense as positive.
            text.Add(piece.Bulge > 0 ? " 0 0 0 "u8 : " 0 0 1 "u8);
        }

        AddPair(text, piece.To, decimals);
    }
}
