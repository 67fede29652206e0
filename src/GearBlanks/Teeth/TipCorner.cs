namespace GearBlanks.Teeth;

/// <summary>A convex corner of the tip, for what moves past it: a point, or the disc of a round. What passes the disc's centre at its radius passes the corner.</summary>
/// <param name="Radius">Distance of the point or the disc's centre from the gear's centre, mm.</param>
/// <param name="HalfAngle">Its angle from the tooth's centre line, rad; at least 0.</param>
/// <param name="Round">Radius of the disc, mm; 0 for a point.</param>
internal readonly record struct TipCorner(double Radius, double HalfAngle, double Round);
