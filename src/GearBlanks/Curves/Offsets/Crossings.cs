namespace GearBlanks.Curves.Offsets;

/// <summary>
/// Finds where two curves cross. Both are halved, and halves whose bounds are apart are dropped, until what is left turns so little that it
/// crosses at most once; there Newton's method from the crossing of the chords.
/// </summary>
internal sealed class Crossings
{
    // rad: stretches that turn less are taken for nearly straight.
    private const double Straight = 0.02;

    // mm: stretches as short as this that still do not cross clearly only touch.
    private const double Touching = 1e-9;

    // Curves that run on one another would be halved without end; that many halvings never happen where they cross.
    private const int MostPairs = 4000;

    private const int MaxSteps = 40;

    private readonly List<(double First, double Second)> _found = [];
    private readonly double _rounding;
    private int _pairs;

    private Crossings(double rounding) => _rounding = rounding;

    /// <summary>The parameters of all crossings, of the first curve and of the second.</summary>
    public static List<(double First, double Second)> Of(Curve first, Curve second)
    {
        var crossings = new Crossings(1e-14 * (1 + first.StartPoint.Radius));
        crossings.Search(Span.Of(first), Span.Of(second));
        return crossings._found;
    }

    private void Search(Span first, Span second)
    {
        if (!first.Box.Grown(Touching).Meets(second.Box) || ++_pairs > MostPairs)
        {
            return;
        }

        double turn = Turn(first) + Turn(second);
        Vector along = first.Last - first.First;
        Vector across = second.Last - second.First;
        double angle = Math.Abs(Math.Atan2(Math.Abs(along.Cross(across)), Math.Abs(along.Dot(across))));
        if (turn < Straight && angle > 2 * turn && angle > 1e-12)
        {
            TryChords(first, second, along, across);
            return;
        }

        if (Math.Max(first.Length, second.Length) < Touching || (turn < 1e-12 && angle <= 1e-12))
        {
            return;
        }

        bool splitsFirst = first.Length * (1 + Turn(first)) >= second.Length * (1 + Turn(second));
        (Span before, Span after) = (splitsFirst ? first : second).Halves();
        Search(splitsFirst ? before : first, splitsFirst ? second : before);
        Search(splitsFirst ? after : first, splitsFirst ? second : after);
    }

    private static double Turn(Span span) => Math.Abs(span.Curve.TurnBetween(span.From, span.To));

    private void TryChords(Span first, Span second, Vector along, Vector across)
    {
        const double Beyond = 0.25;
        double cross = along.Cross(across);
        Vector between = second.First - first.First;
        (double a, double b) = (between.Cross(across) / cross, between.Cross(along) / cross);
        if (a is < -Beyond or > 1 + Beyond || b is < -Beyond or > 1 + Beyond)
        {
            return;
        }

        if (Polish(first, second, first.From + (a * (first.To - first.From)), second.From + (b * (second.To - second.From))) is { } found
            && IsIn(first, found.First) && IsIn(second, found.Second)
            && !_found.Any(other => IsSame(first.Curve, other.First, found.First) && IsSame(second.Curve, other.Second, found.Second)))
        {
            _found.Add(found);
        }
    }

    private static bool IsIn(Span span, double parameter)
    {
        double share = (parameter - span.From) / (span.To - span.From);
        double slack = Touching / Math.Max(span.Length, Touching);
        return share >= -slack && share <= 1 + slack;
    }

    private static bool IsSame(Curve curve, double one, double other) =>
        Math.Abs(one - other) <= 1e-9 * Math.Abs(curve.End - curve.Start) || curve.PointAt(one).DistanceTo(curve.PointAt(other)) < 2 * Touching;

    private (double First, double Second)? Polish(Span first, Span second, double a, double b)
    {
        double best = double.PositiveInfinity;
        (double, double) at = default;
        for (int i = 0; i < MaxSteps; i++)
        {
            Vector gap = second.Curve.PointAt(b) - first.Curve.PointAt(a);
            double miss = gap.Length;
            if (!(miss < best))
            {
                break;
            }

            (best, at) = (miss, (a, b));
            if (miss == 0)
            {
                break;
            }

            (Vector u, Vector v) = (Slope(first, a), Slope(second, b));
            double cross = u.Cross(v);
            a += gap.Cross(v) / cross;
            b += gap.Cross(u) / cross;
        }

        return best <= 100 * _rounding ? at : null;
    }

    // The derivative by differences, with the tangent's direction.
    private static Vector Slope(Span span, double parameter)
    {
        double step = 1e-4 * (span.To - span.From);
        return (span.Curve.PointAt(parameter + step) - span.Curve.PointAt(parameter - step)) * (1 / (2 * step));
    }
}
