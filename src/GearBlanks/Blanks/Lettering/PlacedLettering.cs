using System.Collections.Immutable;
using GearBlanks.Curves;

namespace GearBlanks.Blanks.Lettering;

/// <summary>Lettering that found its place on a gear's face.</summary>
/// <param name="Strokes">Open paths to engrave, in the gear's own coordinates, mm.</param>
/// <param name="Height">Height of a capital, mm.</param>
public sealed record PlacedLettering(ImmutableArray<ArcPath> Strokes, double Height);
