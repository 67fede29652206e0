namespace GearBlanks.Mechanisms;

/// <summary>What makes a bore other than round.</summary>
/// <param name="Place">The table.</param>
/// <param name="Form">Its form.</param>
/// <param name="Across">
/// From a flat to the round or the flat opposite, across a hexagon's flats, or from the bottom of a keyway to the round opposite (d + t2), mm;
/// null where the keyway's depth is given.
/// </param>
/// <param name="KeyWidth">Width of the keyway, mm; null without one.</param>
/// <param name="KeyDepth">Depth of the keyway t2, mm; null where it is given across.</param>
/// <param name="CornerRadius">Radius in the inner corners, mm.</param>
/// <param name="Angle">Angle of the middle of the first flat or of the key, rad, in the gear's own frame.</param>
public sealed record JobBoreShape(
    Place Place, BoreForm Form, double? Across, double? KeyWidth, double? KeyDepth, double CornerRadius, double Angle);

/// <summary>The form of a bore that is not round.</summary>
public enum BoreForm
{
    /// <summary>Round with one flat.</summary>
    D,

    /// <summary>Round with two parallel flats.</summary>
    TwoFlats,

    /// <summary>A regular hexagon.</summary>
    Hexagon,

    /// <summary>Round with a keyway.</summary>
    Keyway,
}
