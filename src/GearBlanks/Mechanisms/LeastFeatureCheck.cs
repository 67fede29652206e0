using GearBlanks.Blanks;
using GearBlanks.Findings;

namespace GearBlanks.Mechanisms;

/// <summary>Holds a gear's least wall and least hole against the rule of the machine or shop that is to cut it.</summary>
internal static class LeastFeatureCheck
{
    /// <summary>The finding; none where the machine has no rule or the gear nothing to hold against it.</summary>
    public static IEnumerable<Finding> Of(MountedGear gear, Machine machine)
    {
        if (machine.LeastFeature is not { } rule || Features(gear).ToArray() is not [_, ..] features)
        {
            yield break;
        }

        (string what, double size) = features.MinBy(feature => feature.Size);
        double least = rule.At(gear.Blank.Thickness);
        yield return Check.Of(
            "least-feature", Places.Gear(gear.Name), size, new Limit(least, null, null, null, rule.Source), "mm", $"Least feature for {machine.Title}, {what},",
            bound => $"Make it at least {Words.Mm(Words.RoundedUp(bound))}, use thinner sheet where the rule goes by its thickness, or ask another shop.");
    }

    private static IEnumerable<(string What, double Size)> Features(MountedGear gear)
    {
        if (gear.Blank.LeastWall() is { } wall)
        {
            yield return ($"the wall between {wall.Between}", wall.Width);
        }

        foreach ((string what, double width, _) in WallCheck.Widths(gear.Blank))
        {
            yield return (what, width);
        }
    }
}
