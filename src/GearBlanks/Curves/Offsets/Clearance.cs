namespace GearBlanks.Curves.Offsets;

/// <summary>How far points are from curves, in half widths of a beam: the beam's centre may stand where this is at least 1.</summary>
internal sealed class Clearance
{
    private const double Accuracy = 1e-8;

    // In half widths: further away is not looked for.
    private const double Furthest = 64;

    private readonly Span[] _spans;
    private readonly BoxIndex _index;
    private readonly Beam _beam;

    public Clearance(IEnumerable<Curve> curves, Beam beam)
    {
        _spans = [.. curves.Select(Span.Of)];
        _index = new BoxIndex(_spans.Select(span => span.Box));
        _beam = beam;
    }

    /// <summary>Least distance of a point from the curves, at most <see cref="Furthest"/>, in half widths.</summary>
    public double Of(Point point)
    {
        for (double reach = 1.01; reach < Furthest; reach *= 4)
        {
            double least = reach;
            foreach (int i in _index.Meeting(Box.Around(point, point).Grown(reach * _beam.Greatest)))
            {
                Search(_spans[i], point, ref least);
            }

            if (least < reach)
            {
                return least;
            }
        }

        return Furthest;
    }

    private void Search(Span span, Point point, ref double least)
    {
        double bound = ToChord(span, point) - (span.Bulge / _beam.Least);
        if (bound >= least - Accuracy)
        {
            return;
        }

        least = Math.Min(least, Math.Min(_beam.Measure(span.First - point), _beam.Measure(span.Last - point)));
        if (span.Length < Accuracy * _beam.Least)
        {
            return;
        }

        (Span before, Span after) = span.Halves();
        bool isBefore = _beam.Measure(before.First - point) <= _beam.Measure(after.Last - point);
        Search(isBefore ? before : after, point, ref least);
        Search(isBefore ? after : before, point, ref least);
    }

    private double ToChord(Span span, Point point)
    {
        Vector along = Scaled(span.Last - span.First);
        Vector to = Scaled(point - span.First);
        double length = along.Dot(along);
        double share = length == 0 ? 0 : Math.Clamp(to.Dot(along) / length, 0, 1);
        return (to - (along * share)).Length;
    }

    private Vector Scaled(Vector vector) => new(vector.X / _beam.SemiX, vector.Y / _beam.SemiY);
}
