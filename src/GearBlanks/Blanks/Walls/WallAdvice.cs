using GearBlanks.Findings;

namespace GearBlanks.Blanks.Walls;

/// <summary>What to change where a wall is too thin, or where there is none.</summary>
internal static class WallAdvice
{
    /// <summary>What makes a wall of one that is not there.</summary>
    public static string Remedy(Wall wall, Cutouts cutouts)
    {
        // Arms and rims are missing only where they are narrower than rounding.
        return (wall.First.Kind, wall.Second?.Kind) switch
        {
            (HoleKind.Window, HoleKind.Window) => "make the arms wider",
            (HoleKind.Window, null) => "make the rim wider",
            (HoleKind.Bore, HoleKind.Window) => $"use a hub of more than {Words.Mm(2 * cutouts.Bore!.OuterRadius)} diameter, or a smaller bore",
            (_, HoleKind.Window) => Beside(wall, cutouts),
            _ => Apart(wall),
        };
    }

    // What parts round holes, or one from an edge.
    private static string Apart(Wall wall)
    {
        double lacking = Math.Ceiling(-wall.Width * 1000) / 1000;
        return IsShapedBoreAtEdge(wall) ? $"make the bore smaller by more than {Words.Mm(2 * lacking)} across"
            : IsShapedBore(wall) ? $"move the hole outward by more than {Words.Mm(lacking)}"
            : $"move a hole by more than {Words.Mm(lacking)}, or make its diameter smaller by more than {Words.Mm(2 * lacking)}";
    }

    /// <summary>What gives a wall a width that it lacks.</summary>
    /// <param name="wall">The wall.</param>
    /// <param name="exactly">What it lacks, mm.</param>
    public static string Widen(Wall wall, double exactly)
    {
        // A diameter gives half of what is taken off it to each side.
        double lacking = Words.RoundedUp(exactly);
        string change = (wall.First.Kind, wall.Second?.Kind) switch
        {
            (HoleKind.Window, null) => $"Make the rim wider by {Words.Mm(lacking)}",
            (HoleKind.Bore, HoleKind.Window) => $"Make the diameter of the hub greater by {Words.Mm(2 * lacking)}",
            (_, HoleKind.Window) => $"Make the diameter of the {wall.First.Name} smaller by {Words.Mm(2 * lacking)}",
            _ when IsShapedBoreAtEdge(wall) => $"Make the bore smaller by {Words.Mm(2 * lacking)} across",
            _ when IsShapedBore(wall) => $"Make the diameter of the {wall.Second!.Name} smaller by {Words.Mm(2 * lacking)}",
            _ => $"Move a hole by {Words.Mm(lacking)}, make its diameter smaller by {Words.Mm(2 * lacking)}",
        };
        return $"{change}, or use thinner sheet.";
    }

    private static bool IsShapedBore(Wall wall) => wall.First is { Kind: HoleKind.Bore, Contour.AsCircle: null };

    private static bool IsShapedBoreAtEdge(Wall wall) => IsShapedBore(wall) && wall.Second is null;

    // Where a round hole can stand beside the windows.
    private static string Beside(Wall wall, Cutouts cutouts)
    {
        Crossings crossings = cutouts.Crossings!;
        double diameter = wall.First.Contour.AsCircle!.Value.Diameter;
        double hub = crossings.HubDiameter / 2;
        double hubRing = hub - (cutouts.Bore?.OuterRadius ?? 0);
        double arm = Math.Min(crossings.ArmWidth, crossings.ArmWidthAtRim);
        string?[] places =
        [
            hubRing > diameter ? $"put its centre less than {Words.Mm(Math.Floor(((hub * 2) - diameter) * 500) / 1000)} from the middle, in the hub" : null,
            crossings.RimWidth > diameter ? "put it in the rim" : null,
            arm > diameter ? "put it on the centre line of an arm" : null,
        ];
        string[] found = [.. places.OfType<string>()];
        return found.Length > 0
            ? string.Join(", or ", found)
            : $"make its diameter less than {Words.Mm(Math.Max(hubRing, Math.Max(crossings.RimWidth, arm)))}, or the hub, the rim or the arms wider";
    }
}
