using System.Collections.Immutable;
using GearBlanks.Curves;
using GearBlanks.Cutting;

namespace GearBlanks.Files.Svg.Overview;

/// <summary>A callout in its place, with the line that leads to its axis.</summary>
/// <param name="Callout">The callout.</param>
/// <param name="Side">The side of the plan it stands on.</param>
/// <param name="Box">Its box.</param>
internal sealed record PlacedCallout(Callout Callout, Side Side, Extent Box)
{
    // The leader meets the rule no nearer to its ends than this, as a share of the rule.
    private const double EndShare = 0.15;

    /// <summary>Where the leader meets the box: as near to the axis as the rule allows.</summary>
    public Point Anchor
    {
        get
        {
            (Point from, Point to) = Side.Rule(Box);
            double share = (Side.Along(Callout.Axis.Position) - Side.Along(from)) / (Side.Along(to) - Side.Along(from));
            return from + ((to - from) * Math.Clamp(share, EndShare, 1 - EndShare));
        }
    }

    /// <summary>The leader and the rule it ends on.</summary>
    public Figure Leader(Look look)
    {
        (Point from, Point to) = Side.Rule(Box);
        ImmutableArray<ArcPath> leader = [ArcPath.Strokes([Callout.Axis.Position, Anchor])];
        return new Figure(
            $"to axis {Callout.Axis.Name}",
            [new Shape(leader, look.Halo), new Shape([.. leader, ArcPath.Strokes([from, to])], look.Hairline)],
            Box);
    }
}
