using GearBlanks.Findings;

namespace GearBlanks.Mechanisms.Stacks;

/// <summary>How much the faces of two gears in mesh share of their heights at the worst tolerances of the stack.</summary>
internal static class FaceOverlapCheck
{
    public static IEnumerable<Finding> Of(Mesh mesh, Mechanism mechanism)
    {
        if (mesh.First.Bottom is not { } first || mesh.Second.Bottom is not { } second
            || mechanism.Stack.Layer(mesh.First.Name) is not { } one || mechanism.Stack.Layer(mesh.Second.Name) is not { } other)
        {
            yield break;
        }

        double overlap = Math.Min(first + one.Thickness, second + other.Thickness) - Math.Max(first, second) - Lost(one, other);
        double apart = first + (one.Thickness / 2) - second - (other.Thickness / 2);
        yield return Check.Of(
            "face-overlap", Places.Mesh(mesh.Name), overlap / Math.Min(one.Thickness, other.Thickness), mechanism.Limits.FaceOverlap, "",
            "Overlap of the faces, as a share of the thinner one,",
            _ => Math.Abs(apart) > 1e-9
                ? $"{(apart > 0 ? "Lower" : "Raise")} {mesh.First.Name} by {Words.Mm(Math.Abs(apart))} to bring the middles level."
                : "Hold the heights closer: the middles are level already.");
    }

    // What the tolerances take off the overlap; nothing where there are none.
    private static double Lost(StackLayer one, StackLayer other)
    {
        Heights nominal = one.Heights with { BottomTolerance = 0, TopTolerance = 0 };
        Heights against = other.Heights with { BottomTolerance = 0, TopTolerance = 0 };
        return nominal.LeastSharedWith(against, one.Thickness, other.Thickness)
            - one.Heights.LeastSharedWith(other.Heights, one.LeastThickness, other.LeastThickness);
    }
}
