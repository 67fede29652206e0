namespace GearBlanks.Meshing;

/// <summary>One end of the path of contact.</summary>
/// <param name="FirstRadius">Radius at which the first one touches there, mm; of a rack the height over its reference line.</param>
/// <param name="SecondRadius">The same of the second one, mm.</param>
/// <param name="FirstSliding">
/// Specific sliding of the first one there: (its speed along the flank less the other's) over its own; minus infinity where it touches on its base circle.
/// </param>
/// <param name="SecondSliding">The same of the second one.</param>
/// <param name="FromPitchPoint">Way from the pitch point on the line of action, mm.</param>
public readonly record struct ContactEnd(double FirstRadius, double SecondRadius, double FirstSliding, double SecondSliding, double FromPitchPoint);
