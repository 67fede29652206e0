namespace GearBlanks.Curves.Fitting;

/// <summary>The fewest chords for one exact curve within a tolerance; vertices lie on the curve.</summary>
internal static class ChordFit
{
    private const int DensityStepsAChord = 4;

    // Rounding of the integral, in chords.
    private const double LooseTotal = 1e-3;

    // Leaves the longest chord unknown by so little that it costs none.
    private const int ChordHalvings = 14;
    private const int MostHalvings = 60;

    // No tolerance that files can carry asks for more; a curve that does is a programming error.
    private const int MostChords = 1_000_000;

    /// <summary>Fits a curve that grows with its parameter.</summary>
    /// <param name="curve">The curve.</param>
    /// <param name="tolerance">Tolerance, mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is far too small for the size of the curve.</exception>
    public static Piece[] Fit(Curve curve, double tolerance)
    {
        double least = new Density(curve, tolerance, Pieces.Chords).Total;
        int steps = Math.Max(Density.UsualSteps, DensityStepsAChord * (int)Math.Min(MostChords, least));
        var density = new Density(curve, tolerance, Pieces.Chords, steps);
        return TryChords(curve, density, Math.Max(1, (int)Math.Ceiling(density.Total - LooseTotal)), tolerance) ?? GreedyChords(curve, density, tolerance);
    }

    private static Piece[]? TryChords(Curve curve, Density density, int count, double tolerance)
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
    private static Piece[] GreedyChords(Curve curve, Density density, double tolerance)
    {
        var pieces = new List<Piece>();
        double start = curve.Start;
        double share = 0;
        while (start != curve.End)
        {
            double proved = 0;
            double unproved = Math.Min(1 - share, 2 / density.Total);
            Piece piece = default;
            if (unproved == 1 - share && IsChordProved(curve, start, curve.End, tolerance, out Piece last))
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
