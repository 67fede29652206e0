namespace GearBlanks.Curves;

/// <summary>Where a curve is at one parameter and how it goes on there: everything at once, because the parts share their sines.</summary>
/// <param name="Point">The point, mm.</param>
/// <param name="Tangent">Direction of travel, length 1.</param>
/// <param name="Turned">Angle the direction has turned since some fixed parameter, rad: never wrapped.</param>
/// <param name="Curvature">Signed curvature, 1/mm.</param>
/// <param name="Length">Arc length since some fixed parameter, mm, growing with the travel.</param>
/// <param name="Speed">Change of that length with the parameter, mm.</param>
internal readonly record struct CurveState(Point Point, Vector Tangent, double Turned, double Curvature, double Length, double Speed);
