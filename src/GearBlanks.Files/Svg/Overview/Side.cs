using GearBlanks.Curves;
using GearBlanks.Cutting;

namespace GearBlanks.Files.Svg.Overview;

/// <summary>One side of the plan, where callouts stand in a row: places along it grow rightward or downward.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Outward">Direction away from the plan: one of the four upright ones, length 1.</param>
/// <param name="Gap">Free space between the plan and the callouts, mm.</param>
internal sealed record Side(Extent Plan, Vector Outward, double Gap)
{
    private bool IsUpright => Outward.X != 0;

    /// <summary>Where the side begins, mm along it.</summary>
    public double Start => IsUpright ? -Plan.Top : Plan.Left;

    /// <summary>Where the side ends, mm along it.</summary>
    public double End => IsUpright ? -Plan.Bottom : Plan.Right;

    /// <summary>A point's place along the side, mm.</summary>
    public double Along(Point point) => IsUpright ? -point.Y : point.X;

    /// <summary>How far outward a point lies, mm.</summary>
    public double Out(Point point) => (point - default(Point)).Dot(Outward);

    /// <summary>How much of the side a callout takes, mm.</summary>
    public double Size(Callout callout) => IsUpright ? callout.Height : callout.Width;

    /// <summary>The box of a callout that begins at a place along the side.</summary>
    public Extent Box(Callout callout, double start)
    {
        double depth = IsUpright ? callout.Width : callout.Height;
        double near = Edge + Gap;
        return IsUpright
            ? Corners(new Point(Outward.X * near, -start), new Point(Outward.X * (near + depth), -start - callout.Height))
            : Corners(new Point(start, Outward.Y * near), new Point(start + callout.Width, Outward.Y * (near + depth)));
    }

    /// <summary>The edge of a callout's box that faces the plan.</summary>
    public (Point From, Point To) Rule(Extent box)
    {
        var topLeft = new Point(box.Left, box.Top);
        var bottomRight = new Point(box.Right, box.Bottom);
        var topRight = new Point(box.Right, box.Top);
        var bottomLeft = new Point(box.Left, box.Bottom);
        return Outward switch
        {
            { X: > 0 } => (topLeft, bottomLeft),
            { X: < 0 } => (topRight, bottomRight),
            { Y: > 0 } => (bottomLeft, bottomRight),
            _ => (topLeft, topRight),
        };
    }

    private double Edge => Outward switch
    {
        { X: > 0 } => Plan.Right,
        { X: < 0 } => -Plan.Left,
        { Y: > 0 } => Plan.Top,
        _ => -Plan.Bottom,
    };

    private static Extent Corners(Point one, Point other) =>
        new(Math.Min(one.X, other.X), Math.Min(one.Y, other.Y), Math.Max(one.X, other.X), Math.Max(one.Y, other.Y));
}
