using GearBlanks.Curves;
using SkiaSharp;

namespace GearBlanks.Files.Png;

/// <summary>Paths of lines and arcs as Skia's; an arc is a rational quadratic there, which is a circle's arc exactly.</summary>
internal static class PngPaths
{
    /// <summary>The path in pixels.</summary>
    public static SKPath Of(ArcPath path, PngView view)
    {
        using var builder = new SKPathBuilder();
        builder.MoveTo(view.At(path.Vertices[0].Point));
        for (int i = 0; i < PathPiece.CountIn(path); i++)
        {
            Add(builder, PathPiece.At(path, i), view);
        }

        if (path.Closed)
        {
            builder.Close();
        }

        return builder.Detach();
    }

    // With b = tan(sweep / 4): tan(sweep / 2) = 2 b / (1 - b2), and the weight cos(sweep / 2) = (1 - b2) / (1 + b2).
    private static void Add(SKPathBuilder builder, PathPiece piece, PngView view)
    {
        if (piece.IsLine)
        {
            builder.LineTo(view.At(piece.To));
            return;
        }

        double square = piece.Bulge * piece.Bulge;
        Vector chord = piece.To - piece.From;
        Point control = piece.From + (chord * 0.5) - (chord.TurnedLeft * (piece.Bulge / (1 - square)));
        builder.ConicTo(view.At(control), view.At(piece.To), (float)((1 - square) / (1 + square)));
    }
}
