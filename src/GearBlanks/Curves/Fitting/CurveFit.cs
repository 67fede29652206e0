using MathNet.Numerics.RootFinding;

namespace GearBlanks.Curves.Fitting;

/// <summary>Fits one exact curve by lines and arcs within a tolerance; the ends and their tangents stay exact.</summary>
internal static class CurveFit
{
    // A guard against a hang only: the bracketed root takes under twenty steps.
    private const int MaxSteps = 200;

    // Where two arcs meet need not be known better: their tangents then differ by less than a kink that any reader sees.
    private const double RelativeRounding = 1e-14;

    // rad: far below what a file's decimals can tell.
    private const double LeastKink = 1e-12;

    private static readonly double QuarterTurnBulge = Math.Tan(Math.PI / 8);

    // No tolerance that files can carry asks for more; a curve that does is a programming error.
    private const int MostPieces = 100_000;

    public static List<Piece> Fit(Curve curve, double tolerance, Pieces kind) => curve switch
    {
        Line => [new Piece(curve.StartPoint, 0, curve.EndPoint)],
        Arc arc when kind == Pieces.Arcs => Quarters(arc),
        Arc arc => Divide(arc, arc.Start, arc.End, tolerance, kind),
        _ => FitStretches(curve, tolerance, kind),
    };

    private static List<Piece> Quarters(Arc arc)
    {
        int count = (int)Math.Ceiling(Math.Abs(arc.Sweep) / (Math.PI / 2 * (1 + 1e-12)));
        double bulge = Math.Tan(arc.Sweep / count / 4);
        var pieces = new List<Piece>(count);
        for (int i = 0; i < count; i++)
        {
            Point from = arc.PointAt(arc.Start + (arc.Sweep * i / count));
            pieces.Add(new Piece(from, bulge, arc.PointAt(arc.Start + (arc.Sweep * (i + 1) / count))));
        }

        return pieces;
    }

    private static List<Piece> FitStretches(Curve curve, double tolerance, Pieces kind)
    {
        var pieces = new List<Piece>();
        double start = curve.Start;
        foreach (double end in curve.CurvatureExtrema.Append(curve.End))
        {
            pieces.AddRange(Divide(curve, start, end, tolerance, kind));
            start = end;
        }

        return pieces;
    }

    private static List<Piece> Divide(Curve curve, double start, double end, double tolerance, Pieces kind)
    {
        var stretch = new Stretch(curve, start, end, kind);
        for (int count = 1; count <= MostPieces; count += 1 + (count / 16))
        {
            if (TryDivide(curve, stretch, count, tolerance, kind) is { } pieces)
            {
                return pieces;
            }
        }

        throw new ArgumentOutOfRangeException(nameof(tolerance), tolerance, "The tolerance is too small for the size of the curve.");
    }

    private static List<Piece>? TryDivide(Curve curve, Stretch stretch, int count, double tolerance, Pieces kind)
    {
        var pieces = new List<Piece>(2 * count);
        for (int i = 0; i < count; i++)
        {
            double from = stretch.ParameterAt(i, count);
            double to = stretch.ParameterAt(i + 1, count);
            bool proved = kind == Pieces.Arcs
                ? TryBiarc(curve, from, to, tolerance, pieces)
                : TryChord(curve, from, to, tolerance, pieces);
            if (!proved)
            {
                return null;
            }
        }

        return pieces;
    }

    private static bool TryChord(Curve curve, double from, double to, double tolerance, List<Piece> pieces)
    {
        var chord = new Piece(curve.PointAt(from), 0, curve.PointAt(to));
        pieces.Add(chord);
        return Deviation.IsProved(curve, from, to, chord, tolerance);
    }

    // Two arcs, tangent to the curve at both ends and to each other, that meet on the curve.
    private static bool TryBiarc(Curve curve, double from, double to, double tolerance, List<Piece> pieces)
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
        return Math.Max(Math.Abs(first.Bulge), Math.Abs(second.Bulge)) <= QuarterTurnBulge
            && Deviation.IsProved(curve, from, split, first, tolerance)
            && Deviation.IsProved(curve, split, to, second, tolerance);
    }
}
