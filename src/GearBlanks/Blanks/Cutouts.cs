using System.Collections.Immutable;
using GearBlanks.Blanks.Bores;
using GearBlanks.Curves;

namespace GearBlanks.Blanks;

/// <summary>What is cut through a blank's face.</summary>
public sealed record Cutouts
{
    /// <summary>Nothing at all.</summary>
    public static Cutouts None { get; } = new();

    /// <summary>Its bore; null for none, as for a ring or a rack.</summary>
    public Bore? Bore { get; init; }

    /// <summary>Its screws; null for none, as for a rack.</summary>
    public ScrewCircle? Screws { get; init; }

    /// <summary>Further round holes.</summary>
    public ImmutableArray<Circle> Holes { get; init; } = [];

    /// <summary>Its crossings; null for none, as for a ring or a rack.</summary>
    public Crossings? Crossings { get; init; }
}
