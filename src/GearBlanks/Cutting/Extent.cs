using GearBlanks.Curves;

namespace GearBlanks.Cutting;

/// <summary>The smallest upright rectangle around shapes, mm; exact for arcs.</summary>
/// <param name="Left">Least X, mm.</param>
/// <param name="Bottom">Least Y, mm.</param>
/// <param name="Right">Greatest X, mm.</param>
/// <param name="Top">Greatest Y, mm.</param>
public readonly record struct Extent(double Left, double Bottom, double Right, double Top)
{
    /// <summary>The extent of nothing: joined with any other it gives the other.</summary>
    public static Extent Nothing { get; } =
        new(double.PositiveInfinity, double.PositiveInfinity, double.NegativeInfinity, double.NegativeInfinity);

    /// <summary>Size along X, mm; negative for nothing.</summary>
    public double Width => Right - Left;

    /// <summary>Size along Y, mm; negative for nothing.</summary>
    public double Height => Top - Bottom;

    /// <summary>True where there is nothing to surround.</summary>
    public bool IsNothing => Left > Right;

    /// <summary>The extent of all shapes of a drawing, notes included.</summary>
    public static Extent Of(Drawing drawing) =>
        drawing.Layers.Aggregate(Nothing, (extent, layer) => extent.With(Of(layer)));

    /// <summary>The extent of one layer's shapes.</summary>
    public static Extent Of(DrawingLayer layer) =>
        layer.Circles.Aggregate(
            layer.Paths.Aggregate(Nothing, (extent, path) => extent.With(Of(path))),
            (extent, circle) => extent.With(Around(circle.Centre, circle.Radius)));

    /// <summary>The extent of a path.</summary>
    public static Extent Of(ArcPath path)
    {
        Extent extent = Nothing;
        for (int i = 0; i < PathPiece.CountIn(path); i++)
        {
            extent = extent.With(Of(PathPiece.At(path, i)));
        }

        return extent;
    }

    /// <summary>The extent that surrounds both.</summary>
    public Extent With(Extent other) => new(
        Math.Min(Left, other.Left), Math.Min(Bottom, other.Bottom), Math.Max(Right, other.Right), Math.Max(Top, other.Top));

    /// <summary>The extent with a margin on every side, mm.</summary>
    public Extent Grown(double margin) => new(Left - margin, Bottom - margin, Right + margin, Top + margin);

    private static Extent Around(Point point, double distance) =>
        new Extent(point.X, point.Y, point.X, point.Y).Grown(distance);

    private static Extent Of(PathPiece piece)
    {
        Extent ends = Around(piece.From, 0).With(Around(piece.To, 0));
        if (piece.IsLine)
        {
            return ends;
        }

        Point centre = piece.Centre;
        Extent circle = Around(centre, piece.Radius);
        return new Extent(
            Passes(piece, circle.Left, centre.Y) ? circle.Left : ends.Left,
            Passes(piece, centre.X, circle.Bottom) ? circle.Bottom : ends.Bottom,
            Passes(piece, circle.Right, centre.Y) ? circle.Right : ends.Right,
            Passes(piece, centre.X, circle.Top) ? circle.Top : ends.Top);
    }

    // A counter-clockwise arc is the part of its circle to the right of its chord.
    private static bool Passes(PathPiece piece, double x, double y) =>
        (piece.To - piece.From).Cross(new Point(x, y) - piece.From) * piece.Bulge < 0;
}
