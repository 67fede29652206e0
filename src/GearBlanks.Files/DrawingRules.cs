using GearBlanks.Curves;
using GearBlanks.Cutting;

namespace GearBlanks.Files;

/// <summary>What every drawing must satisfy before it is written. A breach is a programming error, not a user's.</summary>
internal static class DrawingRules
{
    // tan(90 deg / 4), with room for the rounding of a quarter arc's bulge.
    private const double LargestBulge = 0.41421356237309503 + 1e-9;

    // Shorter pieces are no shape but rounding, and their ends would coincide in files of six decimals.
    private const double ShortestPiece = 1e-6;

    /// <summary>Ensures that the drawing can be written, and says how large it is.</summary>
    /// <exception cref="ArgumentException">A rule is broken; the message says which and where.</exception>
    public static Extent Require(Drawing drawing)
    {
        HashSet<string> names = new(StringComparer.OrdinalIgnoreCase);
        foreach (DrawingLayer layer in drawing.Layers)
        {
            Require(layer.Name.Length > 0 && layer.Name.All(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_'), layer, "its name may have letters, digits, - and _ only");
            Require(names.Add(layer.Name), layer, "its name occurs twice");
            foreach (ArcPath path in layer.Paths)
            {
                Require(path, layer);
            }

            Require(layer.Circles.All(circle => circle.Radius > 0 && IsFinite(circle.Centre) && double.IsFinite(circle.Radius)), layer, "a circle has no size or no place");
        }

        Extent extent = Extent.Of(drawing);
        return extent.IsNothing ? throw new ArgumentException($"The drawing '{drawing.Title}' has no shapes.") : extent;
    }

    private static void Require(ArcPath path, DrawingLayer layer)
    {
        bool isCut = layer.Operation is Operation.CutOutside or Operation.CutHoles;
        Require(path.Vertices.Length >= 2, layer, "a path has fewer than two vertices");
        Require(path.Closed || !isCut || layer.IsRouted, layer, "a path that is cut is open");
        Require(path.Closed || path.Vertices[^1].Bulge == 0, layer, "the last vertex of an open path has a bulge");
        for (int i = 0; i < path.Vertices.Length; i++)
        {
            PathVertex vertex = path.Vertices[i];
            Require(IsFinite(vertex.Point) && Math.Abs(vertex.Bulge) <= LargestBulge, layer, "a vertex is not finite, or its arc exceeds 90 degrees");
        }

        for (int i = 0; i < PathPiece.CountIn(path); i++)
        {
            PathPiece piece = PathPiece.At(path, i);
            Require(piece.From.DistanceTo(piece.To) > ShortestPiece, layer, "a path has a piece of no length");
        }
    }

    private static bool IsFinite(Point point) => double.IsFinite(point.X) && double.IsFinite(point.Y);

    private static void Require(bool holds, DrawingLayer layer, string breach)
    {
        if (!holds)
        {
            throw new ArgumentException($"Layer '{layer.Name}' cannot be written: {breach}.");
        }
    }
}
