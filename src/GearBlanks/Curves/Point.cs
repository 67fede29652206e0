namespace GearBlanks.Curves;

/// <summary>A place in the plane, in millimetres. The default is the origin.</summary>
/// <param name="X">Distance from the origin along X, mm.</param>
/// <param name="Y">Distance from the origin along Y, mm.</param>
public readonly record struct Point(double X, double Y)
{
    /// <summary>Distance from the origin, mm.</summary>
    public double Radius => Math.Sqrt((X * X) + (Y * Y));

    /// <summary>Angle from +X, counter-clockwise positive, rad in (-pi, pi].</summary>
    public double Angle => Math.Atan2(Y, X);

    /// <summary>The point at a radius (mm) and an angle (rad, counter-clockwise from +X).</summary>
    public static Point Polar(double radius, double angle) => new(radius * Math.Cos(angle), radius * Math.Sin(angle));

    /// <summary>Distance to another point, mm.</summary>
    public double DistanceTo(Point other) => (this - other).Length;

    /// <summary>The displacement from <paramref name="from"/> to <paramref name="to"/>.</summary>
    public static Vector operator -(Point to, Point from) => new(to.X - from.X, to.Y - from.Y);

    /// <summary>The point displaced.</summary>
    public static Point operator +(Point point, Vector by) => new(point.X + by.X, point.Y + by.Y);

    /// <summary>The point displaced the other way.</summary>
    public static Point operator -(Point point, Vector by) => new(point.X - by.X, point.Y - by.Y);
}
