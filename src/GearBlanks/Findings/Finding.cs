namespace GearBlanks.Findings;

/// <summary>What one check says of one place.</summary>
/// <param name="Name">Stable name, kebab case; the same as its limit's in profiles/limits.</param>
/// <param name="Place">What was checked, for example <c>gear day wheel</c> or <c>mesh tide</c>.</param>
/// <param name="Level">The verdict.</param>
/// <param name="Figure">What was found, in <paramref name="Unit"/>.</param>
/// <param name="Limit">The limit it was held against, in the same unit; null where there is none to compare with.</param>
/// <param name="Unit">Unit of figure and limit, for example <c>mm</c>; empty for a plain number.</param>
/// <param name="Source">Where the limit comes from: a standard and its clause, or <c>common practice</c>.</param>
/// <param name="Message">One sentence: what was found.</param>
/// <param name="Advice">One sentence: what to change and by how much; null where nothing need change.</param>
public sealed record Finding(
    string Name, string Place, Level Level, double Figure, double? Limit, string Unit, string Source, string Message, string? Advice);
