using System.Collections.Immutable;

namespace GearBlanks.Findings;

/// <summary>What a finding means, for people.</summary>
/// <param name="Name">The finding's name.</param>
/// <param name="Meaning">What it says, and why it matters.</param>
/// <param name="Formula">How its figure is worked out.</param>
/// <param name="Source">Where the formula comes from.</param>
/// <param name="Remedies">What to change, in the order in which to try it.</param>
public sealed record Explanation(string Name, string Meaning, string Formula, string Source, ImmutableArray<string> Remedies);
