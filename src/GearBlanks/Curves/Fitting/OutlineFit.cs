using System.Runtime.InteropServices;

namespace GearBlanks.Curves.Fitting;

/// <summary>Turns an exact outline into a path that files can carry.</summary>
public static class OutlineFit
{
    /// <summary>Least tolerance, mm: below it the rounding of written numbers matters.</summary>
    public const double LeastTolerance = 1e-6;

    /// <summary>
    /// The outline as arcs (tangent to one another where the outline is smooth, none over 90 degrees) or chords (vertices on the curve), close to the
    /// fewest. Each piece is proved to lie within the tolerance of the exact curve. A curve of the pattern is fitted once; its mirror images and
    /// its turned copies have the same pieces and the same bulges.
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

        PathVertex[] pattern = Place(outline, PatternFit.Fit(outline, tolerance, kind));
        var vertices = new PathVertex[pattern.Length * outline.Repeats];
        pattern.CopyTo(vertices, 0);
        int at = pattern.Length;
        for (int i = 1; i < outline.Repeats; i++)
        {
            (double sine, double cosine) = Math.SinCos(2 * Math.PI * i / outline.Repeats);
            foreach (PathVertex vertex in pattern)
            {
                (double x, double y) = (vertex.Point.X, vertex.Point.Y);
                vertices[at++] = new PathVertex(new Point((cosine * x) - (sine * y), (sine * x) + (cosine * y)), vertex.Bulge);
            }
        }

        return new ArcPath(ImmutableCollectionsMarshal.AsImmutableArray(vertices), true);
    }

    private static PathVertex[] Place(Outline outline, FittedCurve[] fitted)
    {
        int count = 0;
        foreach (FittedCurve curve in fitted)
        {
            count += curve.Pieces.Length;
        }

        var vertices = new PathVertex[count];
        int at = 0;
        for (int i = 0; i < fitted.Length; i++)
        {
            Curve curve = outline.Pattern[i];
            bool isBackward = PatternFit.IsBackward(curve);
            Motion placement = PatternFit.PlacementOf(curve);
            Piece[] pieces = fitted[i].Pieces;
            for (int j = 0; j < pieces.Length; j++)
            {
                Piece piece = isBackward ? pieces[^(j + 1)] : pieces[j];
                double bulge = isBackward == placement.IsMirrored ? piece.Bulge : -piece.Bulge;
                vertices[at++] = new PathVertex(placement.Apply(isBackward ? piece.To : piece.From), bulge);
            }
        }

        return vertices;
    }
}
