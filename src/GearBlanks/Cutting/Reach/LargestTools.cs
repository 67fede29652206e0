using GearBlanks.Curves;

namespace GearBlanks.Cutting.Reach;

/// <summary>The largest round cutters, as radii in mm, that reach so far into a gap.</summary>
internal static class LargestTools
{
    // What is looked for has at most a few dips along a flank or fillet.
    private const int Samples = 24;

    // rad: a turn between two curves that is more is a corner.
    private const double Corner = 1e-9;

    // Of a radius: the cutter that just follows a fillet leaves no doubt when it is so much smaller.
    private const double JustSmaller = 1e-9;

    // Of the gap's width: nearer to its middle the curvature there answers.
    private const double NearMiddle = 1e-4;

    // Halvings of the largest that follows an undercut fillet: to a nanometre.
    private const int Halvings = 32;

    /// <summary>
    /// The largest that comes in along the gap's middle line and touches the root there. Of a point at a distance w from the line and a height y over the root,
    /// R = (w^2 + y^2) / (2 y) makes a disc pass through it, and R = w a disc pass by on its way in, where it is higher than that.
    /// </summary>
    public static double RootTouching(HalfGap gap)
    {
        double near = NearMiddle * gap.Curves.Max(curve => gap.AsideOf(curve.EndPoint));
        double Radius(Point point)
        {
            (double aside, double height) = (gap.AsideOf(point), gap.HeightOf(point));
            return height <= 0 || aside < near ? double.PositiveInfinity
                : aside <= height ? aside
                : ((aside * aside) + (height * height)) / (2 * height);
        }

        // The tooth's own middle is as far away as the next gap's: no cutter comes in from there.
        double least = gap.Curves.Min(curve => LeastValue.Of(at => Radius(curve.PointAt(at)), curve.Start, curve.End, Samples).Value);
        return IsCornerAtMiddle(gap) ? 0 : Math.Min(least, HollowRadius(gap.Curves[0], gap.Side, gap.Curves[0].Start));
    }

    /// <summary>
    /// The largest that follows all of the gap, its fillets first: no larger than the least radius of curvature of what is hollow, of a generated fillet
    /// rho + vc^2 / (r - vc) at its foot; 0 where there is a sharp inside corner.
    /// </summary>
    public static double WholeFillet(HalfGap gap, double rootTouching)
    {
        double bound = Math.Min(rootTouching, LeastHollowRadius(gap));
        if (bound <= 0 || Follows(gap, bound * (1 - JustSmaller)))
        {
            return bound;
        }

        (double works, double fails) = (0, bound);
        for (int i = 0; i < Halvings; i++)
        {
            double middle = (works + fails) / 2;
            (works, fails) = Follows(gap, middle) ? (middle, fails) : (works, middle);
        }

        return works;
    }

    private static bool Follows(HalfGap gap, double radius) => CutterWalk.Of(gap, radius) is { IsWhole: true };

    private static double LeastHollowRadius(HalfGap gap)
    {
        double least = IsCornerAtMiddle(gap) ? 0 : double.PositiveInfinity;
        for (int i = 0; i < gap.Curves.Length; i++)
        {
            Curve curve = gap.Curves[i];
            bool isHollowCorner = i > 0 && gap.Side * gap.Curves[i - 1].TangentAt(gap.Curves[i - 1].End).AngleTo(curve.TangentAt(curve.Start)) < -Corner;
            least = isHollowCorner ? 0 : curve.CurvatureExtrema.Append(curve.Start).Append(curve.End).Aggregate(least, (radius, at) => Math.Min(radius, HollowRadius(curve, gap.Side, at)));
        }

        return least;
    }

    // At the middle line the outline goes straight across, or has a corner there.
    private static bool IsCornerAtMiddle(HalfGap gap) => Math.Abs(gap.Out.Dot(gap.Curves[0].TangentAt(gap.Curves[0].Start))) > Corner;

    private static double HollowRadius(Curve curve, int side, double at) =>
        side * curve.CurvatureAt(at) is < 0 and var hollow ? -1 / hollow : double.PositiveInfinity;
}
