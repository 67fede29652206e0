using System.Collections.Immutable;
using GearBlanks.Findings;

namespace GearBlanks.Mechanisms.Stacks;

/// <summary>All checks of a stack, and its report.</summary>
internal static class StackCheck
{
    public static IEnumerable<Finding> Of(Mechanism mechanism) =>
        MeasuredHeightCheck.Of(mechanism)
            .Concat(CollisionCheck.Of(mechanism))
            .Concat(ScrewCheck.Of(mechanism))
            .Concat(FitCheck.Of(mechanism))
            .Concat(WobbleCheck.Of(mechanism))
            .Concat(Clocking.Findings(mechanism));

    /// <summary>The report; without clocking where the train is locked and has no phases.</summary>
    public static StackReport Report(Mechanism mechanism, MeshedPhases? phases) => phases is null
        ? new StackReport(Heights(mechanism.Stack), [], [])
        : new StackReport(Heights(mechanism.Stack), Clocking.Of(mechanism, phases), ToothFacing.Of(mechanism, phases));

    private static ImmutableArray<HeightRow> Heights(Stack stack) =>
    [
        .. stack.Bodies
            .Select(body => new HeightRow(
                body.Sandwich, body.Words, body.Heights.Bottom, body.Heights.Top, body.Heights.BottomTolerance, body.Heights.TopTolerance))
            .Concat(Gaps(stack))
            .OrderBy(row => row.From)
            .ThenBy(row => row.To),
    ];

    // Washers that take no room in plan take height all the same.
    private static IEnumerable<HeightRow> Gaps(Stack stack) =>
        from sandwich in stack.Sandwiches
        where sandwich.HasHeights
        from layer in sandwich.Layers
        where layer.Gear is null && layer.Job.Stack.Diameter is null
        select new HeightRow(sandwich.Name, layer.Name, layer.Heights.Bottom, layer.Heights.Top, layer.Heights.BottomTolerance, layer.Heights.TopTolerance);
}
