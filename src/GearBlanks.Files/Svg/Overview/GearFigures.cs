using System.Collections.Immutable;
using GearBlanks.Blanks;
using GearBlanks.Curves;
using GearBlanks.Curves.Fitting;
using GearBlanks.Cutting;
using GearBlanks.Mechanisms;

namespace GearBlanks.Files.Svg.Overview;

/// <summary>The gears in plan, lowest first, each in its meshed phase.</summary>
internal static class GearFigures
{
    // Enough for a picture; files that are cut have their own tolerance.
    private const double Tolerance = 0.01;

    public static ImmutableArray<Figure> Of(Mechanism mechanism)
    {
        MeshedPhases phases = MeshedPhases.Of(mechanism);
        string[] sandwiches = [.. mechanism.Sandwiches.Select(sandwich => sandwich.Name)];
        return [.. Upward(mechanism.Gears).Select(gear => Figure(gear, phases.PlaceOf(gear), Array.IndexOf(sandwiches, gear.Sandwich)))];
    }

    /// <summary>Gears by the height they lie at; those without one at the bottom, in the order of the job.</summary>
    public static IEnumerable<MountedGear> Upward(IEnumerable<MountedGear> gears) => gears.OrderBy(gear => gear.Bottom ?? double.NegativeInfinity);

    // Teeth are drawn on turned discs too: the picture shows the mechanism as it will run. Lettering would run into that of gears below.
    private static Blank Toothed(Blank blank) => new(
        blank.Name, blank.Gear, blank.Thickness, blank.Bore, blank.Screws, blank.Holes, isDisc: false, blank.HasMark, lettering: "");

    private static Figure Figure(MountedGear gear, Motion motion, int sandwich)
    {
        Part part = PartBuilder.Build(Toothed(gear.Blank));
        ArcPath outside = OutlineFit.Fit(part.Outside, Tolerance).Moved(motion);
        IEnumerable<ArcPath> holes = part.Holes.Select(hole => OutlineFit.Fit(hole, Tolerance).Moved(motion));
        Ink ink = Look.Gear(sandwich, gear.Toothing.Module);
        return new Figure(
            FormattableString.Invariant($"gear {gear.Name}, z {gear.Toothing.Teeth}"),
            [
                new Shape([outside, .. holes], ink),
                new Shape([.. part.Engraving.Select(mark => mark.Moved(motion))], ink with { Fill = null, Width = 1.5 * ink.Width }),
            ],
            Extent.Of(outside));
    }
}
