using System.Collections.Immutable;
using GearBlanks.Curves;
using GearBlanks.Teeth;

namespace GearBlanks.Cutting.Reach;

/// <summary>A whole rack bar as a cutter leaves it: its gaps are alike, its ends are open on one side.</summary>
internal static class CutBar
{
    // Of a length: a root that leans less is level.
    private const double Rounding = 1e-9;

    public static Outline Of(RackBar rack, HalfGap gap, CutHalf half, double radius)
    {
        double first = rack.FirstTooth;
        double last = first + ((rack.Teeth - 1) * rack.Pitch);
        ImmutableArray<Curve> end = End(rack, gap, last, radius);
        Curve[] falling = [.. half.Curves.Reverse().Select(curve => curve.Moved(gap.AcrossTooth).Reversed())];
        var contour = new List<Curve>(end);
        for (double tooth = last; tooth > first + (rack.Pitch / 2); tooth -= rack.Pitch)
        {
            contour.AddRange(falling.Select(curve => curve.Moved(Motion.Shift(new Vector(tooth, 0)))));
            contour.AddRange(half.Curves.Select(curve => curve.Moved(Motion.Shift(new Vector(tooth - rack.Pitch, 0)))));
        }

        // The whole bar is its own mirror image, its back included.
        contour.AddRange(end.Reverse().Select(curve => curve.Moved(gap.AcrossTooth).Reversed()));
        var back = new Line(contour[^1].EndPoint, contour[0].StartPoint);
        return new Outline([back, .. ChainJoint.Joined(contour)]);
    }

    // From the back up the end face and over the first tooth at the right to the middle of its tip.
    private static ImmutableArray<Curve> End(RackBar rack, HalfGap gap, double tooth, double radius)
    {
        double half = rack.Length / 2;
        var foot = new Point(half, -rack.Data.BackHeight);
        Motion place = Motion.Shift(new Vector(tooth, 0));
        Curve[] side = [.. gap.Curves.Skip(IsRootLand(gap) ? 1 : 0).Select(curve => curve.Moved(place))];
        Point root = side[0].StartPoint;
        var corner = new Point(half, rack.RootHeight);
        ImmutableArray<Curve> chain = corner.DistanceTo(root) > Rounding * rack.Module
            ? [new Line(foot, corner), new Line(corner, root), .. side]
            : [new Line(foot, root), .. side];
        return CutterWalk.Of(chain, gap.Beyond.Moved(place), radius)?.Curves ?? throw new GearGeometryException(
            "cutter-stuck", "The cutter finds no way along the end of the rack; its diameter, mm", 2 * radius, 2 * rack.Module, "use a smaller cutter");
    }

    private static bool IsRootLand(HalfGap gap) => gap.Curves[0] is Line line && Math.Abs(line.From.Y - line.To.Y) <= Rounding * line.Length;
}
