using GearBlanks.Blanks.Faces;
using GearBlanks.Curves;

namespace GearBlanks.Blanks.Walls;

/// <summary>Material between a contour inside a blank and an edge or another contour.</summary>
/// <param name="First">The contour.</param>
/// <param name="Second">The other one; null for an edge.</param>
/// <param name="Between">Both in words.</param>
/// <param name="Width">
/// Its least width, mm. Negative where there is none: by as much as a hole must move for the two to be apart, away from the other one if both
/// are circles, else outward or inward.
/// </param>
internal sealed record Wall(Hole First, Hole? Second, string Between, double Width)
{
    /// <summary>True for what is left between two windows: an arm.</summary>
    public bool IsArm => First.Kind == HoleKind.Window && Second?.Kind == HoleKind.Window;

    /// <summary>True where it concerns a hole of this kind.</summary>
    public bool Has(HoleKind kind) => First.Kind == kind || Second?.Kind == kind;

    /// <summary>The wall to an edge.</summary>
    public static Wall To(FaceEdge edge, Hole hole) => new(hole, null, $"{hole.Name} and {edge.Name}", edge.WallTo(hole.Contour));

    /// <summary>The wall between two contours.</summary>
    public static Wall Of(Hole first, Hole second) => new(
        first, second, first.Name == second.Name ? $"two {first.Name}s" : $"{first.Name} and {second.Name}", WidthOf(first.Contour, second.Contour));

    private static double WidthOf(Contour first, Contour second)
    {
        if (first.AsCircle is { } one && second.AsCircle is { } other)
        {
            return one.WallTo(other);
        }

        double apart = first.DistanceTo(second);
        return apart > 0 && !first.IsNestedWith(second) ? apart : -Overlap(first, second);
    }

    // Once one contour lies nearer the origin than all of the other, they are apart; one about the origin cannot come outside.
    private static double Overlap(Contour first, Contour second)
    {
        double outside = second.Contains(default) ? double.PositiveInfinity : first.FarthestFrom(default) - second.NearestTo(default);
        double inside = first.Contains(default) ? double.PositiveInfinity : second.FarthestFrom(default) - first.NearestTo(default);
        double least = Math.Min(outside, inside);
        return double.IsFinite(least) ? Math.Max(0, least) : first.FarthestFrom(default) + second.FarthestFrom(default);
    }
}
