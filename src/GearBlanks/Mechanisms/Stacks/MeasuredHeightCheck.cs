using GearBlanks.Findings;

namespace GearBlanks.Mechanisms.Stacks;

/// <summary>What was measured beats what was drawn; where the two differ, somebody should know.</summary>
internal static class MeasuredHeightCheck
{
    public static IEnumerable<Finding> Of(Mechanism mechanism)
    {
        Limit limit = mechanism.Limits.Stack.HeightDisagreement;
        foreach (StackSandwich sandwich in mechanism.Stack.Sandwiches)
        {
            if (sandwich.Job is { MeasuredHeight: { } measured, Height: { } drawn })
            {
                yield return Disagreement(Places.Sandwich(sandwich.Name), "height", measured, drawn, limit);
            }

            foreach (StackLayer layer in sandwich.Layers)
            {
                if (layer.Job.Stack.MeasuredThickness is { } thickness)
                {
                    yield return Disagreement(
                        layer.Gear is null ? layer.Name : Places.Gear(layer.Name), "thickness", thickness, layer.DrawnThickness, limit);
                }
            }
        }
    }

    private static Finding Disagreement(string place, string what, double measured, double drawn, Limit limit) => Check.Of(
        "height-disagreement", place, Math.Abs(measured - drawn), limit, "mm",
        $"Difference between the measured {what} {Words.Mm(measured)} and the drawn {Words.Mm(drawn)}",
        _ => $"Measure again, or draw {Words.Mm(measured)}: the check uses the measured {what}.");
}
