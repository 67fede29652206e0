using System.Collections.Immutable;
using GearBlanks.Curves;
using GearBlanks.Findings;

namespace GearBlanks.Mechanisms;

/// <summary>Screws of gears on one spindle must miss each other.</summary>
internal static class SandwichCheck
{
    public static IEnumerable<Finding> Of(Mechanism mechanism)
    {
        foreach (Sandwich sandwich in mechanism.Sandwiches)
        {
            MountedGear[] screwed = [.. sandwich.Gears.Where(gear => gear.Blank.Cutouts.Screws is not null)];
            if (screwed.Length > 1)
            {
                yield return OnScrews(sandwich, screwed, mechanism.Limits);
            }
        }
    }

    private static Finding OnScrews(Sandwich sandwich, MountedGear[] gears, Limits limits)
    {
        var pairs = from i in Enumerable.Range(0, gears.Length)
                    from j in Enumerable.Range(i + 1, gears.Length - i - 1)
                    from one in Rooms(gears[i])
                    from other in Rooms(gears[j])
                    select (First: gears[i], Second: gears[j], Room: one.WallTo(other));
        var (first, second, room) = pairs.MinBy(pair => pair.Room);
        return Check.Of(
            "screw-room", Places.Sandwich(sandwich.Name), room, limits.ScrewRoom, "mm", $"Least room between a screw of {first.Name} and one of {second.Name}",
            _ => TurnAdvice(first, second));
    }

    private static ImmutableArray<Circle> Rooms(MountedGear gear) => gear.Blank.Cutouts.Screws!.Rooms(gear.Turned);

    // Halfway between the other gear's screws there is most room.
    private static string TurnAdvice(MountedGear first, MountedGear second)
    {
        double step = 180.0 / first.Blank.Cutouts.Screws!.Count;
        return first.Blank.Cutouts.Screws.Count == second.Blank.Cutouts.Screws!.Count
            ? $"Start the screws of {second.Name} {Words.Figure(step, "degrees")} from those of {first.Name}, or use a wider screw circle."
            : "Give both gears the same number of screws, set halfway between one another, or use different screw circles.";
    }
}
