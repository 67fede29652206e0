namespace GearBlanks.Mechanisms;

/// <summary>Windows that leave arms between hub and rim.</summary>
/// <param name="Place">The table.</param>
/// <param name="Arms">How many arms.</param>
/// <param name="HubDiameter">Diameter of the hub, mm; null where the width of its ring is given.</param>
/// <param name="HubWidth">Width of the hub's ring round the bore, mm; null where its diameter is given.</param>
/// <param name="RimWidth">Width of the rim below the root circle, mm.</param>
/// <param name="ArmWidth">Width of an arm at the hub, mm.</param>
/// <param name="ArmWidthAtRim">Width of an arm at the rim, mm; null for a straight arm.</param>
/// <param name="CornerRadius">Radius in the corners of the windows, mm.</param>
/// <param name="StartAngle">Angle of the first arm, rad, in the gear's own frame.</param>
public sealed record JobCrossings(
    Place Place, int Arms, double? HubDiameter, double? HubWidth, double RimWidth, double ArmWidth, double? ArmWidthAtRim, double CornerRadius,
    double StartAngle);
