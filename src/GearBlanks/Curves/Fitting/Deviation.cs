namespace GearBlanks.Curves.Fitting;

/// <summary>
/// The distance of a curve from one line or arc, and the proof that it keeps within a tolerance.
/// With c the piece's curvature, n0 its left normal at its first point, w from there and g = c w - n0, the distance f (positive to the right) is told
/// by its power p = f + c f^2 / 2 = (c w^2 - 2 n0 w) / 2. Along the curve, of tangent T, left normal n and curvature k, p' = T g and p'' = c - k M with
/// M = -n g and M' = k p'. Between two points the ranges of k and M bound p'', and that bounds p; a stretch whose bound does not yet prove the
/// tolerance is cut near its extremum.
/// </summary>
internal readonly struct Deviation
{
    // Cut so often, a stretch is far below rounding: the curve is then at the tolerance itself.
    private const int DeepestCut = 40;

    // rad: the bound of M below holds for stretches that turn less than 1 / sqrt(2).
    private const double MostTurn = 0.7;

    private readonly Curve _curve;
    private readonly Point _from;
    private readonly Vector _normal;
    private readonly double _bend;
    private readonly double _most;
    private readonly double _least;

    /// <summary>The deviation of a curve that grows with its parameter from a piece.</summary>
    public Deviation(Curve curve, Piece piece, double tolerance)
    {
        _curve = curve;
        _from = piece.From;
        _bend = piece.Curvature;
        _normal = piece.StartNormal;
        double excess = _bend * tolerance * tolerance / 2;
        (_least, _most) = (excess - tolerance, excess + tolerance);
    }

    /// <summary>True where a stretch between two states of monotone curvature is proved to lie within the tolerance.</summary>
    public static bool IsProved(Curve curve, double start, double end, Piece piece, double tolerance)
    {
        if (IsWithinReach(curve, start, end, piece, tolerance))
        {
            return true;
        }

        if (Math.Abs(piece.Curvature) * tolerance > 0.5)
        {
            return false;
        }

        var deviation = new Deviation(curve, piece, tolerance);
        Node first = deviation.At(start);
        foreach (double extremum in curve.CurvatureExtrema)
        {
            if (extremum > start && extremum < end)
            {
                Node middle = deviation.At(extremum);
                if (!deviation.IsProved(first, middle, DeepestCut))
                {
                    return false;
                }

                first = middle;
            }
        }

        return deviation.IsProved(first, deviation.At(end), DeepestCut);
    }

    // So short that its ends prove it, as with a fillet smaller than the tolerance. An arc of at most a quarter turn strays from its ends by 0.55 of its chord.
    private static bool IsWithinReach(Curve curve, double start, double end, Piece piece, double tolerance)
    {
        double length = curve.LengthBetween(start, end);
        return 0.55 * length <= tolerance
            && Math.Max(curve.PointAt(start).DistanceTo(piece.From), curve.PointAt(end).DistanceTo(piece.To)) + (0.55 * length) <= tolerance;
    }

    /// <summary>
    /// About the greatest distance of a stretch that meets the piece at both ends, mm: at its middle and where the slopes at the ends place the extrema.
    /// </summary>
    public double GreatestNear(double start, double end)
    {
        (Node first, Node last) = (At(start), At(end));
        double greatest = Math.Abs(At((start + end) / 2).Power);

        // With p = 0 at both ends, u (1 - u) (m0 (1 - u) - m1 u) is the cubic of those slopes.
        (double m0, double m1) = (first.Slope, last.Slope);
        double sum = (2 * m0) + m1;
        double root = (m0 * m0) + (m0 * m1) + (m1 * m1);
        double q = sum + (Math.Sign(sum) * Math.Sqrt(root));
        greatest = Math.Max(greatest, ExtremumNear(start, end, m0 / q));
        return Math.Max(greatest, ExtremumNear(start, end, q / (3 * (m0 + m1))));
    }

    private double ExtremumNear(double start, double end, double share)
    {
        if (!(share > 0 && share < 1))
        {
            return 0;
        }

        double parameter = start + ((end - start) * share);
        Node node = At(parameter);
        parameter = Math.Clamp(parameter - (node.Slope / (node.Change(_bend) * node.Speed)), start, end);
        node = At(parameter);
        double change = node.Change(_bend);
        double gain = change == 0 ? 0 : node.Slope * node.Slope / (2 * change);
        return Math.Abs(node.Power - (Math.Abs(gain) < Math.Abs(node.Power) ? gain : 0));
    }

    private Node At(double parameter)
    {
        CurveState state = _curve.StateAt(parameter);
        Vector w = state.Point - _from;
        Vector g = (w * _bend) - _normal;
        return new Node(
            parameter, state.Length, state.Turned, state.Curvature, state.Speed,
            (_bend * w.Dot(w) / 2) - _normal.Dot(w), state.Tangent.Dot(g), -state.Tangent.Cross(g));
    }

    private bool IsProved(in Node first, in Node last, int cuts)
    {
        if (IsOutside(first) || IsOutside(last))
        {
            return false;
        }

        if (IsBounded(first, last))
        {
            return true;
        }

        if (cuts == 0)
        {
            return false;
        }

        double share = first.Slope * last.Slope < 0 ? Math.Clamp(first.Slope / (first.Slope - last.Slope), 0.1, 0.9) : 0.5;
        Node middle = At(first.Parameter + (share * (last.Parameter - first.Parameter)));
        return IsProved(first, middle, cuts - 1) && IsProved(middle, last, cuts - 1);
    }

    private bool IsOutside(in Node node) => !(node.Power >= _least && node.Power <= _most);

    private bool IsBounded(in Node first, in Node last)
    {
        double length = last.Length - first.Length;
        (double low, double high) = first.Curvature < last.Curvature ? (first.Curvature, last.Curvature) : (last.Curvature, first.Curvature);
        double turn = low < 0 && high > 0 ? Math.Max(-low, high) * length : Math.Abs(last.Turned - first.Turned);
        if (turn > MostTurn)
        {
            return false;
        }

        // From the end with the lesser slope on, as long as |M - 1| stays below mu: |p'| <= slope + drift + turn mu, so that |M - M0| <= turn times that.
        // With this mu that is below mu itself, so M never gets there.
        bool isFirst = Math.Abs(first.Slope) < Math.Abs(last.Slope);
        double slope = Math.Abs(isFirst ? first.Slope : last.Slope);
        double across = isFirst ? first.Across : last.Across;
        double drift = Math.Min(
            Math.Max(Math.Abs(_bend - first.Curvature), Math.Abs(_bend - last.Curvature)) * length, (Math.Abs(_bend) * length) + turn);
        double mu = 2 * (Math.Abs(across - 1) + (turn * (slope + drift)));
        double away = turn * (slope + drift + (turn * mu));
        (double leastM, double mostM) = (across - away, across + away);
        double least = _bend - Math.Max(high * leastM, high * mostM);
        double most = _bend - Math.Min(low * leastM, low * mostM);
        double variation = drift + (turn * Math.Max(Math.Abs(leastM - 1), Math.Abs(mostM - 1)));
        return leastM > 0
            && Upper(first.Power, first.Slope, last.Power, last.Slope, length, least, most, variation) <= _most
            && Upper(-first.Power, -first.Slope, -last.Power, -last.Slope, length, -most, -least, variation) <= -_least;
    }

    // The most that p can reach between two points of known value and slope, with its second derivative between two bounds and the whole variation of its slope bounded.
    private static double Upper(double p0, double s0, double p1, double s1, double length, double least, double most, double variation)
    {
        double ends = Math.Max(p0, p1);
        if (most <= 0)
        {
            // Concave: under both tangents.
            return s0 <= 0 || s1 >= 0 ? ends : p0 + (s0 * Math.Clamp((p1 - p0 - (s1 * length)) / (s0 - s1), 0, length));
        }

        double overChord = ends + Math.Min(Math.Max(0, -least) * length * length / 8, variation * length / 4);
        double rise = most * length * length / 2;
        double fromEnds = Math.Min(p0 + (Math.Max(0, s0) * length), p1 + (Math.Max(0, -s1) * length)) + rise;
        return Math.Min(overChord, fromEnds);
    }

    private readonly record struct Node(
        double Parameter, double Length, double Turned, double Curvature, double Speed, double Power, double Slope, double Across)
    {
        public double Change(double bend) => bend - (Curvature * Across);
    }
}
