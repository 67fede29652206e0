using System.Collections.Immutable;
using GearBlanks.Blanks;
using GearBlanks.Findings;
using GearBlanks.Teeth;

namespace GearBlanks.Mechanisms.Stacks;

/// <summary>At which angles gears stand in their sandwiches, and whether their screws let them be put on at others.</summary>
internal static class Clocking
{
    private const double Whole = 1e-6;

    private const int MostScrews = 12;

    public static ImmutableArray<GearClocking> Of(Mechanism mechanism, MeshedPhases phases) => [.. mechanism.Gears.Select(gear => Of(gear, phases))];

    /// <summary>Screws that let a gear be put on with its teeth elsewhere, where a loop of meshes asks for one angle.</summary>
    public static IEnumerable<Finding> Findings(Mechanism mechanism)
    {
        HashSet<string> looped = LoopedGears.Of(mechanism);
        foreach (MountedGear gear in mechanism.Gears.Where(gear => looped.Contains(gear.Name)))
        {
            if (gear.Blank.Cutouts.Screws is { } screws && WrongWays(gear, screws) is var wrong && (wrong > 0 || FlipsUnseen(gear, screws)))
            {
                yield return new Finding(
                    "clocking-pattern", Places.Gear(gear.Name), Level.Tight, wrong, 0, "ways", "geometry: the symmetry of the screws against that of the teeth",
                    wrong > 0
                        ? FormattableString.Invariant($"In {wrong} of {screws.Count} ways in which its screws let it be put on its teeth stand elsewhere, and a loop of meshes needs them in one place.")
                        : "Put on upside down its teeth stand elsewhere, and a loop of meshes needs them in one place.",
                    Advice(gear, screws));
            }
        }
    }

    private static GearClocking Of(MountedGear gear, MeshedPhases phases)
    {
        ScrewCircle? screws = gear.Blank.Cutouts.Screws;
        double angle = phases.AngleOf(gear);
        return new GearClocking(
            gear.Name, gear.Sandwich, gear.Toothing is RackBar ? null : angle - (2 * Math.PI * Math.Floor(angle / (2 * Math.PI))), gear.Turned,
            screws is null ? null : screws.StartAngle + gear.Turned, screws?.Count ?? 1, screws is null ? 0 : WrongWays(gear, screws),
            screws is not null && FlipsUnseen(gear, screws));
    }

    // Turned on by whole steps of the screws the teeth fall on teeth where z k / n is whole.
    private static int WrongWays(MountedGear gear, ScrewCircle screws) =>
        Enumerable.Range(1, screws.Count - 1).Count(k => gear.Toothing.Teeth * k % screws.Count != 0);

    // Upside down, the first screw on the place of another one, the gear stands turned by twice its angle and some steps of the screws.
    private static bool FlipsUnseen(MountedGear gear, ScrewCircle screws) => Enumerable.Range(0, screws.Count).Any(k =>
        Math.Abs(Math.IEEERemainder(gear.Toothing.Teeth * ((screws.StartAngle / Math.PI) + ((double)k / screws.Count)), 1)) > Whole);

    private static string Advice(MountedGear gear, ScrewCircle screws)
    {
        int[] counts = [.. Enumerable.Range(2, MostScrews - 1).Where(count => gear.Toothing.Teeth % count == 0).OrderBy(count => Math.Abs(count - screws.Count))];
        const string mark = "mark one tooth and its place on the next part, on the face that is up";
        return counts.Length > 0
            ? FormattableString.Invariant($"Use {counts[0]} screws that start at 0 degrees, which set the teeth alike in every way, or {mark}.")
            : $"M{mark[1..]}, or add a pin beside the screws.";
    }
}
