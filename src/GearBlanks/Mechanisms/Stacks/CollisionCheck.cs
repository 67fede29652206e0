using System.Collections.Immutable;
using GearBlanks.Curves;
using GearBlanks.Findings;

namespace GearBlanks.Mechanisms.Stacks;

/// <summary>Bodies that move against one another must not take the same room, and should not come too near.</summary>
internal static class CollisionCheck
{
    // Heights are sums of written decimals.
    private const double Rounding = 1e-9;

    // A bore that differs less than this from its spindle is meant for it, and the fit is judged apart, mm.
    private const double DeepestFit = 0.1;

    private const string Reason = "geometry: two bodies cannot take the same room";

    public static IEnumerable<Finding> Of(Mechanism mechanism)
    {
        ImmutableArray<Body> bodies = mechanism.Stack.Bodies;
        StackLimits limits = mechanism.Limits.Stack;
        HashSet<(string, string)> meshes = [.. mechanism.Meshes.SelectMany(
            mesh => ((string, string)[])[(mesh.First.Name, mesh.Second.Name), (mesh.Second.Name, mesh.First.Name)])];
        bool isClear = true;
        foreach ((int first, int second) in new BodyTree(bodies, limits.SideClearance.TightBelow ?? 0, limits.StackClearance.TightBelow ?? 0).Pairs())
        {
            if (MayMeet(bodies[first], bodies[second], meshes) && Judge(bodies[first], bodies[second], limits) is { Level: not Level.Ok } finding)
            {
                isClear &= finding.Name != "collision";
                yield return finding;
            }
        }

        if (isClear && bodies.Length > 1)
        {
            yield return new Finding(
                "collision", Places.Stack, Level.Ok, 0, 0, "pairs", Reason, FormattableString.Invariant($"None of {bodies.Length} bodies runs into another one."), null);
        }
    }

    // What moves as one, and what stands still together, cannot strike; but a hand or an arm may be drawn into a gear of its own sandwich.
    private static bool MayMeet(Body one, Body other, HashSet<(string, string)> meshes) =>
        (one.Sandwich != other.Sandwich || IsAcross(one, other) || IsAcross(other, one))
        && !(one.Kind == BodyKind.Gear && other.Kind == BodyKind.Gear && meshes.Contains((one.Name, other.Name)));

    // Words only for what is not well: most pairs are.
    private static Finding? Judge(Body one, Body other, StackLimits limits)
    {
        (PlanShape own, PlanShape others) = one.Beside(other);
        double depth = own.DepthIn(others);
        double shared = one.Heights.SharedWith(other.Heights);
        double gap = one.Heights.LeastGapTo(other.Heights);
        if (depth > Rounding)
        {
            return depth < DeepestFit && IsFit(one, other) ? null
                : shared > Rounding ? Collision(one, other, depth, shared, limits)
                : one.Sandwich == other.Sandwich || limits.StackClearance.Judge(gap) is (Level.Ok, _) ? null
                : Check.Of(
                    "stack-clearance", Places.Bodies(one, other), gap, limits.StackClearance, "mm", "Least gap in height, with the tolerances of the stack,",
                    bound => CollisionAdvice.Raise(one, other, bound));
        }

        // Tubes and hubs on one axis lie in one another; their fits are judged apart.
        return gap > -Rounding || limits.SideClearance.Judge(-depth) is (Level.Ok, _) || IsOnOneAxis(one, other) || IsFit(one, other)
            ? null
            : Check.Of(
                "side-clearance", Places.Bodies(one, other), -depth, limits.SideClearance, "mm", "Least gap in plan between bodies on one level",
                bound => CollisionAdvice.Part(one, other, bound + depth));
    }

    private static Finding Collision(Body one, Body other, double depth, double shared, StackLimits limits) => new(
        "collision", Places.Bodies(one, other), Level.Fails, shared, 0, "mm", Reason,
        $"They run into one another: {Words.Mm(depth)} in plan and {Words.Mm(shared)} in height.",
        CollisionAdvice.Of(one, other, depth, limits));

    private static bool IsOnOneAxis(Body one, Body other) => one.Axis is not null && one.Axis == other.Axis;

    private static bool IsAcross(Body one, Body other) =>
        one.Sandwich is not null && one.Kind is BodyKind.Hand or BodyKind.Arm && other.Kind is BodyKind.Gear or BodyKind.Washer;

    // A spindle within a hole about its own middle.
    private static bool IsFit(Body one, Body other)
    {
        (PlanShape own, PlanShape others) = one.Beside(other);
        return (other.Kind == BodyKind.Spindle && HasHoleAt(own, others.Core[0])) || (one.Kind == BodyKind.Spindle && HasHoleAt(others, own.Core[0]));
    }

    private static bool HasHoleAt(PlanShape shape, Point middle) => shape.Holes.Any(hole => hole.Centre.DistanceTo(middle) < Rounding);
}
