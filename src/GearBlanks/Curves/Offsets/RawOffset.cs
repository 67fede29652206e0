using MathNet.Numerics.RootFinding;

namespace GearBlanks.Curves.Offsets;

/// <summary>
/// The offsets of an outline's curves, one by one: without what folds because the curve is bent more sharply than the beam, with an arc
/// about each corner that the beam runs around. At the other corners they overlap, to be trimmed.
/// </summary>
internal sealed class RawOffset
{
    // Stretches of monotone fold test; a beam that is not round folds a curve at most once in each.
    private const int Samples = 24;

    // Share of a curve's parameters that a fold is kept clear of: near it points move with the square of the parameter.
    private const double FoldMargin = 1e-8;

    // A guard against a hang only: the bracketed root takes under twenty steps.
    private const int MaxSteps = 200;

    private readonly Beam _beam;
    private readonly int _side;
    private readonly List<RawPiece> _pieces = [];

    private RawOffset(Beam beam, int side)
    {
        _beam = beam;
        _side = side;
    }

    /// <summary>The pieces in order of travel.</summary>
    /// <param name="pattern">Curves end to end; the first follows the last after <paramref name="step"/>.</param>
    /// <param name="step">The motion from one repetition of the pattern to the next.</param>
    /// <param name="beam">The beam.</param>
    /// <param name="side">1 where it runs to the right of travel, -1 to the left.</param>
    /// <param name="closure">Ends that are so close meet, mm.</param>
    public static List<RawPiece> Of(IReadOnlyList<Curve> pattern, Motion step, Beam beam, int side, double closure) =>
        Laid(pattern, pattern[0].Moved(step), beam, side, closure).Joined(step, closure);

    /// <summary>The pieces of an open chain in order of travel, the last joined to none.</summary>
    /// <param name="chain">Curves end to end.</param>
    /// <param name="after">What follows the last, beyond the chain.</param>
    /// <param name="beam">The beam.</param>
    /// <param name="side">1 where it runs to the right of travel, -1 to the left.</param>
    /// <param name="closure">Ends that are so close meet, mm.</param>
    public static List<RawPiece> OfChain(IReadOnlyList<Curve> chain, Curve after, Beam beam, int side, double closure)
    {
        List<RawPiece> pieces = Laid(chain, after, beam, side, closure).Joined(Motion.None, closure);
        if (pieces.Count > 0)
        {
            pieces[^1] = pieces[^1] with { IsJoined = false };
        }

        return pieces;
    }

    private static RawOffset Laid(IReadOnlyList<Curve> curves, Curve after, Beam beam, int side, double closure)
    {
        var raw = new RawOffset(beam, side);
        for (int i = 0; i < curves.Count; i++)
        {
            raw.AddCurve(curves[i], i);
            raw.AddCorner(curves[i], i + 1 < curves.Count ? curves[i + 1] : after, closure);
        }

        return raw;
    }

    private void AddCurve(Curve curve, int source)
    {
        foreach ((double from, double to) in RegularStretches(curve))
        {
            _pieces.Add(new RawPiece(OffsetOf(from == curve.Start && to == curve.End ? curve : curve.Between(from, to)), source, false));
        }
    }

    // The beam runs about a corner whose outside is on its side.
    private void AddCorner(Curve before, Curve after, double closure)
    {
        Vector arriving = before.TangentAt(before.End);
        double turn = arriving.AngleTo(after.TangentAt(after.Start));
        if (_side * turn * _beam.Least > closure)
        {
            double normal = (arriving.TurnedRight * _side).Angle;
            _pieces.Add(new RawPiece(
                _beam.IsRound
                    ? new Arc(after.StartPoint, _beam.SemiX, normal, turn)
                    : new EllipseOffset(new Arc(after.StartPoint, 0, normal, turn), _beam, _side, Motion.None),
                -1, false));
        }
    }

    private List<RawPiece> Joined(Motion step, double closure)
    {
        for (int i = 0; i < _pieces.Count; i++)
        {
            Point next = i + 1 < _pieces.Count ? _pieces[i + 1].Curve.StartPoint : step.Apply(_pieces[0].Curve.StartPoint);
            _pieces[i] = _pieces[i] with { IsJoined = _pieces[i].Curve.EndPoint.DistanceTo(next) <= closure };
        }

        return _pieces;
    }

    private Curve OffsetOf(Curve curve)
    {
        if (_beam.IsRound)
        {
            return curve.Parallel(_side * _beam.SemiX);
        }

        if (curve is Line line)
        {
            Vector aside = _beam.EdgeAt(line.TangentAt(0).TurnedRight * _side);
            return new Line(line.From + aside, line.To + aside);
        }

        return new EllipseOffset(curve, _beam, _side, Motion.None);
    }

    private IEnumerable<(double From, double To)> RegularStretches(Curve curve)
    {
        double range = curve.End - curve.Start;
        double[] marks = [.. Marks(curve)];
        double start = curve.Start;
        for (int i = 1; i < marks.Length; i++)
        {
            (double before, double after) = (Openness(curve, marks[i - 1]), Openness(curve, marks[i]));
            if (before > 0 != after > 0)
            {
                double fold = Brent.FindRoot(t => Openness(curve, t), marks[i - 1], marks[i], Math.Abs(range) * 1e-15, MaxSteps);
                if (before > 0)
                {
                    yield return (start, fold - (range * FoldMargin));
                }

                start = fold + (range * FoldMargin);
            }
        }

        if (Openness(curve, curve.End) > 0)
        {
            yield return (start, curve.End);
        }
    }

    private static IEnumerable<double> Marks(Curve curve)
    {
        double from = curve.Start;
        yield return from;
        foreach (double to in curve.CurvatureExtrema.Append(curve.End))
        {
            for (int i = 1; i < Samples; i++)
            {
                yield return from + ((to - from) * i / Samples);
            }

            yield return from = to;
        }
    }

    // Above 0 where the offset is regular: radius of curvature less the beam's, over their sum, on the hollow side; 1 on the other.
    private double Openness(Curve curve, double parameter)
    {
        double curvature = _side * curve.CurvatureAt(parameter);
        if (curvature >= 0)
        {
            return 1;
        }

        double radius = -1 / curvature;
        double beam = _beam.RadiusAt(curve.TangentAt(parameter).TurnedRight * _side);
        return (radius - beam) / (radius + beam);
    }
}
