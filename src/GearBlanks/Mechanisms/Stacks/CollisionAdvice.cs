using GearBlanks.Findings;

namespace GearBlanks.Mechanisms.Stacks;

/// <summary>What parts two bodies.</summary>
internal static class CollisionAdvice
{
    public static string Of(Body one, Body other, double depth, StackLimits limits)
    {
        double above = limits.StackClearance.TightBelow ?? 0;
        double apart = Words.RoundedUp(depth + (limits.SideClearance.TightBelow ?? 0));
        string parting = $"or part them by {Words.Mm(apart)} in plan";
        (Body post, Body struck) = IsPost(one) ? (one, other) : (other, one);
        if (IsPost(post) && !IsPost(struck))
        {
            // Shortened at whichever end it reaches through the other body.
            if (post.Heights.Bottom < struck.Heights.Bottom)
            {
                return $"End {post.Words} below {Words.Mm(RoundedDown(struck.Heights.Least - above))}, {parting}.";
            }

            if (post.Heights.Top > struck.Heights.Top)
            {
                return $"Begin {post.Words} above {Words.Mm(Words.RoundedUp(struck.Heights.Greatest + above))}, {parting}.";
            }
        }

        string turn = (one.Kind == BodyKind.ScrewHeads ? one : other.Kind == BodyKind.ScrewHeads ? other : null) is { } heads
            ? $" Or put the screw heads of {heads.Name} on its other face, or sink them."
            : "";
        return $"{Raising(one, other, above)}, {parting}.{turn}";
    }

    /// <summary>What gives two bodies a gap in height.</summary>
    public static string Raise(Body one, Body other, double gap) => Raising(one, other, gap) + ".";

    /// <summary>What gives two bodies more room in plan.</summary>
    public static string Part(Body one, Body other, double by) =>
        $"Part {one.Words} and {other.Words} by {Words.Mm(Words.RoundedUp(by))} in plan, or set them on different levels.";

    private static string Raising(Body one, Body other, double gap)
    {
        (Body lower, Body upper) = one.Heights.Bottom + one.Heights.Top < other.Heights.Bottom + other.Heights.Top ? (one, other) : (other, one);
        string by = Words.Mm(Words.RoundedUp(gap - one.Heights.LeastGapTo(other.Heights)));
        string washer = upper.Sandwich is null ? "" : $" with a washer of {by} under it";
        return $"Raise {upper.Words} by {by}{washer}, or lower {lower.Words} as much";
    }

    private static bool IsPost(Body body) => body.Kind is BodyKind.Spindle or BodyKind.Column;

    private static double RoundedDown(double value) => Math.Floor((value * 100) + 1e-8) / 100;
}
