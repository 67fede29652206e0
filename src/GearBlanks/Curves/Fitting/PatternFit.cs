namespace GearBlanks.Curves.Fitting;

/// <summary>Fits each curve of an outline's pattern, equal curves once: where the curve stands by itself, growing with its parameter.</summary>
internal static class PatternFit
{
    // rad: a lesser corner keeps its angle, a greater one may change by the little that free tangents turn.
    private const double LeastCorner = 0.01;

    /// <summary>The pieces of each curve of the pattern, before its placement and in the sense in which its parameter grows.</summary>
    public static FittedCurve[] Fit(Outline outline, double tolerance, Pieces kind)
    {
        var fitted = new FittedCurve[outline.Pattern.Length];
        var known = new Dictionary<(Curve, bool, bool), FittedCurve>(4);
        bool isSmooth = IsSmoothBefore(outline, 0);
        for (int i = 0; i < fitted.Length; i++)
        {
            Curve curve = outline.Pattern[i];
            bool isSmoothNext = IsSmoothBefore(outline, i + 1);
            Curve own = Own(curve);
            var key = IsBackward(curve) ? (own, isSmoothNext, isSmooth) : (own, isSmooth, isSmoothNext);
            if (!known.TryGetValue(key, out fitted[i]))
            {
                known[key] = fitted[i] = CurveFit.Fit(own, key.Item2, key.Item3, tolerance, kind);
            }

            isSmooth = isSmoothNext;
        }

        return fitted;
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

    // Of the joint before a curve; the one after the pattern's last is that before its first, one step on.
    private static bool IsSmoothBefore(Outline outline, int index)
    {
        int count = outline.Pattern.Length;
        Curve next = outline.Pattern[index % count];
        Curve before = outline.Pattern[(index + count - 1) % count];
        Vector arriving = before.TangentAt(before.End);
        Vector leaving = next.TangentAt(next.Start);
        if (index % count == 0)
        {
            leaving = Motion.TurnStep(1, outline.Repeats).Apply(leaving);
        }

        return Math.Abs(arriving.Cross(leaving)) < LeastCorner && arriving.Dot(leaving) > 0;
    }
}
