using GearBlanks.Blanks.Walls;
using GearBlanks.Curves;
using GearBlanks.Findings;

namespace GearBlanks.Blanks;

/// <summary>What there is to say of a blank's walls and cutouts: least material between them and the edges, least arm, least hole.</summary>
public static class WallCheck
{
    /// <summary>The findings on one blank; none where it has no cutouts.</summary>
    /// <param name="blank">The blank.</param>
    /// <param name="place">What it is called in findings.</param>
    /// <param name="limits">The limits, in sheet thicknesses.</param>
    public static IEnumerable<Finding> Of(Blank blank, string place, Limits limits)
    {
        if (blank.Walls.Where(wall => !wall.IsArm).MinBy(wall => wall.Width) is { } wall)
        {
            yield return Check.Of(
                "wall", place, wall.Width, limits.Wall.Times(blank.Thickness), "mm", $"Least wall, between {wall.Between},",
                bound => WallAdvice.Widen(wall, bound - wall.Width));
        }

        if (blank.LeastArm() is { } arm)
        {
            yield return Check.Of(
                "arm-width", place, arm, limits.ArmWidth.Times(blank.Thickness), "mm", "Least width of an arm",
                bound => ArmAdvice(blank.Cutouts.Crossings!, bound, arm));
        }

        if (blank.Holes.Any(hole => hole.Kind != HoleKind.Window))
        {
            var least = Widths(blank).MinBy(width => width.Width);
            yield return Check.Of(
                "hole-diameter", place, least.Width, limits.HoleDiameter.Times(blank.Thickness), "mm", least.What,
                bound => $"{(least.IsRound ? "Drill it instead of cutting it, or make" : "Make")} it at least {Words.Mm(Words.RoundedUp(bound))}{(least.IsRound ? "" : ", or use thinner sheet")}.");
        }
    }

    /// <summary>The width of each cutout but the windows, mm: of a bore that is not round the narrowest way through it.</summary>
    internal static IEnumerable<(string What, double Width, bool IsRound)> Widths(Blank blank)
    {
        if (blank.Cutouts.Bore is { } bore)
        {
            (string what, double width) = bore.Narrowest;
            yield return (what, width, bore is Bores.RoundBore);
        }

        foreach (Hole hole in blank.Holes)
        {
            if (hole is { Kind: not HoleKind.Bore, Contour.AsCircle: Circle circle })
            {
                yield return ($"Diameter of the {hole.Name}", circle.Diameter, true);
            }
        }
    }

    // The narrow end of a tapered arm decides, and its slope takes a little off.
    private static string ArmAdvice(Crossings crossings, double bound, double arm)
    {
        double width = Words.RoundedUp(Math.Min(crossings.ArmWidth, crossings.ArmWidthAtRim) + bound - arm);
        return $"Make the arms {(crossings.ArmWidth == crossings.ArmWidthAtRim ? "" : "about ")}{Words.Mm(width)} wide at least, or use thinner sheet.";
    }
}
