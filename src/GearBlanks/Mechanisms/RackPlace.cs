using GearBlanks.Curves;

namespace GearBlanks.Mechanisms;

/// <summary>Where a rack stands in plan: its middle on its axis, its reference line along a direction, its teeth to the left of that.</summary>
/// <param name="Middle">The axis' position.</param>
/// <param name="Direction">Direction of the reference line, rad counter-clockwise from +X.</param>
internal readonly record struct RackPlace(Point Middle, double Direction)
{
    /// <summary>Height of a point over the reference line, mm: positive on the teeth's side.</summary>
    public double HeightOf(Point point) => (point - Middle).Dot(Vector.AtAngle(Direction).TurnedLeft);

    /// <summary>Position of a point along the reference line, mm from the middle.</summary>
    public double AlongOf(Point point) => (point - Middle).Dot(Vector.AtAngle(Direction));

    /// <summary>The point lowered towards the rack, mm.</summary>
    public Point Below(Point point, double by) => point - (Vector.AtAngle(Direction).TurnedLeft * by);
}
