using System.Collections.Immutable;
using GearBlanks.Curves;
using GearBlanks.Teeth;
using MathNet.Numerics.RootFinding;

namespace GearBlanks.Cutting.Reach;

/// <summary>
/// What a cutter leaves standing, as closed contours, counter-clockwise: between the nominal outline and the cutter's rounds, without the ends that are narrower than
/// a file's tolerance can tell from nothing.
/// </summary>
internal static class UncutContours
{
    // mm: where both sides are nearer to one another than the first, the contour is cut off; where they nowhere are further apart than the second, there is none.
    private const double LeastWidth = 0.005;
    private const double LeastDepth = 0.01;

    private const int Samples = 24;
    private const int MaxSteps = 100;

    /// <summary>The contours in the gap clockwise of a gear's tooth on +X, at the right of a rack's tooth on the Y axis.</summary>
    public static ImmutableArray<Outline> InGap(HalfGap gap, CutHalf half)
    {
        ImmutableArray<Outline>.Builder contours = ImmutableArray.CreateBuilder<Outline>();
        foreach (CutterStand stand in half.Stands.Where(stand => UncutRest.DepthBehind(gap, stand) >= LeastDepth))
        {
            ChainPlace end = FirstWide(gap, stand, fromEnd: true);
            if (stand.IsInMiddle)
            {
                Curve[] chain = [.. Between(gap.Curves, stand.First, end), CapAt(gap, stand, end)];
                Arc round = RoundFrom(stand, stand.From, chain[^1].EndPoint);
                contours.Add(Closed(Whole(gap, chain), Whole(gap, [round]), gap.Side));
            }
            else
            {
                ChainPlace start = FirstWide(gap, stand, fromEnd: false);
                Curve[] chain = [CapAt(gap, stand, start).Reversed(), .. Between(gap.Curves, start, end), CapAt(gap, stand, end)];
                Outline contour = Closed(chain, [RoundFrom(stand, chain[0].StartPoint, chain[^1].EndPoint)], gap.Side);
                contours.Add(contour);
                contours.Add(contour.Moved(gap.AcrossGap));
            }
        }

        return contours.ToImmutable();
    }

    /// <summary>The contours in all gaps of a gear, and in those between a rack's teeth.</summary>
    public static ImmutableArray<Outline> All(Toothing teeth, HalfGap gap, CutHalf half)
    {
        ImmutableArray<Outline> inGap = InGap(gap, half);
        return [.. Places(teeth).SelectMany(place => inGap.Select(contour => contour.Moved(place)))];
    }

    private static IEnumerable<Motion> Places(Toothing teeth) => teeth is RackBar rack
        ? Enumerable.Range(0, rack.Teeth - 1).Select(i => Motion.Shift(new Vector(rack.FirstTooth + (i * rack.Pitch), 0)))
        : Enumerable.Range(0, teeth.Teeth).Select(i => Motion.TurnStep(i, teeth.Teeth));

    // From one touch inward: where the chain is first as far from the round as the least width.
    private static ChainPlace FirstWide(HalfGap gap, CutterStand stand, bool fromEnd)
    {
        double Excess(ChainPlace place) => stand.WidthAt(gap.Curves[place.Curve].PointAt(place.At)) - LeastWidth;
        ChainPlace before = fromEnd ? stand.Last : stand.First;
        foreach (ChainPlace place in Steps(gap, stand, fromEnd))
        {
            if (Excess(place) >= 0)
            {
                double outer = before.Curve == place.Curve ? before.At : fromEnd ? gap.Curves[place.Curve].End : gap.Curves[place.Curve].Start;
                double Here(double at) => Excess(place with { At = at });
                return Here(outer) >= 0 ? place with { At = outer } : place with { At = Brent.FindRoot(Here, outer, place.At, 1e-14, MaxSteps) };
            }

            before = place;
        }

        return before;
    }

    private static IEnumerable<ChainPlace> Steps(HalfGap gap, CutterStand stand, bool fromEnd)
    {
        for (int i = fromEnd ? stand.Last.Curve : stand.First.Curve; i >= stand.First.Curve && i <= stand.Last.Curve; i += fromEnd ? -1 : 1)
        {
            (double from, double to) = stand.RangeOn(i, gap.Curves[i]);
            (from, to) = fromEnd ? (to, from) : (from, to);
            for (int k = 0; k <= Samples && from != to; k++)
            {
                yield return new ChainPlace(i, from + ((to - from) * k / Samples));
            }
        }
    }

    // Straight to the round.
    private static Line CapAt(HalfGap gap, CutterStand stand, ChainPlace place)
    {
        Point point = gap.Curves[place.Curve].PointAt(place.At);
        return new Line(point, stand.Cutter.Centre + ((point - stand.Cutter.Centre).Unit * stand.Cutter.Radius));
    }

    private static Arc RoundFrom(CutterStand stand, Point from, Point to) => (stand with { From = from, To = to }).Round;

    private static IEnumerable<Curve> Between(ImmutableArray<Curve> curves, ChainPlace first, ChainPlace last)
    {
        for (int i = first.Curve; i <= last.Curve; i++)
        {
            double from = i == first.Curve ? first.At : curves[i].Start;
            double to = i == last.Curve ? last.At : curves[i].End;
            if (from != to)
            {
                yield return curves[i].Between(from, to);
            }
        }
    }

    private static List<Curve> Whole(HalfGap gap, Curve[] half) =>
        ChainJoint.Joined([.. half.Reverse().Select(curve => curve.Moved(gap.AcrossGap).Reversed()), .. half]);

    // Beside a gear the chain has what stays uncut on its right, in a ring on its left.
    private static Outline Closed(IEnumerable<Curve> chain, IEnumerable<Curve> round, int side) => side > 0
        ? new Outline([.. round, .. chain.Reverse().Select(curve => curve.Reversed())])
        : new Outline([.. chain, .. round.Reverse().Select(curve => curve.Reversed())]);
}
