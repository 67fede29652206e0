namespace GearBlanks.Curves;

/// <summary>A displacement in the plane, in millimetres (or a direction, when its length is 1).</summary>
/// <param name="X">Part along X, mm.</param>
/// <param name="Y">Part along Y, mm.</param>
public readonly record struct Vector(double X, double Y)
{
    /// <summary>Length, mm.</summary>
    public double Length => Math.Sqrt((X * X) + (Y * Y));

    /// <summary>Direction, rad in (-pi, pi], counter-clockwise from +X.</summary>
    public double Angle => Math.Atan2(Y, X);

    /// <summary>The same displacement turned a quarter turn counter-clockwise.</summary>
    public Vector TurnedLeft => new(-Y, X);

    /// <summary>The same displacement turned a quarter turn clockwise.</summary>
    public Vector TurnedRight => new(Y, -X);

    /// <summary>The direction of this displacement with length 1; NaN for the zero vector, which callers exclude.</summary>
    public Vector Unit => this * (1 / Length);

    /// <summary>The direction at an angle, rad counter-clockwise from +X.</summary>
    public static Vector AtAngle(double angle) => new(Math.Cos(angle), Math.Sin(angle));

    /// <summary>Scalar product, mm2.</summary>
    public double Dot(Vector other) => (X * other.X) + (Y * other.Y);

    /// <summary>Vector product's component out of the plane, mm2: positive when <paramref name="other"/> lies to the left.</summary>
    public double Cross(Vector other) => (X * other.Y) - (Y * other.X);

    /// <summary>Angle from this direction to another, rad in (-pi, pi], counter-clockwise positive.</summary>
    public double AngleTo(Vector other) => Math.Atan2(Cross(other), Dot(other));

    /// <summary>Sum of displacements.</summary>
    public static Vector operator +(Vector a, Vector b) => new(a.X + b.X, a.Y + b.Y);

    /// <summary>Difference of displacements.</summary>
    public static Vector operator -(Vector a, Vector b) => new(a.X - b.X, a.Y - b.Y);

    /// <summary>The opposite displacement.</summary>
    public static Vector operator -(Vector a) => new(-a.X, -a.Y);

    /// <summary>The displacement made longer by a factor.</summary>
    public static Vector operator *(Vector a, double factor) => new(a.X * factor, a.Y * factor);
}
