using System.Collections.Immutable;
using GearBlanks.Curves;
using GearBlanks.Cutting.Reach;

namespace GearBlanks.Mechanisms.Reach;

/// <summary>One gap to be looked at: its middle line upright, its root at the origin.</summary>
/// <param name="Nominal">The material around it, nominal: half of each tooth beside it, cut off under the root.</param>
/// <param name="Uncut">What stays uncut in it, closed contours.</param>
/// <param name="Cutters">The cutter wherever it touches twice.</param>
public sealed record GapView(Outline Nominal, ImmutableArray<Outline> Uncut, ImmutableArray<Circle> Cutters)
{
    // In heights of a tooth.
    private const double Under = 0.4;

    internal static GapView Of(HalfGap gap, CutHalf half)
    {
        Motion upright = Motion.Shift(default(Point) - gap.Root).Then(Motion.Turn((Math.PI / 2) - gap.Out.Angle));
        List<Curve> chain = ChainJoint.Joined([.. gap.Curves.Reverse().Select(curve => curve.Moved(gap.AcrossGap).Reversed()), .. gap.Curves]);
        Vector down = gap.Out * (-gap.Curves.Max(curve => gap.HeightOf(curve.EndPoint)) * (1 + Under));
        (Point end, Point start) = (chain[^1].EndPoint, chain[0].StartPoint);
        chain.AddRange([new Line(end, end + down), new Line(end + down, start + down), new Line(start + down, start)]);
        return new GapView(
            new Outline([.. chain.Select(curve => curve.Moved(upright))]),
            [.. UncutContours.InGap(gap, half).Select(contour => contour.Moved(upright))],
            [.. half.Stands.SelectMany(stand => stand.IsInMiddle ? [stand.Cutter.Centre] : (Point[])[stand.Cutter.Centre, gap.AcrossGap.Apply(stand.Cutter.Centre)])
                .Select(centre => new Circle(upright.Apply(centre), half.Stands[0].Cutter.Radius))]);
    }
}
