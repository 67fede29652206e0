using System.Collections.Immutable;

namespace GearBlanks.Curves.Fitting;

/// <summary>How many pieces each involute and fillet of an outline's pattern takes, beside the fewest that exist with their joints on the curve.</summary>
/// <param name="Curve">The curve as it stands in the pattern.</param>
/// <param name="Pieces">Pieces taken.</param>
/// <param name="Least">The fewest, as a fraction: the whole least is the next whole number.</param>
/// <param name="IsFallback">True where the way to few pieces did not succeed.</param>
internal readonly record struct PieceCounts(Curve Curve, int Pieces, double Least, bool IsFallback)
{
    private const int Steps = 2000;

    /// <summary>The fewest pieces that can be, at least 1.</summary>
    public int WholeLeast => Math.Max(1, (int)Math.Ceiling(Least));

    /// <summary>Counts for the involutes and fillets of an outline's pattern, in its order.</summary>
    public static ImmutableArray<PieceCounts> Of(Outline outline, double tolerance, Pieces kind = Fitting.Pieces.Arcs)
    {
        FittedCurve[] fitted = PatternFit.Fit(outline, tolerance, kind);
        return [.. outline.Pattern
            .Select((curve, i) => new PieceCounts(curve, fitted[i].Pieces.Length, LeastOf(curve, tolerance, kind), fitted[i].IsFallback))
            .Where(count => count.Curve is Involute or Trochoid)];
    }

    /// <summary>The fewest pieces of a curve, as a fraction: the integral of their density.</summary>
    public static double LeastOf(Curve curve, double tolerance, Pieces kind) =>
        new Density(PatternFit.IsBackward(curve) ? curve.Reversed() : curve, tolerance, kind, Steps).Total;
}
