using System.Collections.Immutable;
using GearBlanks.Curves;

namespace GearBlanks.Files.Drawings;

/// <summary>What is to be read of a drawing.</summary>
/// <param name="Centre">The axis in the drawing's coordinates, mm (of a rack a point of its reference line); null to find it.</param>
/// <param name="CentreOption">The option that gives the axis, for words.</param>
/// <param name="Layers">Layers or groups to be read; none for all of them.</param>
public sealed record DrawingChoice(Point? Centre, string CentreOption, ImmutableArray<string> Layers)
{
    /// <summary>All layers, the axis to be found.</summary>
    public static DrawingChoice All { get; } = new(null, "--centre-a", []);
}
