namespace GearBlanks.Teeth;

/// <summary>How far the generating rack cuts into the flank.</summary>
/// <param name="Depth">Arc along the base circle, per flank, between the involute's foot and the fillet, mm.</param>
/// <param name="FormDiameter">Diameter where fillet and involute cross, mm.</param>
public sealed record Undercut(double Depth, double FormDiameter);
