namespace GearBlanks.Curves.Fitting;

/// <summary>
/// Tangent-continuous arcs through joints on a curve, near the fewest that a tolerance allows.
/// Where an arc's tangents at its joints are turned by d0 and d1 against the curve's, d0 + d1 is the angle from the first tangent to the chord less
/// that from the chord to the last: about -k' L^2 / 6. The fewest arcs turn each joint by -k' L^2 / 12, which makes the deviation, |k'| L^3 / (72 sqrt 3),
/// alike on both halves; as that is to be the same for all arcs, the turn is proportional to 1 / L. So the unknowns are the joints and one factor of
/// all turns, and each arc gives one equation. Ends where the tangent is exact turn by nothing.
/// </summary>
internal sealed class ArcChain
{
    // An exact tangent lets its arc reach 0.69 of the others' share, and wants the next turn a little less than theirs.
    private const double ExactTangentCost = 0.31;
    private const double NextToExact = 0.944;

    private const int MostSteps = 25;
    private const int LooseSteps = 3;

    // rad: a kink that no reader sees, and rounding does not hide.
    private const double MostKink = 1e-9;

    // Rounds of evening out the deviations before more arcs are taken.
    private const int MostRounds = 4;

    private readonly Curve _curve;
    private readonly bool _exactStart;
    private readonly bool _exactEnd;
    private readonly double _tolerance;

    public ArcChain(Curve curve, bool exactStart, bool exactEnd, double tolerance) =>
        (_curve, _exactStart, _exactEnd, _tolerance) = (curve, exactStart, exactEnd, tolerance);

    /// <summary>How many arcs to try first, from the least number of the curve.</summary>
    public static int FirstCount(double least, bool exactStart, bool exactEnd) =>
        Math.Max(1, (int)Math.Ceiling(least + (ExactTangentCost * ((exactStart ? 1 : 0) + (exactEnd ? 1 : 0))) - 0.1));

    /// <summary>The arcs, or null where so many do not keep the tolerance.</summary>
    public Piece[]? TryFit(in Density density, int count)
    {
        var joints = new CurveState[count + 1];
        var parameters = new double[count + 1];
        var factors = new double[count + 1];
        var shares = new double[count + 1];
        double before = _exactStart && count > 1 ? ExactTangentCost : 0;
        double whole = count - before - (_exactEnd && count > 1 ? ExactTangentCost : 0);
        for (int i = 0; i <= count; i++)
        {
            parameters[i] = i == 0 ? _curve.Start : i == count ? _curve.End : density.ParameterAt((i - before) / whole);
            factors[i] = (i == 1 && _exactStart) || (i == count - 1 && _exactEnd) ? NextToExact : 1;
            joints[i] = _curve.StateAt(parameters[i]);
        }

        if (_exactStart)
        {
            factors[0] = 0;
        }

        if (_exactEnd)
        {
            factors[count] = 0;
        }

        var pieces = new Piece[count];
        var deviations = new double[count];
        for (int round = 0; round < MostRounds; round++)
        {
            if (!TrySolve(parameters, joints, factors, shares, pieces))
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

            if (greatest <= _tolerance)
            {
                return AreProved(parameters, pieces) ? pieces : null;
            }

            if (mean * mean * mean > _tolerance)
            {
                return null;
            }

            EvenOut(factors, deviations, mean);
        }

        return null;
    }

    private bool AreProved(double[] parameters, Piece[] pieces)
    {
        for (int i = 0; i < pieces.Length; i++)
        {
            if (Math.Abs(pieces[i].Bulge) > CurveFit.QuarterTurnBulge
                || !Deviation.IsProved(_curve, parameters[i], parameters[i + 1], pieces[i], _tolerance))
            {
                return false;
            }
        }

        return true;
    }

    private static void EvenOut(double[] factors, double[] deviations, double mean)
    {
        for (int i = 0; i < factors.Length; i++)
        {
            double left = mean / Math.Cbrt(deviations[Math.Max(0, i - 1)]);
            double right = mean / Math.Cbrt(deviations[Math.Min(deviations.Length - 1, i)]);
            factors[i] *= Math.Clamp(((left * left) + (right * right)) / 2, 0.5, 2);
        }
    }

    private bool TrySolve(double[] parameters, CurveState[] joints, double[] factors, double[] shares, Piece[] pieces)
    {
        int count = pieces.Length;
        Span<double> fixedPart = count < 64 ? stackalloc double[count + 1] : new double[count + 1];
        Span<double> factorPart = count < 64 ? stackalloc double[count + 1] : new double[count + 1];
        double factor = 0;
        for (int step = 0; step < MostSteps; step++)
        {
            if (step < LooseSteps)
            {
                Share(parameters, joints, factors, shares);
            }

            double kink = 0;
            for (int i = 1; i <= count; i++)
            {
                (CurveState a, CurveState b) = (joints[i - 1], joints[i]);
                Vector chord = b.Point - a.Point;
                double length = chord.Length;
                double first = a.Tangent.AngleTo(chord);
                double last = chord.AngleTo(b.Tangent);
                double wanted = shares[i - 1] + shares[i];
                double residual = first - last + (factor * wanted);
                kink = Math.Max(kink, Math.Abs(residual));
                double half = (first + last + (factor * (shares[i - 1] - shares[i]))) / 2;
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

            if (step >= LooseSteps && kink <= MostKink)
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

    // The turn of each joint but for the common factor: it changes its sense where the curvature has an extremum.
    private void Share(double[] parameters, CurveState[] joints, double[] factors, double[] shares)
    {
        IReadOnlyList<double> extrema = _curve.CurvatureExtrema;
        int last = joints.Length - 1;
        for (int i = 0; i <= last; i++)
        {
            double span = joints[Math.Min(last, i + 1)].Length - joints[Math.Max(0, i - 1)].Length;
            double sense = extrema.Count > 0 && parameters[i] > extrema[0] ? -1 : 1;
            shares[i] = sense * factors[i] * (i == 0 || i == last ? 1 : 2) / span;
        }
    }
}
