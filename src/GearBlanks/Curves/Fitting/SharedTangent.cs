namespace GearBlanks.Curves.Fitting;

/// <summary>
/// The tangent that the arcs of a fillet and of a flank share at their joint. Each would like it turned its own way and needs up to a third of
/// an arc more for the curve's own tangent, half an arc for the other's wish; so what one has to spare saves the other an arc.
/// </summary>
internal static class SharedTangent
{
    // In arcs: the density is that of many arcs, few do not quite reach it.
    private const double Reserve = 0.03;

    // A turn against a curve's wish costs about so much of an arc a part of that wish, and one towards it saves so much.
    private const double CostAgainst = 0.37;
    private const double GainTowards = 0.33;
    private const double MostTowards = 1.1;
    private const double MostAgainst = 0.7;

    /// <summary>The turn, in the fillet's own sense, with the fewest arcs for both; 0 where none saves any.</summary>
    public static double Between(Side fillet, Side flank, KnownFits fits)
    {
        Wish first = WishOf(fillet, fits);
        Wish second = WishOf(flank, fits);
        (int filletLeast, int flankLeast) = (first.WholeLeast, second.WholeLeast);

        // Where one has to take an arc more, the one with the more arcs: it is the lesser part.
        (int toFirst, int toSecond) = filletLeast < flankLeast ? (0, 1) : (1, 0);
        return TurnFor(fillet, first, filletLeast, flank, second, flankLeast, fits)
            ?? TurnFor(fillet, first, filletLeast + toFirst, flank, second, flankLeast + toSecond, fits)
            ?? TurnFor(fillet, first, filletLeast + toSecond, flank, second, flankLeast + toFirst, fits)
            ?? 0;
    }

    // A turn with which both take no more arcs than given.
    private static double? TurnFor(Side fillet, in Wish first, int firstCount, Side flank, in Wish second, int secondCount, KnownFits fits)
    {
        Span<double> turns = stackalloc double[3];
        if (!TryTurns(first.Range(firstCount), second.Range(secondCount), turns))
        {
            return null;
        }

        foreach (double turn in turns)
        {
            if (CountOf(fillet, turn, fits) <= firstCount && CountOf(flank, turn, fits) <= secondCount)
            {
                return turn;
            }
        }

        return null;
    }

    private static int CountOf(Side side, double turn, KnownFits fits)
    {
        double own = side.IsMirrored ? -turn : turn;
        FittedCurve fitted = side.AtEnd ? fits.Fit(side.Own, side.OtherTurn, own) : fits.Fit(side.Own, own, side.OtherTurn);
        return fitted.Pieces is null ? int.MaxValue : fitted.Pieces.Length;
    }

    // Of the turns that suit both: the curve's own tangent or what is next to it, what lies amid, and the farthest.
    private static bool TryTurns((double Low, double High) first, (double Low, double High) second, Span<double> turns)
    {
        (double low, double high) = (Math.Max(first.Low, second.Low), Math.Min(first.High, second.High));
        if (!(low <= high))
        {
            return false;
        }

        turns[0] = Math.Clamp(0, low, high);
        turns[1] = (low + high) / 2;
        turns[2] = Math.Abs(low) > Math.Abs(high) ? low : high;
        return true;
    }

    private static Wish WishOf(Side side, KnownFits fits)
    {
        Curve curve = side.Own;
        Density density = fits.DensityOf(curve);
        double least = density.Total;
        double share = Math.Min(1, 1 / least);
        double inner = density.ParameterAt(side.AtEnd ? 1 - share : share);
        double joint = side.AtEnd ? curve.End : curve.Start;
        double length = Math.Abs(curve.LengthBetween(inner, joint)) * Math.Max(1, 1 / least);
        double rise = (curve.CurvatureAt(joint) - curve.CurvatureAt(inner)) * (side.AtEnd ? 1 : -1);
        double sense = (rise > 0) == side.IsMirrored ? 1 : -1;

        // A single arc whose other tangent is given leaves nothing to choose.
        double? only = null;
        if (side.OtherTurn is { } other)
        {
            Vector chord = curve.EndPoint - curve.StartPoint;
            double turn = curve.TangentAt(curve.Start).AngleTo(chord) - chord.AngleTo(curve.TangentAt(curve.End)) - other;
            only = side.IsMirrored ? -turn : turn;
        }

        return new Wish(least, sense * 6 * Math.Sqrt(3) * fits.Tolerance / length, side.OtherTurn.HasValue ? ArcChain.ExactTangentCost : 0, only);
    }

    /// <summary>What one curve would like.</summary>
    /// <param name="Least">The fewest arcs, as a fraction.</param>
    /// <param name="Turn">The turn of its tangent that costs it nothing, rad.</param>
    /// <param name="OtherCost">What its other end costs, in arcs.</param>
    /// <param name="Only">The turn of a single arc, where there is but one.</param>
    private readonly record struct Wish(double Least, double Turn, double OtherCost, double? Only)
    {
        public int WholeLeast => Math.Max(1, (int)Math.Ceiling(Least));

        /// <summary>From which to which turn so many arcs are likely to do; none where the first exceeds the second.</summary>
        public (double Low, double High) Range(int count)
        {
            if (count == 1 && Only is { } only)
            {
                return (only, only);
            }

            double spare = count - Least - OtherCost - Reserve;
            double needed = (ArcChain.ExactTangentCost - spare) / (spare < ArcChain.ExactTangentCost ? GainTowards : CostAgainst);
            (double from, double to) = (Turn * Math.Max(-MostAgainst, needed), Turn * MostTowards);
            return needed > MostTowards ? (1, 0) : Turn > 0 ? (from, to) : (to, from);
        }
    }
}
