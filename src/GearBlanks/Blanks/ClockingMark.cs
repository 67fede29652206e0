using GearBlanks.Blanks.Walls;
using GearBlanks.Curves;

namespace GearBlanks.Blanks;

/// <summary>A short stroke on a tooth's centre line, where the tooth meets the face; half as long on a tooth that faces a mate's gap at the setting.</summary>
/// <param name="Stroke">The stroke.</param>
/// <param name="Room">The circle that holds it.</param>
/// <param name="Length">Its length, mm.</param>
internal sealed record ClockingMark(ArcPath Stroke, Circle Room, double Length)
{
    // In modules, and at least in mm so that it can be seen.
    private const double LengthInModules = 1.0;
    private const double LeastLength = 0.8;

    public static ClockingMark At(Blank blank, int tooth, double clearance, bool isFacing = false)
    {
        double length = Math.Max(LeastLength, LengthInModules * blank.Gear.Module) / (isFacing ? 2 : 1);
        (Point edge, Vector inward) = blank.Face.ToothAt(tooth);
        Point start = edge + (inward * clearance);
        return new ClockingMark(
            ArcPath.Strokes([start, start + (inward * length)]), new Circle(start + (inward * (length / 2)), length / 2), length);
    }

    public bool IsClear(Blank blank, double clearance)
    {
        var room = Contour.Of(Outline.Of(Room));
        return blank.Face.Depth >= Length + (2 * clearance) && blank.Holes.All(hole => IsClearOf(hole, room, clearance));
    }

    private static bool IsClearOf(Hole hole, Contour room, double clearance) =>
        hole.Contour.DistanceTo(room) >= clearance && !hole.Contour.IsNestedWith(room);
}
