namespace GearBlanks.Findings;

/// <summary>Limits of two outlines that are rolled against each other.</summary>
public sealed record RollLimits
{
    /// <summary>How deep one's material may lie in the other's, in modules; a profile that does not say allows none.</summary>
    public Limit Interference { get; init; } = new(null, null, null, 0, "above 0 they are in each other's way, by definition");

    /// <summary>Difference of the base pitches, without sign, as a share of them; a profile that does not say sets no bounds.</summary>
    public Limit Pitch { get; init; } = Limits.None;
}
