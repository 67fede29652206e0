namespace GearBlanks.Mechanisms.Stacks;

/// <summary>A bore on a spindle that it is meant for.</summary>
/// <param name="Place">What the bore belongs to, as findings name it.</param>
/// <param name="Bore">The bore.</param>
/// <param name="Spindle">The spindle.</param>
/// <param name="Seat">How it sits.</param>
/// <param name="Sandwich">The sandwich that turns with the bore; null for a tube that stands still.</param>
/// <param name="Bearing">From where to where they touch.</param>
internal sealed record Fit(string Place, Size Bore, StackSpindle Spindle, JobSeat Seat, string? Sandwich, Heights Bearing)
{
    // A bore that differs more than this from a spindle is not meant for it, mm of diameter.
    private const double MostClearance = 0.25;
    private const double MostInterference = 0.2;

    /// <summary>Least clearance, mm of diameter; negative where it is an interference.</summary>
    public double LeastClearance => Bore.Least - Spindle.Outside.Greatest;

    /// <summary>Greatest clearance, mm of diameter.</summary>
    public double GreatestClearance => Bore.Greatest - Spindle.Outside.Least;

    /// <summary>False where both are only drawn alike: then nothing is known of the fit.</summary>
    public bool IsKnown => Bore.IsKnown || Spindle.Outside.IsKnown || Bore.Nominal != Spindle.Outside.Nominal;

    public static IEnumerable<Fit> Of(Stack stack)
    {
        ILookup<string, StackSandwich> sandwiches = stack.Sandwiches.Where(sandwich => sandwich.HasHeights).ToLookup(sandwich => sandwich.Axis.Name);
        ILookup<string, StackSpindle> spindles = stack.Spindles.ToLookup(spindle => spindle.Axis.Name);
        return stack.Spindles.SelectMany(spindle =>
            sandwiches[spindle.Axis.Name].SelectMany(sandwich => OfLayers(sandwich, spindle))
                .Concat(spindles[spindle.Axis.Name].Where(tube => IsTubeOver(tube, spindle)).Select(tube => new Fit(
                    $"spindle {tube.Name}", tube.Bore!, spindle, JobSeat.Runs, tube.Job.TurnsWith, tube.Heights.Common(spindle.Heights)))));
    }

    private static IEnumerable<Fit> OfLayers(StackSandwich sandwich, StackSpindle spindle) =>
        from layer in sandwich.Layers
        where layer.Bore is { } bore && AreMeant(bore, spindle) && layer.Heights.SharedWith(spindle.Heights) > 0
        let held = spindle.Job.TurnsWith == sandwich.Name ? JobSeat.Held : JobSeat.Runs
        select new Fit(layer.Gear is null ? layer.Name : Places.Gear(layer.Name), layer.Bore!, spindle, layer.Job.Stack.Seat ?? held, sandwich.Name, layer.Heights.Common(spindle.Heights));

    private static bool IsTubeOver(StackSpindle tube, StackSpindle inner) =>
        tube.Bore is { } bore && AreMeant(bore, inner) && tube.Heights.SharedWith(inner.Heights) > 0
        && !(tube.Job.TurnsWith is { } with && with == inner.Job.TurnsWith);

    private static bool AreMeant(Size bore, StackSpindle spindle) =>
        bore.Nominal - spindle.Outside.Nominal is >= -MostInterference and <= MostClearance;
}
