using GearBlanks.Teeth;

namespace GearBlanks.Blanks;

/// <summary>Which cutouts and marks a kind of teeth leaves a place for.</summary>
internal static class BlankRules
{
    /// <exception cref="GearGeometryException">A cutout has no place, or a marked tooth does not exist.</exception>
    public static void Require(Blank blank)
    {
        string kind = blank.Gear is RackBar ? "rack" : "ring";
        if (blank.Gear is not ExternalGear)
        {
            RequireNone("bore", blank.Cutouts.Bore?.OuterRadius * 2, kind);
            RequireNone("crossings", blank.Cutouts.Crossings?.HubDiameter, kind);
        }

        if (blank.Gear is RackBar)
        {
            RequireNone("screw circle", blank.Cutouts.Screws?.CircleDiameter, kind);
        }

        foreach (int tooth in blank.MarkedTeeth)
        {
            if (tooth < 1 || tooth > blank.Gear.Teeth)
            {
                throw new GearGeometryException(
                    "no-such-tooth", $"{blank.Name} has no tooth of this number to mark", tooth, tooth < 1 ? 1 : blank.Gear.Teeth,
                    $"use a tooth from 1 to {blank.Gear.Teeth}");
            }
        }
    }

    private static void RequireNone(string what, double? size, string kind)
    {
        if (size is { } diameter)
        {
            throw new GearGeometryException(
                "no-place", $"A {kind} has no place for a {what}; its diameter, mm", diameter, 0, $"leave the {what} out, and give single holes by their place");
        }
    }
}
