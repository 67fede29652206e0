using System.Collections.Immutable;
using GearBlanks.Meshing.Accuracy;
using GearBlanks.Meshing.Builds;
using GearBlanks.Teeth;
using Range = GearBlanks.Meshing.Builds.Range;

namespace GearBlanks.Mechanisms.Conditions;

/// <summary>A gear that meshes, with all that differs from build to build.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Height">Height over which its post leans, mm.</param>
/// <param name="Growth">Its growth with the climate.</param>
/// <param name="Thicker">What makes its teeth thicker, mm, by name.</param>
/// <param name="Moved">What moves its centre: whose it is, how far at most, mm.</param>
/// <param name="Shares">The same as shares of what is drawn.</param>
internal sealed record MeshedGear(
    string Name, double Height, Growth Growth, ImmutableArray<(string Name, Range Range)> Thicker, ImmutableArray<(string Name, string Of, double Most)> Moved,
    ImmutableArray<Share> Shares)
{
    /// <summary>Its part in a build.</summary>
    public GearDraw Draw => new([.. Thicker.Select(one => one.Range)], Shares, Growth);

    public static MeshedGear Of(
        MountedGear gear, JobGear job, JobSandwich sandwich, JobConditions conditions, GearPlacing placing, Growth growth, FlankTolerances? flanks)
    {
        bool isRack = gear.Toothing is RackBar;
        double eccentricity = isRack ? 0 : job.Conditions?.Eccentricity ?? conditions.Gears.Eccentricity ?? (flanks?.Runout / 2) ?? 0;
        double clearance = isRack ? 0 : sandwich.Conditions?.BoreClearance ?? conditions.Sandwiches.BoreClearance ?? 0;
        double endPlay = sandwich.Conditions?.EndPlay ?? conditions.Sandwiches.EndPlay ?? 0;
        double height = placing.HeightOf(gear, job.Place, endPlay);
        (string Name, string Of, double Most)[] moved =
        [
            ("post tilt", gear.Axis.Name, conditions.PostTilt * height),
            ("bore clearance", sandwich.Name, clearance / 2),
            ("eccentricity", gear.Name, eccentricity),
        ];
        return new MeshedGear(
            gear.Name, height, growth, ThickerBy(gear, job, conditions, flanks), [.. moved.Where(one => one.Most > 0)],
            [
                .. placing.Tilt(gear.Axis, height),
                .. placing.Shares($"sandwich {sandwich.Name}", clearance / 2, 1),
                .. placing.Shares($"gear {gear.Name}", eccentricity, 1),
            ]);
    }

    /// <summary>Its quantities as a mesh feels them.</summary>
    public IEnumerable<Quantity> On(Influence thickness) => Moved
        .Select(one => new Quantity(one.Name, one.Of, Influence.Place, 0, one.Most))
        .Concat(Thicker.Select(one => new Quantity(one.Name, Name, thickness, one.Range.Least, one.Range.Most)));

    // A flank that is out by a length along its normal makes the tooth thicker by that over cos alpha. Both flanks lie within half the band: common practice, no source.
    private static ImmutableArray<(string, Range)> ThickerBy(MountedGear gear, JobGear job, JobConditions conditions, FlankTolerances? flanks)
    {
        // What was measured has no tolerance left.
        double tolerance = job.Measured is null ? job.Conditions?.ThicknessTolerance ?? conditions.Gears.ThicknessTolerance ?? 0 : 0;
        double profile = (flanks?.Profile ?? 0) / Math.Cos(gear.Toothing.PressureAngle);
        double pitch = flanks?.SinglePitch ?? 0;

        // The outline holds in the middle of the sheet; where two gears are thickest they meet.
        double taper = Math.Tan(job.Conditions?.EdgeTaper ?? conditions.Gears.EdgeTaper ?? 0) * (gear.Blank.Thickness + conditions.SheetTolerance);
        (string Name, Range Range)[] all =
        [
            ("tooth thickness", new Range(-tolerance, tolerance)),
            ("edge taper", new Range(0, taper)),
            ("single pitch", new Range(-pitch, pitch)),
            ("profile", new Range(-profile, profile)),
        ];
        return [.. all.Where(one => one.Range.Most > 0)];
    }
}
