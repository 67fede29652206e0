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
        (string Name, Circle Circle)[] holes = [.. blank.NamedHoles()];
        if (holes.Length == 0)
        {
            yield break;
        }

        (string between, double wall) = Walls(blank, holes).MinBy(w => w.Wall);
        yield return Check.Of(
            "wall", place, wall, limits.Wall.Times(blank.Thickness), "mm", $"Least wall, between {between},",
            bound => $"Move or shrink one of them by {Words.Mm(Math.Ceiling((bound - wall) * 100) / 100)}, or use thinner sheet.");

        (string name, Circle least) = holes.MinBy(h => h.Circle.Radius);
        yield return Check.Of(
            "hole-diameter", place, least.Diameter, limits.HoleDiameter.Times(blank.Thickness), "mm", $"Diameter of the {name}",
            bound => $"Drill it instead of cutting it, or make it at least {Words.Mm(Math.Ceiling(bound * 100) / 100)}.");
    }

    private static IEnumerable<(string Between, double Wall)> Walls(Blank blank, (string Name, Circle Circle)[] holes)
    {
        for (int i = 0; i < holes.Length; i++)
        {
            (string name, Circle circle) = holes[i];
            yield return ($"{name} and root circle", blank.Gear.RootRadius - circle.Centre.Radius - circle.Radius);
            foreach ((string other, Circle second) in holes.Skip(i + 1))
            {
                yield return (name == other ? $"two {name}s" : $"{name} and {other}", circle.WallTo(second));
            }
        }
    }
}
