namespace GearBlanks.Curves.Fitting;

/// <summary>The fewest lines or arcs for one exact curve within a tolerance; joints and ends lie on the curve.</summary>
internal static class CurveFit
{
    /// <summary>Bulge of a quarter turn, the most of one arc.</summary>
    public static readonly double QuarterTurnBulge = Math.Tan(Math.PI / 8);

    // Enough that the first division is good; its errors only cost steps, never accuracy.
    private const int DensitySteps = 24;
    private const int DensityStepsAChord = 4;

    // Rounding of the integral, in chords.
    private const double LooseTotal = 1e-3;

    // Leaves the longest chord unknown by so little that it costs none.
    private const int ChordHalvings = 14;
    private const int MostHalvings = 60;

    // So many arcs over the first count are tried before the surer way.
    private const int MostExtra = 4;

    // No tolerance that files can carry asks for more; a curve that does is a programming error.
    private const int MostChords = 1_000_000;

    /// <summary>Fits a curve that grows with its parameter.</summary>
    /// <param name="curve">The curve.</param>
    /// <param name="startTurn">Angle from the curve's first tangent to that of the arcs, rad: 0 for the same, null where the arcs may choose.</param>
    /// <param name="endTurn">The same for the last tangent.</param>
    /// <param name="tolerance">Tolerance, mm.</param>
    /// <param name="kind">Arcs or chords.</param>
    /// <returns>The pieces; none where given turns other than 0 cannot be met.</returns>
    public static FittedCurve Fit(Curve curve, double? startTurn, double? endTurn, double tolerance, Pieces kind) => (curve, kind) switch
    {
        (Line, _) => new([new Piece(curve.StartPoint, 0, curve.EndPoint)]),
        (Arc arc, Pieces.Arcs) => new(Quarters(arc)),
        (_, Pieces.Arcs) => Arcs(curve, startTurn, endTurn, tolerance),
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

    private static FittedCurve Arcs(Curve curve, double? startTurn, double? endTurn, double tolerance)
    {
        var density = new Density(curve, tolerance, Pieces.Arcs, stackalloc double[(2 * DensitySteps) + 2]);
        var chain = new ArcChain(curve, startTurn, endTurn, tolerance);
        int first = FirstCount(density.Total, startTurn, endTurn);
        for (int count = first; count <= first + MostExtra; count++)
        {
            if (chain.TryFit(density, count) is { } pieces)
            {
                return new(pieces);
            }
        }

        return startTurn is null or 0 && endTurn is null or 0 ? new(Biarcs.Fit(curve, density, tolerance), true) : default;
    }

    // A given tangent costs a third of an arc.
    private static int FirstCount(double least, double? startTurn, double? endTurn)
    {
        double cost = (startTurn == 0 ? ArcChain.ExactTangentCost : 0) + (endTurn == 0 ? ArcChain.ExactTangentCost : 0);
        return Math.Max(1, (int)Math.Ceiling(least + cost));
    }

    private static Piece[] Chords(Curve curve, double tolerance)
    {
        var coarse = new Density(curve, tolerance, Pieces.Chords, stackalloc double[(2 * DensitySteps) + 2]);
        int steps = Math.Max(DensitySteps, DensityStepsAChord * (int)Math.Min(MostChords, coarse.Total));
        var density = new Density(curve, tolerance, Pieces.Chords, new double[(2 * steps) + 2]);
        return TryChords(curve, density, Math.Max(1, (int)Math.Ceiling(density.Total - LooseTotal)), tolerance) ?? GreedyChords(curve, density, tolerance);
    }

    private static Piece[]? TryChords(Curve curve, in Density density, int count, double tolerance)
    {
        var pieces = new Piece[count];
        double start = curve.Start;
        for (int i = 0; i < count; i++)
        {
            double end = i == count - 1 ? curve.End : density.ParameterAt((i + 1.0) / count);
            if (!IsChordProved(curve, start, end, tolerance, out pieces[i]))
            {
                return null;
            }

            start = end;
        }

        return pieces;
    }

    // Each chord as long as the tolerance lets it be: no division has fewer, but the last chord may be short.
    private static Piece[] GreedyChords(Curve curve, in Density density, double tolerance)
    {
        var pieces = new List<Piece>();
        double start = curve.Start;
        double share = 0;
        while (start != curve.End)
        {
            double proved = 0;
            double unproved = Math.Min(1 - share, 2 / density.Total);
            Piece piece = default;
            if (unproved + share >= 1 && IsChordProved(curve, start, curve.End, tolerance, out Piece last))
            {
                pieces.Add(last);
                break;
            }

            for (int i = 0; i < ChordHalvings || (proved == 0 && i < MostHalvings); i++)
            {
                double middle = (proved + unproved) / 2;
                bool isProved = IsChordProved(curve, start, density.ParameterAt(share + middle), tolerance, out Piece tried);
                (proved, unproved, piece) = isProved ? (middle, unproved, tried) : (proved, middle, piece);
            }

            if (proved == 0)
            {
                throw new ArgumentOutOfRangeException(nameof(tolerance), tolerance, "The tolerance is too small for the size of the curve.");
            }

            pieces.Add(piece);
            share += proved;
            start = density.ParameterAt(share);
        }

        return [.. pieces];
    }

    private static bool IsChordProved(Curve curve, double start, double end, double tolerance, out Piece chord)
    {
        chord = new Piece(curve.PointAt(start), 0, curve.PointAt(end));
        return Deviation.IsProved(curve, start, end, chord, tolerance);
    }
}

/// <summary>A curve's pieces in order of travel, and whether the surer way with more of them had to be taken.</summary>
internal readonly record struct FittedCurve(Piece[] Pieces, bool IsFallback = false);
