namespace GearBlanks.Curves.Fitting;

/// <summary>
/// Fits each curve of an outline's pattern where it stands by itself, growing with its parameter, so that equal curves share one fit.
/// Where the outline is smooth the pieces are tangent to one another: to the curves' own tangent beside lines and arcs, to one near it between an
/// involute and a fillet. Where it has a corner their tangents are free.
/// </summary>
internal static class PatternFit
{
    // rad: a lesser corner keeps its angle, a greater one may change by the little that free tangents turn.
    private const double LeastCorner = 0.01;

    /// <summary>The pieces of each curve of the pattern, before its placement and in the sense in which its parameter grows.</summary>
    public static FittedCurve[] Fit(Outline outline, double tolerance, Pieces kind)
    {
        var fits = new KnownFits(tolerance, kind);
        Curve[] own = [.. outline.Pattern.Select(Own)];
        double?[] exact = TangentTurns(outline);
        if (kind == Pieces.Chords)
        {
            return FitAll(outline, own, exact, fits)!;
        }

        return FitAll(outline, own, SharedTurns(outline, own, exact, fits), fits) ?? FitAll(outline, own, exact, fits)!;
    }

    /// <summary>True where the curve's parameter falls on the way.</summary>
    public static bool IsBackward(Curve curve) => curve.End < curve.Start;

    /// <summary>Where a curve stands whose pieces are kept without its placement.</summary>
    public static Motion PlacementOf(Curve curve) => curve switch
    {
        Involute involute => involute.Placement,
        Trochoid trochoid => trochoid.Placement,
        _ => Motion.None,
    };

    private static Curve Own(Curve curve)
    {
        Curve forward = IsBackward(curve) ? curve.Reversed() : curve;
        return forward switch
        {
            Involute involute => involute with { Placement = Motion.None },
            Trochoid trochoid => trochoid with { Placement = Motion.None },
            _ => forward,
        };
    }

    // Null where a curve cannot meet its turns.
    private static FittedCurve[]? FitAll(Outline outline, Curve[] own, double?[] turns, KnownFits fits)
    {
        var fitted = new FittedCurve[own.Length];
        for (int i = 0; i < own.Length; i++)
        {
            Curve curve = outline.Pattern[i];
            double? before = OwnTurn(curve, turns[i]);
            double? after = OwnTurn(curve, turns[i + 1]);
            fitted[i] = IsBackward(curve) ? fits.Fit(own[i], after, before) : fits.Fit(own[i], before, after);
            if (fitted[i].Pieces is null)
            {
                return null;
            }
        }

        return fitted;
    }

    // A mirror reverses a turn; travelling the other way does not.
    private static double? OwnTurn(Curve curve, double? turn) => PlacementOf(curve).IsMirrored ? -turn : turn;

    // The turn of the arcs' tangent against the curves' before each curve, and after the last: 0, or null at a corner.
    private static double?[] TangentTurns(Outline outline)
    {
        int count = outline.Pattern.Length;
        var turns = new double?[count + 1];
        for (int i = 0; i < count; i++)
        {
            Curve before = outline.Pattern[(i + count - 1) % count];
            Curve next = outline.Pattern[i];
            Vector arriving = before.TangentAt(before.End);
            Vector leaving = next.TangentAt(next.Start);
            leaving = i == 0 ? Motion.TurnStep(1, outline.Repeats).Apply(leaving) : leaving;
            turns[i] = Math.Abs(arriving.Cross(leaving)) < LeastCorner && arriving.Dot(leaving) > 0 ? 0 : null;
        }

        turns[count] = turns[0];
        return turns;
    }

    private static double?[] SharedTurns(Outline outline, Curve[] own, double?[] exact, KnownFits fits)
    {
        int count = own.Length;
        double?[] turns = [.. exact];
        for (int i = 0; i < count; i++)
        {
            int before = (i + count - 1) % count;
            if (exact[i] is null || !((own[before], own[i]) is (Trochoid, Involute) or (Involute, Trochoid)))
            {
                continue;
            }

            Side arriving = SideOf(outline.Pattern[before], own[before], false, exact[before]);
            Side leaving = SideOf(outline.Pattern[i], own[i], true, exact[i + 1]);
            turns[i] = own[i] is Involute ? fits.SharedTurn(arriving, leaving) : fits.SharedTurn(leaving, arriving);
        }

        turns[count] = turns[0];
        return turns;
    }

    private static Side SideOf(Curve curve, Curve own, bool leaves, double? other) =>
        new(own, leaves == IsBackward(curve), PlacementOf(curve).IsMirrored, other);
}
