using System.Collections.Immutable;
using GearBlanks.Curves;

namespace GearBlanks.Mechanisms.Stacks;

/// <summary>
/// The room that a body takes in plan: everything within a distance of a point, a segment or a convex polygon, less round holes that lie within it
/// and apart from one another.
/// </summary>
/// <param name="Core">A point, the ends of a segment, or the corners of a convex polygon, counter-clockwise.</param>
/// <param name="Radius">Distance, mm.</param>
/// <param name="Holes">Round holes.</param>
internal sealed record PlanShape(ImmutableArray<Point> Core, double Radius, ImmutableArray<Circle> Holes)
{
    /// <summary>A disc, with a hole in its middle where the inner radius is not 0.</summary>
    public static PlanShape Ring(Point centre, double inner, double outer) =>
        new([centre], outer, inner > 0 ? [new Circle(centre, inner)] : []);

    /// <summary>A bar with round ends.</summary>
    public static PlanShape Bar(Point from, Point to, double width) => new(from == to ? [from] : [from, to], width / 2, []);

    /// <summary>A rectangle about a point, from and to positions along and across a direction.</summary>
    public static PlanShape Box(Point origin, double direction, double left, double right, double low, double high)
    {
        var along = Vector.AtAngle(direction);
        Point At(double x, double y) => origin + (along * x) + (along.TurnedLeft * y);
        return new([At(left, low), At(right, low), At(right, high), At(left, high)], 0, []);
    }

    /// <summary>What it sweeps in a whole turn about a point; a hole about that point stays open.</summary>
    public PlanShape Swept(Point centre)
    {
        double open = Holes.Where(hole => hole.Centre == centre).Select(hole => hole.Radius).DefaultIfEmpty().Max();
        return Ring(centre, Math.Max(open, ConvexDistance.Between([centre], Core) - Radius), Core.Max(corner => corner.DistanceTo(centre)) + Radius);
    }

    public double Left => Core.Min(corner => corner.X) - Radius;

    public double Right => Core.Max(corner => corner.X) + Radius;

    public double Front => Core.Min(corner => corner.Y) - Radius;

    public double Back => Core.Max(corner => corner.Y) + Radius;

    /// <summary>
    /// How deep two shapes are in one another, mm: how far the one would have to move, or its edge give way, for them to part; negative is the room between them.
    /// </summary>
    /// <remarks>
    /// Exact as to whether they overlap: where the outer edges cross, a crossing lies in neither's hole; where they do not, one shape lies in the other, and is clear
    /// of it only within a single hole.
    /// </remarks>
    public double DepthIn(PlanShape other) =>
        Math.Min(-ConvexDistance.Between(Core, other.Core) + Radius + other.Radius, Math.Min(DepthInHoles(other), other.DepthInHoles(this)));

    // How far this sticks out of the hole that it fits best.
    private double DepthInHoles(PlanShape other) =>
        other.Holes.Select(hole => Core.Max(corner => corner.DistanceTo(hole.Centre)) + Radius - hole.Radius).DefaultIfEmpty(double.PositiveInfinity).Min();
}
