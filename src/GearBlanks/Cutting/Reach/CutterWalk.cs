using System.Collections.Immutable;
using GearBlanks.Curves;
using GearBlanks.Curves.Offsets;

namespace GearBlanks.Cutting.Reach;

/// <summary>
/// Follows a round cutter along an open chain as it comes in from the open: its centre runs on the parallels of the chain's curves and goes over to another
/// one where that would otherwise be cut into. What the cutter touches on its way is the chain as it comes out.
/// </summary>
internal sealed class CutterWalk
{
    // Of a piece: two crossings so near to one another are one.
    private const double SamePlace = 1e-12;

    // Ends that are computed by different formulas meet so well; half of what an outline may have.
    private const double Closure = 5e-12;

    // Of the radius: where pieces touch exactly, a cutter that is so little larger or smaller leaves no doubt. Far below what can be cut.
    private static readonly double[] Nudges = [1, 1 + 1e-9, 1 - 1e-9, 1 + 1e-7, 1 - 1e-7];

    private readonly ImmutableArray<Curve> _chain;
    private readonly HalfGap? _gap;
    private readonly CrossedPieces _crossed;
    private readonly double _radius;
    private readonly int _side;

    private CutterWalk(ImmutableArray<Curve> chain, Curve after, HalfGap? gap, int side, double radius)
    {
        (_chain, _gap, _radius, _side) = (chain, gap, radius, side);
        double closure = Closure * (1 + chain[^1].StartPoint.Radius);
        _crossed = new CrossedPieces(RawOffset.OfChain(chain, after, new Beam(radius, radius), side, closure), 1, side);
    }

    /// <summary>Half a gap as a cutter leaves it that comes in along the gap's middle line; null where it does not stay clear of what is opposite.</summary>
    public static CutHalf? Of(HalfGap gap, double radius) => Try(gap.Curves, gap.Beyond, gap, gap.Side, radius);

    /// <summary>A chain as a cutter leaves it that touches its first point; null where it cannot touch that.</summary>
    public static CutHalf? Of(ImmutableArray<Curve> chain, Curve after, double radius) => Try(chain, after, null, 1, radius);

    private static CutHalf? Try(ImmutableArray<Curve> chain, Curve after, HalfGap? gap, int side, double radius) => Nudges
        .Select(nudge => new CutterWalk(chain, after, gap, side, radius * nudge).Cut())
        .FirstOrDefault(cut => cut is not null);

    private CutHalf? Cut() => (_gap is null ? new Step(0, 0) : FromMiddle()) is { } start && Follow(start) is { } way ? Left(way, start) : null;

    // Where the centre, on its way in along the middle line, first meets a parallel.
    private Step? FromMiddle()
    {
        List<RawPiece> pieces = _crossed.Pieces;
        Vector inward = _gap!.Out * (-2 * (_radius + _gap.Curves.Max(curve => _gap.HeightOf(curve.StartPoint))));
        var middle = new Line(_gap.Root - inward, _gap.Root + inward);
        Step? best = null;
        double highest = double.NegativeInfinity;
        for (int i = 0; i < pieces.Count; i++)
        {
            Curve curve = pieces[i].Curve;
            if (i == 0 && pieces[0].Source == 0 && _gap.AsideOf(curve.StartPoint) <= Closure * (1 + _gap.Root.Radius))
            {
                (best, highest) = (new Step(0, 0), _gap.HeightOf(curve.StartPoint));
            }

            foreach ((double at, _) in Crossings.Of(curve, middle))
            {
                if (_gap.HeightOf(curve.PointAt(at)) is var height && height > highest + (SamePlace * _radius))
                {
                    (best, highest) = (new Step(i, (at - curve.Start) / (curve.End - curve.Start)), height);
                }
            }
        }

        return best;
    }

    private List<(int Piece, double From, double To)>? Follow(Step start)
    {
        var way = new List<(int, double, double)>();
        (int piece, double from) = (start.Piece, start.At);
        int most = 4 * (_crossed.Pieces.Count + 1);
        while (way.Count < most)
        {
            Crossing? over = NextEntry(piece, from);
            way.Add((piece, from, over?.At ?? 1));
            if (over is { } crossing)
            {
                (piece, from) = (crossing.Other, crossing.OtherAt);
            }
            else if (piece + 1 == _crossed.Pieces.Count)
            {
                return way;
            }
            else if (_crossed.Pieces[piece].IsJoined)
            {
                (piece, from) = (piece + 1, 0);
            }
            else
            {
                return null;
            }
        }

        return null;
    }

    private Crossing? NextEntry(int piece, double from)
    {
        foreach (Crossing crossing in _crossed.On(piece))
        {
            if (crossing.IsEntry && crossing.At > from + SamePlace)
            {
                return crossing;
            }
        }

        return null;
    }

    private CutHalf Left(List<(int Piece, double From, double To)> way, Step start)
    {
        ImmutableArray<Curve>.Builder curves = ImmutableArray.CreateBuilder<Curve>();
        ImmutableArray<CutterStand>.Builder stands = ImmutableArray.CreateBuilder<CutterStand>();
        Touch? last = null;
        for (int i = 0; i < way.Count; i++)
        {
            (int piece, double from, double to) = way[i];
            Curve parallel = _crossed.Pieces[piece].Curve;
            Touch touch = Touched(piece, from, to);
            if (i == 0 && _gap is not null && start is not { Piece: 0, At: 0 })
            {
                Point centre = _gap.Root + (_gap.Out * _gap.HeightOf(parallel.PointAt(At(parallel, from))));
                Add(new CutterStand(new Circle(centre, _radius), centre - (_gap.Out * _radius), touch.First, new ChainPlace(0, _chain[0].Start), touch.From, true));
            }
            else if (last is { } before && !(from == 0 && way[i - 1].To == 1 && way[i - 1].Piece + 1 == piece))
            {
                Add(new CutterStand(new Circle(parallel.PointAt(At(parallel, from)), _radius), before.Last, touch.First, before.To, touch.From, false));
            }

            if (touch.Curve is { } curve)
            {
                curves.Add(curve);
            }

            last = touch;
        }

        return new CutHalf(curves.ToImmutable(), stands.ToImmutable());

        void Add(CutterStand stand)
        {
            stands.Add(stand);
            curves.Add(stand.Round);
        }
    }

    // What of the chain the cutter touches on a stretch of its way: a piece of a curve, or a corner between two.
    private Touch Touched(int index, double from, double to)
    {
        RawPiece piece = _crossed.Pieces[index];
        if (piece.Source < 0)
        {
            Point corner = ((Arc)piece.Curve).Centre;
            int after = Enumerable.Range(0, _chain.Length).MinBy(i => _chain[i].StartPoint.DistanceTo(corner));
            return _chain[^1].EndPoint.DistanceTo(corner) < _chain[after].StartPoint.DistanceTo(corner)
                ? new Touch(null, corner, corner, new ChainPlace(_chain.Length - 1, _chain[^1].End), new ChainPlace(_chain.Length - 1, _chain[^1].End))
                : new Touch(null, corner, corner, new ChainPlace(after, _chain[after].Start), new ChainPlace(after, _chain[after].Start));
        }

        Curve source = _chain[piece.Source];
        double shift = source is Involute involute
            ? Math.Sign(involute.EndRoll - involute.StartRoll) * (involute.Placement.IsMirrored ? -1 : 1) * _side * _radius / involute.BaseRadius
            : 0;
        double start = Of(At(piece.Curve, from));
        double end = Of(At(piece.Curve, to));
        Curve curve = from == 0 && to == 1 && Math.Abs(start - source.Start) + Math.Abs(end - source.End) <= SamePlace ? source : source.Between(start, end);
        return new Touch(curve, curve.StartPoint, curve.EndPoint, new ChainPlace(piece.Source, start), new ChainPlace(piece.Source, end));

        double Of(double parameter) => Math.Clamp(parameter - shift, Math.Min(source.Start, source.End), Math.Max(source.Start, source.End));
    }

    private static double At(Curve curve, double share) => share == 1 ? curve.End : curve.Start + ((curve.End - curve.Start) * share);

    private readonly record struct Step(int Piece, double At);

    private readonly record struct Touch(Curve? Curve, Point First, Point Last, ChainPlace From, ChainPlace To);
}
