using System.Collections.Immutable;
using GearBlanks.Curves;

namespace GearBlanks.Files.Drawings;

/// <summary>The toothed contour of a drawing, centred on its axis, mm.</summary>
/// <param name="Teeth">The contour, counter-clockwise about the origin; of a rack its teeth upward along the X axis, over a plain bar.</param>
/// <param name="IsRing">True where the material lies outside it.</param>
/// <param name="Centre">Where the axis stands in the drawing, mm; of a rack a point of its reference line.</param>
/// <param name="Holes">How many holes the part has beside the teeth of a ring.</param>
/// <param name="Remarks">What was taken for granted or left out.</param>
public sealed record DrawnGear(ArcPath Teeth, bool IsRing, Point Centre, int Holes, ImmutableArray<string> Remarks)
{
    /// <summary>Heights of the roots and tips of a rack over its reference line, which lies on the X axis, mm; null for a gear.</summary>
    public (double Root, double Tip)? Rack { get; init; }
}
