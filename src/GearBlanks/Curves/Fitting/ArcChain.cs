namespace GearBlanks.Curves.Fitting;

/// <summary>
/// Tangent-continuous arcs through joints on a curve, near the fewest that a tolerance allows.
/// Where an arc's tangents at its joints are turned by d0 and d1 against the curve's, d0 + d1 is the angle from the first tangent to the chord less
/// that from the chord to the last: about -k' L^2 / 6. The fewest arcs turn each joint by -k' L^2 / 12, which makes the deviation, |k'| L^3 / (72 sqrt 3),
/// alike on both halves; as that is to be the same for all arcs, the turn is proportional to 1 / L. So the unknowns are the joints and one factor of
/// all turns, and each arc gives one equation. At ends the turn may be given: by nothing where the tangent is exact.
/// </summary>
internal sealed class ArcChain
{
    // An exact tangent lets its arc reach 0.69 of the others' share, and wants the next turn a little less than theirs.
    public const double ExactTangentCost = 0.31;
    private const double NextToExact = 0.944;

    private const int MostSteps = 25;

    // rad: a kink that no reader sees, and rounding does not hide.
    private const double MostKink = 1e-9;

    // What a point's coordinates leave unknown, as a part of its distance from the origin.
    private const double Rounding = 2e-15;

    // Rounds of evening out the deviations before more arcs are taken.
    private const int MostRounds = 10;

    // Found by trial on gears of 4 to 1000 teeth: where dk/ds falls along the curve, its first turn is better a quarter less.
    private const double FirstTilt = 0.75;

    // How far a round goes before it is known how far it should.
    private const double FirstGain = 0.5;

    // Of an even share of the curve: an arc so much shorter has shrunk to a point, where any tangent will do.
    private const double LeastShare = 1e-3;

    private const int MostOnStack = 64;

    private readonly Curve _curve;
    private readonly double? _startTurn;
    private readonly double? _endTurn;
    private readonly double _tolerance;

    /// <summary>Arcs for a curve that grows with its parameter.</summary>
    /// <param name="curve">The curve.</param>
    /// <param name="startTurn">Angle from the curve's first tangent to the arcs', rad; null where the arcs may choose.</param>
    /// <param name="endTurn">The same for the last tangent.</param>
    /// <param name="tolerance">Tolerance, mm.</param>
    public ArcChain(Curve curve, double? startTurn, double? endTurn, double tolerance) =>
        (_curve, _startTurn, _endTurn, _tolerance) = (curve, startTurn, endTurn, tolerance);

    /// <summary>The arcs, or null where so many do not keep the tolerance.</summary>
    public Piece[]? TryFit(Density density, int count)
    {
        if (TryFit(density, count, 1) is { } pieces)
        {
            return pieces;
        }

        // Where both ends may choose, they rather choose differently.
        return _startTurn.HasValue || _endTurn.HasValue ? null : TryFit(density, count, FirstTilt) ?? TryFit(density, count, 1 / FirstTilt);
    }

    private Piece[]? TryFit(Density density, int count, double tilt)
    {
        var joints = new CurveState[count + 1];
        var parameters = new double[count + 1];
        var shares = new double[count + 1];
        Divide(density, parameters, joints, shares);
        shares[0] *= tilt;
        var pieces = new Piece[count];
        var deviations = new double[count];
        var excess = new double[count + 1];
        double gain = FirstGain;
        for (int round = 0; round < MostRounds; round++)
        {
            if (!TrySolve(parameters, joints, shares, pieces) || HasShrunk(pieces))
            {
                return null;
            }

            double greatest = 0;
            double mean = 0;
            for (int i = 0; i < count; i++)
            {
                deviations[i] = new Deviation(_curve, pieces[i], _tolerance).GreatestNear(parameters[i], parameters[i + 1]);
                greatest = Math.Max(greatest, deviations[i]);
                mean += Math.Cbrt(deviations[i]) / count;
            }

            if (greatest <= _tolerance && AreProved(parameters, pieces))
            {
                return pieces;
            }

            if (mean * mean * mean > _tolerance)
            {
                return null;
            }

            gain = EvenOut(shares, deviations, excess, gain);
        }

        return null;
    }

    private bool HasShrunk(Piece[] pieces)
    {
        double least = LeastShare * _curve.Length / pieces.Length;
        for (int i = 0; i < pieces.Length && pieces.Length > 1; i++)
        {
            if (pieces[i].From.DistanceTo(pieces[i].To) < least)
            {
                return true;
            }
        }

        return false;
    }

    // Equal parts of the density, and turns as constant dk/ds would have them but for their common factor.
    private void Divide(Density density, double[] parameters, CurveState[] joints, double[] shares)
    {
        int last = joints.Length - 1;
        double before = _startTurn.HasValue && last > 1 ? ExactTangentCost : 0;
        double whole = last - before - (_endTurn.HasValue && last > 1 ? ExactTangentCost : 0);
        for (int i = 0; i <= last; i++)
        {
            parameters[i] = i == 0 ? _curve.Start : i == last ? _curve.End : density.ParameterAt((i - before) / whole);
            joints[i] = _curve.StateAt(parameters[i]);
        }

        // The turn changes its sense where the curvature has an extremum.
        IReadOnlyList<double> extrema = _curve.CurvatureExtrema;
        for (int i = 0; i <= last; i++)
        {
            double span = joints[Math.Min(last, i + 1)].Length - joints[Math.Max(0, i - 1)].Length;
            double sense = extrema.Count > 0 && parameters[i] > extrema[0] ? -1 : 1;
            bool isNextToGiven = (i == 1 && _startTurn.HasValue) || (i == last - 1 && _endTurn.HasValue);
            bool isGiven = (i == 0 && _startTurn.HasValue) || (i == last && _endTurn.HasValue);
            shares[i] = isGiven ? 0 : sense * (isNextToGiven ? NextToExact : 1) * (i == 0 || i == last ? 1 : 2) / span;
        }
    }

    private bool AreProved(double[] parameters, Piece[] pieces)
    {
        for (int i = 0; i < pieces.Length; i++)
        {
            if (Math.Abs(pieces[i].Bulge) > ArcFit.QuarterTurnBulge
                || !Deviation.IsProved(_curve, parameters[i], parameters[i + 1], pieces[i], _tolerance))
            {
                return false;
            }
        }

        return true;
    }

    // Turns the joints of arcs that deviate more than the others by less, and the other way; how far depends on how much the last round did.
    private static double EvenOut(double[] shares, double[] deviations, double[] excess, double gain)
    {
        Span<double> now = shares.Length < MostOnStack ? stackalloc double[shares.Length] : new double[shares.Length];
        double mean = 0;
        for (int i = 0; i < now.Length; i++)
        {
            now[i] = Math.Log(Math.Max(deviations[Math.Max(0, i - 1)], deviations[Math.Min(deviations.Length - 1, i)]));
            mean += now[i] / now.Length;
        }

        double before = 0;
        double both = 0;
        for (int i = 0; i < now.Length; i++)
        {
            now[i] -= mean;
            before += excess[i] * excess[i];
            both += excess[i] * now[i];
        }

        gain = before > 0 ? Math.Clamp(gain / Math.Max(0.1, 1 - (both / before)), 0.05, 1) : gain;
        for (int i = 0; i < now.Length; i++)
        {
            excess[i] = now[i];
            shares[i] *= Math.Exp(-gain * Math.Clamp(now[i], -1, 1));
        }

        return gain;
    }

    private bool TrySolve(double[] parameters, CurveState[] joints, double[] shares, Piece[] pieces)
    {
        int count = pieces.Length;
        Span<double> fixedPart = count < MostOnStack ? stackalloc double[count + 1] : new double[count + 1];
        Span<double> factorPart = count < MostOnStack ? stackalloc double[count + 1] : new double[count + 1];
        double factor = 0;
        for (int step = 0; step < MostSteps; step++)
        {
            double kink = 0;
            for (int i = 1; i <= count; i++)
            {
                (CurveState a, CurveState b) = (joints[i - 1], joints[i]);
                Vector chord = b.Point - a.Point;
                double length = chord.Length;
                double first = a.Tangent.AngleTo(chord);
                double last = chord.AngleTo(b.Tangent);
                double wanted = shares[i - 1] + shares[i];
                double firstTurn = (i == 1 ? _startTurn ?? 0 : 0) - (factor * shares[i - 1]);
                double lastTurn = (i == count ? _endTurn ?? 0 : 0) - (factor * shares[i]);
                double residual = first - last - firstTurn - lastTurn;
                kink = Math.Max(kink, Math.Abs(residual) - (Rounding * b.Point.Radius / length));
                double half = (first - firstTurn + last + lastTurn) / 2;
                pieces[i - 1] = new Piece(a.Point, Math.Tan(half / 2), b.Point);
                double atFirst = i == 1 ? 0 : ((2 * a.Tangent.Cross(chord) / (length * length)) - a.Curvature) * a.Speed;
                double atLast = ((2 * chord.Cross(b.Tangent) / (length * length)) - b.Curvature) * b.Speed;
                fixedPart[i] = -residual - (atFirst * fixedPart[i - 1]);
                factorPart[i] = -wanted - (atFirst * factorPart[i - 1]);
                if (i < count)
                {
                    fixedPart[i] /= atLast;
                    factorPart[i] /= atLast;
                }
            }

            if (kink <= MostKink)
            {
                return true;
            }

            // One arc with exact tangents has nothing to give: it fits or it does not.
            if (factorPart[count] == 0)
            {
                return count == 1 && kink <= MostKink;
            }

            double change = -fixedPart[count] / factorPart[count];
            double scale = 1;
            for (int i = 1; i <= count; i++)
            {
                fixedPart[i] += factorPart[i] * change;
                double gap = parameters[i] - parameters[i - 1];
                double shrink = i == count ? fixedPart[i - 1] : fixedPart[i - 1] - fixedPart[i];
                scale = shrink > 0 ? Math.Min(scale, 0.8 * gap / shrink) : scale;
            }

            factor += scale * change;
            if (!double.IsFinite(factor))
            {
                return false;
            }

            for (int i = 1; i < count; i++)
            {
                parameters[i] += scale * fixedPart[i];
                joints[i] = _curve.StateAt(parameters[i]);
            }
        }

        return false;
    }
}
