namespace GearBlanks.Curves.Offsets;

/// <summary>
/// Follows the offset's edge: along a piece until another one's beam covers the way on, there over to that piece, until the way is closed.
/// </summary>
internal sealed class OffsetWalk
{
    private const double SamePlace = 1e-12;

    // Of a half width: less is rounding.
    private const double Slack = 1e-6;

    private readonly CrossedPieces _crossed;
    private readonly Clearance _clearance;

    private OffsetWalk(CrossedPieces crossed, Clearance clearance)
    {
        _crossed = crossed;
        _clearance = clearance;
    }

    /// <summary>The stretches of the edge in order, each with the index of its piece; null where it does not close, empty where there is none.</summary>
    /// <param name="crossed">The raw pieces and their crossings.</param>
    /// <param name="clearance">Distances from the outline that is offset, and from its neighbours where it repeats.</param>
    public static List<(Curve Curve, int Piece)>? Of(CrossedPieces crossed, Clearance clearance)
    {
        var walk = new OffsetWalk(crossed, clearance);
        foreach ((int piece, double from, double to) in walk.Candidates())
        {
            if (walk.IsClear(walk.Stretch(piece, from, to)))
            {
                return walk.Follow(piece, from) is { } edge && edge.All(stretch => walk.IsClear(stretch.Curve)) ? edge : null;
            }
        }

        return [];
    }

    // Longest first: what is long is seldom covered.
    private IEnumerable<(int Piece, double From, double To)> Candidates() =>
        Enumerable.Range(0, _crossed.Pieces.Count).SelectMany(Parts).OrderByDescending(part => Stretch(part.Piece, part.From, part.To).Length);

    private IEnumerable<(int Piece, double From, double To)> Parts(int piece)
    {
        double from = 0;
        foreach (Crossing crossing in _crossed.On(piece))
        {
            if (crossing.At > from + SamePlace)
            {
                yield return (piece, from, crossing.At);
                from = crossing.At;
            }
        }

        if (from < 1 - SamePlace)
        {
            yield return (piece, from, 1);
        }
    }

    private bool IsClear(Curve stretch) => _clearance.Of(stretch.PointAt((stretch.Start + stretch.End) / 2)) >= 1 - Slack;

    private Curve Stretch(int piece, double from, double to)
    {
        Curve curve = _crossed.Pieces[piece].Curve;
        double range = curve.End - curve.Start;
        return from == 0 && to == 1 ? curve : curve.Between(
            from == 0 ? curve.Start : curve.Start + (range * from), to == 1 ? curve.End : curve.Start + (range * to));
    }

    private List<(Curve Curve, int Piece)>? Follow(int start, double startFrom)
    {
        var edge = new List<(Curve, int)>();
        (int piece, double from, int shift) = (start, startFrom, 0);
        int most = 4 * (_crossed.Pieces.Count + 1);
        while (edge.Count <= most)
        {
            (double to, Crossing? over) = NextEntry(piece, from);
            if (to > from + SamePlace)
            {
                Curve stretch = Stretch(piece, from, to);
                edge.Add((shift == 0 ? stretch : stretch.Moved(Motion.TurnStep(shift, _crossed.Repeats)), piece));
            }

            if (over is null && !_crossed.Pieces[piece].IsJoined)
            {
                return null;
            }

            shift += over?.Shift ?? (piece + 1 == _crossed.Pieces.Count && _crossed.Repeats > 1 ? 1 : 0);
            (piece, from) = over is { } crossing ? (crossing.Other, crossing.OtherAt) : ((piece + 1) % _crossed.Pieces.Count, 0);
            if (piece == start && Math.Abs(from - startFrom) <= SamePlace)
            {
                return shift == (_crossed.Repeats > 1 ? 1 : 0) ? edge : null;
            }
        }

        return null;
    }

    private (double To, Crossing? Over) NextEntry(int piece, double from)
    {
        foreach (Crossing crossing in _crossed.On(piece))
        {
            if (crossing.IsEntry && crossing.At > from + SamePlace)
            {
                return (crossing.At, crossing);
            }
        }

        return (1, null);
    }
}
