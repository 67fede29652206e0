namespace GearBlanks.Curves.Fitting;

/// <summary>The fewest lines or arcs for one exact curve within a tolerance; joints and ends lie on the curve.</summary>
internal static class CurveFit
{
    /// <summary>Bulge of a quarter turn, the most of one arc.</summary>
    public static readonly double QuarterTurnBulge = Math.Tan(Math.PI / 8);

    // Enough that the first division is good; its errors only cost steps, never accuracy.
    private const int DensitySteps = 24;
    private const int DensityStepsAChord = 4;

    // So many arcs over the first count are tried before the surer way.
    private const int MostExtra = 4;

    // No tolerance that files can carry asks for more; a curve that does is a programming error.
    private const int MostChords = 1_000_000;

    /// <summary>Fits a curve that grows with its parameter.</summary>
    /// <param name="curve">The curve.</param>
    /// <param name="exactStart">True where the tangent at its first point must be the curve's.</param>
    /// <param name="exactEnd">True where the tangent at its last point must be the curve's.</param>
    /// <param name="tolerance">Tolerance, mm.</param>
    /// <param name="kind">Arcs or chords.</param>
    public static FittedCurve Fit(Curve curve, bool exactStart, bool exactEnd, double tolerance, Pieces kind) => (curve, kind) switch
    {
        (Line, _) => new([new Piece(curve.StartPoint, 0, curve.EndPoint)]),
        (Arc arc, Pieces.Arcs) => new(Quarters(arc)),
        (_, Pieces.Arcs) => Arcs(curve, exactStart, exactEnd, tolerance),
        _ => new(Chords(curve, tolerance)),
    };

    private static Piece[] Quarters(Arc arc)
    {
        int count = (int)Math.Ceiling(Math.Abs(arc.Sweep) / (Math.PI / 2 * (1 + 1e-12)));
        double bulge = Math.Tan(arc.Sweep / count / 4);
        var pieces = new Piece[count];
        Point from = arc.StartPoint;
        for (int i = 0; i < count; i++)
        {
            Point to = arc.PointAt(arc.Start + (arc.Sweep * (i + 1) / count));
            pieces[i] = new Piece(from, bulge, to);
            from = to;
        }

        return pieces;
    }

    private static FittedCurve Arcs(Curve curve, bool exactStart, bool exactEnd, double tolerance)
    {
        var density = new Density(curve, tolerance, Pieces.Arcs, stackalloc double[(2 * DensitySteps) + 2]);
        var chain = new ArcChain(curve, exactStart, exactEnd, tolerance);
        int first = ArcChain.FirstCount(density.Total, exactStart, exactEnd);
        for (int count = first; count <= first + MostExtra; count++)
        {
            if (chain.TryFit(density, count) is { } pieces)
            {
                return new(pieces);
            }
        }

        return new(Biarcs.Fit(curve, density, tolerance), true);
    }

    private static Piece[] Chords(Curve curve, double tolerance)
    {
        var coarse = new Density(curve, tolerance, Pieces.Chords, stackalloc double[(2 * DensitySteps) + 2]);
        int steps = Math.Max(DensitySteps, DensityStepsAChord * (int)Math.Min(MostChords, coarse.Total));
        var density = new Density(curve, tolerance, Pieces.Chords, new double[(2 * steps) + 2]);
        for (int count = Math.Max(1, (int)Math.Ceiling(density.Total - 0.01)); count <= MostChords; count += 1 + (count / 256))
        {
            if (TryChords(curve, density, count, tolerance) is { } pieces)
            {
                return pieces;
            }
        }

        throw new ArgumentOutOfRangeException(nameof(tolerance), tolerance, "The tolerance is too small for the size of the curve.");
    }

    private static Piece[]? TryChords(Curve curve, in Density density, int count, double tolerance)
    {
        var pieces = new Piece[count];
        double start = curve.Start;
        Point from = curve.StartPoint;
        for (int i = 0; i < count; i++)
        {
            double end = i == count - 1 ? curve.End : density.ParameterAt((i + 1.0) / count);
            Point to = curve.PointAt(end);
            pieces[i] = new Piece(from, 0, to);
            if (!Deviation.IsProved(curve, start, end, pieces[i], tolerance))
            {
                return null;
            }

            (start, from) = (end, to);
        }

        return pieces;
    }
}

/// <summary>A curve's pieces in order of travel, and whether the surer way with more of them had to be taken.</summary>
internal readonly record struct FittedCurve(Piece[] Pieces, bool IsFallback = false);
