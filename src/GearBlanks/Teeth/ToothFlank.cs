using GearBlanks.Curves;
using MathNet.Numerics.RootFinding;

namespace GearBlanks.Teeth;

/// <summary>The flanks of a round gear's tooth: an involute and its mirror image.</summary>
/// <param name="BaseRadius">Radius of their base circle, mm.</param>
/// <param name="HalfAtBase">Half the angle, rad, at the base circle of the tooth; of a ring, whose tooth widens outward, less than nothing by as much.</param>
/// <param name="Sense">1 where the tip lies outward, -1 for a ring.</param>
internal readonly record struct ToothFlank(double BaseRadius, double HalfAtBase, int Sense)
{
    // Steeper than this is no relief: its base circle would be less than half the gear's.
    private const double LeastBase = 0.5;

    private const int MaxSteps = 200;

    /// <summary>Half the tooth's angle at a radius, rad.</summary>
    public double HalfAngleAt(double radius) => Sense * (HalfAtBase - InvoluteAt(radius));

    /// <summary>Angle between the flank and the radius, rad.</summary>
    public double ProfileAngleAt(double radius) => Math.Acos(Math.Clamp(BaseRadius / radius, 0, 1));

    /// <summary>True where the first of two radii lies nearer to the tip than the second by more than a length, mm.</summary>
    public bool Nearer(double first, double second, double by = 0) => Sense * (first - second) > by;

    /// <summary>The flank at the clockwise side of the tooth on +X between two radii, mm.</summary>
    public Involute Side(double from, double to) => new(
        BaseRadius, Involute.RollAt(BaseRadius, from), Involute.RollAt(BaseRadius, to),
        Sense > 0 ? Motion.Turn(-HalfAtBase) : Motion.MirrorInX.Then(Motion.Turn(HalfAtBase)));

    /// <summary>
    /// The flank that leaves this one at a radius and has receded by an amount, mm along the normal, at the tip circle; null where it would be no relief but a
    /// chamfer. A flank's normal distance from a point is the base radius times the angle between them on the point's circle.
    /// </summary>
    public ToothFlank? Relieved(double start, double tip, double amount)
    {
        double given = BaseRadius;
        double wanted = Math.Abs(InvoluteAt(tip) - InvoluteAt(start)) + (amount / given);
        double Excess(double share) => Math.Abs(InvoluteAt(share * given, tip) - InvoluteAt(share * given, start)) - wanted;
        if (Excess(LeastBase) < 0)
        {
            return null;
        }

        double relieved = Excess(1) >= 0 ? given : given * Brent.FindRoot(Excess, LeastBase, 1, 1e-15, MaxSteps);
        return new ToothFlank(relieved, HalfAtBase - InvoluteAt(start) + InvoluteAt(relieved, start), Sense);
    }

    private static double InvoluteAt(double baseRadius, double radius) =>
        InvoluteFunction.Inv(Math.Acos(Math.Clamp(baseRadius / radius, 0, 1)));

    private double InvoluteAt(double radius) => InvoluteAt(BaseRadius, radius);
}
