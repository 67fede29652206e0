using System.Collections.Immutable;
using GearBlanks.Blanks.Bores;

namespace GearBlanks.Mechanisms.Stacks;

/// <summary>Works out a job's stack from its gears. Measured thicknesses and heights beat drawn ones.</summary>
internal static class StackBuilder
{
    /// <param name="job">The job.</param>
    /// <param name="gears">Its gears by name.</param>
    /// <param name="axes">Its axes by name.</param>
    public static Stack Of(
        Job job, ImmutableDictionary<string, MountedGear> gears, ImmutableDictionary<string, Axis> axes)
    {
        ImmutableArray<StackSandwich> sandwiches = [.. job.Sandwiches.Select(sandwich => Sandwich(sandwich, job.Defaults, gears, axes))];
        ImmutableArray<StackSpindle> spindles = [.. job.Axes.SelectMany(axis => axis.Spindles.Select(spindle => Spindle(spindle, axes[axis.Name])))];
        ImmutableDictionary<string, string> carriers = job.Axes.Where(axis => axis.CarriedBy is not null).ToImmutableDictionary(axis => axis.Name, axis => axis.CarriedBy!);
        return new Stack(sandwiches, spindles, new BodyBuilder(sandwiches, axes, carriers).Of(job, spindles));
    }

    private static StackSandwich Sandwich(
        JobSandwich sandwich, JobDefaults defaults, ImmutableDictionary<string, MountedGear> gears, ImmutableDictionary<string, Axis> axes)
    {
        double? start = sandwich.MeasuredHeight ?? sandwich.Height;
        (double bottom, double deviation) = (start ?? 0, sandwich.HeightTolerance);
        ImmutableArray<StackLayer>.Builder layers = ImmutableArray.CreateBuilder<StackLayer>(sandwich.Layers.Length);
        foreach (JobLayer layer in sandwich.Layers)
        {
            MountedGear? gear = layer is JobGear toothed ? gears[toothed.Name] : null;
            double drawn = gear?.Blank.Thickness ?? ((JobWasher)layer).Thickness;
            double top = bottom + (layer.Stack.MeasuredThickness ?? drawn);

            // What was measured has no tolerance left.
            double tolerance = layer.Stack.MeasuredThickness is null ? layer.Stack.ThicknessTolerance ?? defaults.ThicknessTolerance ?? 0 : 0;
            layers.Add(new StackLayer(
                gear?.Name ?? WasherName(sandwich, layer), layer, gear, new Heights(bottom, top, deviation, deviation + tolerance), tolerance, drawn, Bore(layer, gear)));
            (bottom, deviation) = (top, deviation + tolerance);
        }

        return new StackSandwich(sandwich, axes[sandwich.Axis], start is not null, layers.MoveToImmutable());
    }

    private static string WasherName(JobSandwich sandwich, JobLayer layer)
    {
        JobLayer[] washers = [.. sandwich.Layers.Where(other => other is JobWasher)];
        string number = washers.Length == 1 ? "" : FormattableString.Invariant($" {Array.FindIndex(washers, other => ReferenceEquals(other, layer)) + 1}");
        return $"washer{number} of {sandwich.Name}";
    }

    private static Size? Bore(JobLayer layer, MountedGear? gear) =>
        (gear is null ? layer.Stack.Bore : (gear.Blank.Cutouts.Bore as RoundBore)?.Diameter) is { } diameter
            ? Size.Of(diameter, layer.Stack.BoreClass, layer.Stack.MeasuredBore)
            : null;

    private static StackSpindle Spindle(JobSpindle spindle, Axis axis) => new(
        spindle, axis, Size.Of(spindle.Diameter, spindle.Class, spindle.MeasuredDiameter),
        spindle.Bore > 0 ? Size.Of(spindle.Bore, spindle.BoreClass, spindle.MeasuredBore) : null);
}
