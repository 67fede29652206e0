using System.Collections.Immutable;
using GearBlanks.Curves;

namespace GearBlanks.Blanks;

/// <summary>Screws evenly spaced on a circle about the gear's centre.</summary>
/// <param name="Count">How many; at least 1.</param>
/// <param name="CircleDiameter">Diameter of the circle they stand on, mm.</param>
/// <param name="HoleDiameter">Diameter of their holes, mm.</param>
/// <param name="HeadDiameter">Diameter of their heads, mm; null where heads take no room.</param>
/// <param name="StartAngle">Angle of the first from +X, rad.</param>
public sealed record ScrewCircle(int Count, double CircleDiameter, double HoleDiameter, double? HeadDiameter, double StartAngle)
{
    /// <summary>The holes, in order of angle, turned by a further angle, rad.</summary>
    public ImmutableArray<Circle> Holes(double turned = 0) => Circles(HoleDiameter / 2, turned);

    /// <summary>The room that each screw takes on its gear's face: head or hole, whichever is greater.</summary>
    public ImmutableArray<Circle> Rooms(double turned = 0) => Circles(Math.Max(HoleDiameter, HeadDiameter ?? 0) / 2, turned);

    private ImmutableArray<Circle> Circles(double radius, double turned) =>
        [.. Enumerable.Range(0, Count).Select(i =>
            new Circle(Point.Polar(CircleDiameter / 2, StartAngle + turned + (2 * Math.PI * i / Count)), radius))];
}
