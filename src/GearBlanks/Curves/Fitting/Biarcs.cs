using MathNet.Numerics.RootFinding;

namespace GearBlanks.Curves.Fitting;

/// <summary>Pairs of arcs tangent to the curve at both their ends: more of them than need be, but found wherever the curve is regular.</summary>
internal static class Biarcs
{
    // A guard against a hang only: the bracketed root takes under twenty steps.
    private const int MaxSteps = 200;

    // Where two arcs meet need not be known better: their tangents then differ by less than a kink that any reader sees.
    private const double RelativeRounding = 1e-14;

    // rad: far below what a file's decimals can tell.
    private const double LeastKink = 1e-12;

    // No tolerance that files can carry asks for more; a curve that does is a programming error.
    private const int MostPairs = 100_000;

    public static Piece[] Fit(Curve curve, Density density, double tolerance)
    {
        var pieces = new List<Piece>();
        for (int count = 1; count <= MostPairs; count += 1 + (count / 16))
        {
            if (TryDivide(curve, density, count, tolerance, pieces))
            {
                return [.. pieces];
            }
        }

        throw new ArgumentOutOfRangeException(nameof(tolerance), tolerance, "The tolerance is too small for the size of the curve.");
    }

    private static bool TryDivide(Curve curve, Density density, int count, double tolerance, List<Piece> pieces)
    {
        pieces.Clear();
        double from = curve.Start;
        for (int i = 1; i <= count; i++)
        {
            double to = i == count ? curve.End : density.ParameterAt((double)i / count);
            if (!TryPair(curve, from, to, tolerance, pieces))
            {
                return false;
            }

            from = to;
        }

        return true;
    }

    // Two arcs, tangent to the curve at both ends and to each other, that meet on the curve.
    private static bool TryPair(Curve curve, double from, double to, double tolerance, List<Piece> pieces)
    {
        (Point a, Point b) = (curve.PointAt(from), curve.PointAt(to));
        (Vector ta, Vector tb) = (curve.TangentAt(from), curve.TangentAt(to));
        double turn = ta.AngleTo(tb);

        // An arc turns by twice the angle between its tangent and its chord; both together turn as the curve does. At the two ends this has opposite signs.
        double Kink(double t)
        {
            Point at = curve.PointAt(t);
            return (t == from ? 0 : 2 * ta.AngleTo(at - a)) + (t == to ? 0 : 2 * (b - at).AngleTo(tb)) - turn;
        }

        // Of a stretch that is itself an arc, but for rounding, any point will do.
        double split = (from + to) / 2;
        if (Math.Abs(Kink(from)) > LeastKink && !Brent.TryFindRoot(Kink, from, to, Math.Abs(to - from) * RelativeRounding, MaxSteps, out split))
        {
            return false;
        }

        Point joint = curve.PointAt(split);
        var first = Piece.Leaving(a, ta, joint);
        var second = Piece.Arriving(joint, b, tb);
        pieces.Add(first);
        pieces.Add(second);
        return Math.Max(Math.Abs(first.Bulge), Math.Abs(second.Bulge)) <= ArcFit.QuarterTurnBulge
            && Deviation.IsProved(curve, from, split, first, tolerance)
            && Deviation.IsProved(curve, split, to, second, tolerance);
    }
}
