using System.Collections.Immutable;

namespace GearBlanks.Curves.Offsets;

/// <summary>
/// The path of a beam's centre that touches an outline all along from one side: exact curves again. Where the beam is round, an outline
/// that repeats a pattern gives one that does; where it is not, every repetition differs.
/// </summary>
internal static class OutlineOffset
{
    // Of the beam's width: where pieces touch exactly, a beam that is so little wider or narrower leaves no doubt. Far below what a file carries.
    private static readonly double[] Nudges = [1, 1 + 1e-7, 1 - 1e-7, 1 + 1e-6, 1 - 1e-6];

    // Ends that are computed by different formulas meet so well; half of what an outline may have.
    private const double Closure = 5e-12;

    // A flank that loses more is one that the beam does not get along.
    private const double LeastShareOfInvolute = 0.5;

    private const int Samples = 17;

    /// <summary>The offset of an outline.</summary>
    /// <param name="outline">The outline, counter-clockwise.</param>
    /// <param name="beam">The beam.</param>
    /// <param name="outward">True where the beam runs outside the outline.</param>
    public static OffsetOutline Of(Outline outline, Beam beam, bool outward)
    {
        OffsetOutline result = new(null, OffsetLoss.All, 0);
        foreach (double nudge in Nudges)
        {
            result = Try(outline, beam.Times(nudge), outward ? 1 : -1);
            if (result.Shape is not null)
            {
                return result;
            }
        }

        return result;
    }

    private static OffsetOutline Try(Outline outline, Beam beam, int side)
    {
        // Neighbours are told apart from three repetitions on.
        bool keeps = beam.IsRound && outline.Repeats > 2;
        int repeats = keeps ? outline.Repeats : 1;
        Curve[] pattern = [.. keeps ? outline.Pattern : outline.Curves()];
        double closure = Closure * (1 + pattern.Max(curve => curve.StartPoint.Radius));
        List<RawPiece> raw = RawOffset.Of(pattern, Motion.TurnStep(1, repeats), beam, side, closure);
        if (raw.Count == 0)
        {
            return new OffsetOutline(null, OffsetLoss.All, 0);
        }

        var clearance = new Clearance(Around(pattern, repeats), beam);
        List<(Curve Curve, int Piece)>? edge = OffsetWalk.Of(new CrossedPieces(raw, repeats, side), clearance);
        if (edge is null or [] || LosesSide(pattern, raw, edge, beam))
        {
            return new OffsetOutline(null, edge is [] ? OffsetLoss.All : OffsetLoss.Side, 0);
        }

        ImmutableArray<Curve> curves = [.. edge.Select(stretch => stretch.Curve)];
        var fromEdge = new Clearance(Around(curves, repeats), beam);
        double unreached = pattern.SelectMany(PointsOn).Max(point => fromEdge.Of(point)) - 1;
        return new OffsetOutline(new Outline(curves, repeats), OffsetLoss.None, unreached < 1e-6 ? 0 : unreached);
    }

    // With the neighbours of a pattern that repeats, and one more where the edge leads over into the next.
    private static IEnumerable<Curve> Around(IReadOnlyList<Curve> pattern, int repeats) => repeats == 1
        ? pattern
        : Enumerable.Range(-1, 4).SelectMany(i => pattern.Select(curve => curve.Moved(Motion.TurnStep(i, repeats))));

    // Hollow rounds and short sides in hollow corners may vanish: a beam leaves its own round there. A side longer than its half width may not, nor a flank.
    private static bool LosesSide(Curve[] pattern, List<RawPiece> raw, List<(Curve Curve, int Piece)> edge, Beam beam)
    {
        var kept = new double[pattern.Length];
        foreach ((Curve curve, int piece) in edge.Where(stretch => raw[stretch.Piece].Source >= 0))
        {
            kept[raw[piece].Source] += curve.Length / raw[piece].Curve.Length;
        }

        return pattern.Where((curve, i) => curve switch
        {
            Involute => kept[i] < LeastShareOfInvolute,
            Line => kept[i] == 0 && curve.Length >= beam.Least,
            _ => false,
        }).Any();
    }

    private static IEnumerable<Point> PointsOn(Curve curve) =>
        Enumerable.Range(0, Samples).Select(i => curve.PointAt(curve.Start + ((curve.End - curve.Start) * i / (Samples - 1))));
}
