namespace GearBlanks.Curves;

/// <summary>A circle: a hole, a disc, a spindle.</summary>
/// <param name="Centre">Centre, mm.</param>
/// <param name="Radius">Radius, mm; positive.</param>
public readonly record struct Circle(Point Centre, double Radius)
{
    /// <summary>Diameter, mm.</summary>
    public double Diameter => 2 * Radius;

    /// <summary>Material left between two circles that lie outside one another, mm; negative where they overlap.</summary>
    public double WallTo(Circle other) => Centre.DistanceTo(other.Centre) - Radius - other.Radius;
}
