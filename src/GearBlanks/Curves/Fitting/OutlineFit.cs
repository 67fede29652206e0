using System.Collections.Immutable;

namespace GearBlanks.Curves.Fitting;

/// <summary>Turns an exact outline into a path that files can carry.</summary>
public static class OutlineFit
{
    /// <summary>Least tolerance, mm: below it the rounding of written numbers matters.</summary>
    public const double LeastTolerance = 1e-6;

    /// <summary>
    /// The outline as arcs (tangent to one another, none over 90 degrees) or chords (vertices on the curve). Each piece is proved to lie
    /// within the tolerance of the exact curve. A curve of the pattern is fitted once; its mirror images and its turned copies have the same
    /// pieces and the same bulges.
    /// </summary>
    /// <param name="outline">The exact outline.</param>
    /// <param name="tolerance">Greatest distance between a piece and the curve, mm, at least <see cref="LeastTolerance"/>.</param>
    /// <param name="kind">Arcs or chords.</param>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is too small or not a number.</exception>
    public static ArcPath Fit(Outline outline, double tolerance, Pieces kind = Pieces.Arcs)
    {
        if (!(tolerance >= LeastTolerance))
        {
            throw new ArgumentOutOfRangeException(nameof(tolerance), tolerance, "The tolerance is below what a file can carry.");
        }

        var fitted = new Dictionary<Curve, List<Piece>>();
        PathVertex[] pattern = [.. outline.Pattern
            .SelectMany(curve => FitPlaced(curve, tolerance, kind, fitted))
            .Select(piece => new PathVertex(piece.From, piece.Bulge))];
        ImmutableArray<PathVertex>.Builder vertices = ImmutableArray.CreateBuilder<PathVertex>(pattern.Length * outline.Repeats);
        for (int i = 0; i < outline.Repeats; i++)
        {
            Motion turn = Motion.TurnStep(i, outline.Repeats);
            foreach (PathVertex vertex in pattern)
            {
                vertices.Add(vertex with { Point = turn.Apply(vertex.Point) });
            }
        }

        return new ArcPath(vertices.MoveToImmutable(), true);
    }

    // Fitted where the curve stands by itself, growing with its parameter, so that equal curves share one fit.
    private static List<Piece> FitPlaced(Curve curve, double tolerance, Pieces kind, Dictionary<Curve, List<Piece>> fitted)
    {
        bool isBackward = curve.End < curve.Start;
        Curve forward = isBackward ? curve.Reversed() : curve;
        (Curve own, Motion placement) = forward switch
        {
            Involute involute => (involute with { Placement = Motion.None }, involute.Placement),
            Trochoid trochoid => (trochoid with { Placement = Motion.None }, trochoid.Placement),
            _ => (forward, Motion.None),
        };
        if (!fitted.TryGetValue(own, out List<Piece>? pieces))
        {
            fitted[own] = pieces = CurveFit.Fit(own, tolerance, kind);
        }

        IEnumerable<Piece> placed = pieces.Select(piece => piece.Moved(placement));
        return [.. isBackward ? placed.Reverse().Select(piece => piece.Reversed()) : placed];
    }
}
