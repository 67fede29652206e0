using GearBlanks.Curves;
using GearBlanks.Findings;

namespace GearBlanks.Blanks;

/// <summary>What there is to say of a blank's walls and holes: least material between bore, holes and root circle; least hole.</summary>
public static class WallCheck
{
    /// <summary>The findings on one blank; none where it has no holes.</summary>
    /// <param name="blank">The blank.</param>
    /// <param name="place">What it is called in findings.</param>
    /// <param name="limits">The limits, in sheet thicknesses.</param>
    public static IEnumerable<Finding> Of(Blank blank, string place, Limits limits)
    {
        if (blank.LeastWall() is not { } wall)
        {
            yield break;
        }

        yield return Check.Of(
            "wall", place, wall.Width, limits.Wall.Times(blank.Thickness), "mm", $"Least wall, between {wall.Between},",
            bound => Advice(bound - wall.Width));

        (string name, Circle least) = blank.NamedHoles().MinBy(hole => hole.Circle.Radius);
        yield return Check.Of(
            "hole-diameter", place, least.Diameter, limits.HoleDiameter.Times(blank.Thickness), "mm", $"Diameter of the {name}",
            bound => $"Drill it instead of cutting it, or make it at least {Words.Mm(Math.Ceiling(bound * 100) / 100)}.");
    }

    // A diameter gives half of what is taken off it to each side. Rounded up, but not for the last bits of a double.
    private static string Advice(double exactly)
    {
        double lacking = Math.Ceiling((exactly * 100) - 1e-8) / 100;
        return $"Move a hole by {Words.Mm(lacking)}, make its diameter smaller by {Words.Mm(2 * lacking)}, or use thinner sheet.";
    }
}
