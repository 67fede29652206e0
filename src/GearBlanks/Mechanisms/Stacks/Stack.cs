using System.Collections.Immutable;

namespace GearBlanks.Mechanisms.Stacks;

/// <summary>What stands over what: sandwiches layer by layer, spindles, and every body.</summary>
internal sealed record Stack(ImmutableArray<StackSandwich> Sandwiches, ImmutableArray<StackSpindle> Spindles, ImmutableArray<Body> Bodies)
{
    private readonly Dictionary<string, StackLayer> _gears = Sandwiches
        .SelectMany(sandwich => sandwich.Layers)
        .Where(layer => layer.Gear is not null)
        .ToDictionary(layer => layer.Name);

    public static Stack None { get; } = new([], [], []);

    /// <summary>The layer of a gear; null where there is none.</summary>
    public StackLayer? Layer(string gear) => _gears.GetValueOrDefault(gear);
}

/// <summary>A sandwich with its layers' heights.</summary>
/// <param name="Job">As it is written.</param>
/// <param name="Axis">Its axis.</param>
/// <param name="HasHeights">True where heights count from the frame; otherwise they count from its own underside.</param>
/// <param name="Layers">Its layers, bottom first.</param>
internal sealed record StackSandwich(JobSandwich Job, Axis Axis, bool HasHeights, ImmutableArray<StackLayer> Layers)
{
    public string Name => Job.Name;
}

/// <summary>One layer of a sandwich.</summary>
/// <param name="Name">The gear's name, or which washer of which sandwich.</param>
/// <param name="Job">As it is written.</param>
/// <param name="Gear">The gear; null for a washer.</param>
/// <param name="Heights">From where to where it reaches.</param>
/// <param name="ThicknessTolerance">Greatest deviation of its thickness either way, mm.</param>
/// <param name="DrawnThickness">Thickness as drawn, mm.</param>
/// <param name="Bore">Its bore; null where it has none that is round, or where it is not known.</param>
internal sealed record StackLayer(
    string Name, JobLayer Job, MountedGear? Gear, Heights Heights, double ThicknessTolerance, double DrawnThickness, Size? Bore)
{
    public double Thickness => Heights.Top - Heights.Bottom;

    public double LeastThickness => Thickness - ThicknessTolerance;

    public double GreatestThickness => Thickness + ThicknessTolerance;
}

/// <summary>A spindle on its axis.</summary>
/// <param name="Job">As it is written.</param>
/// <param name="Axis">Its axis.</param>
/// <param name="Outside">Its outer diameter.</param>
/// <param name="Bore">A tube's bore; null for a solid one.</param>
internal sealed record StackSpindle(JobSpindle Job, Axis Axis, Size Outside, Size? Bore)
{
    public string Name => Job.Name;

    public Heights Heights => new(Job.Bottom, Job.Top, 0, 0);
}
