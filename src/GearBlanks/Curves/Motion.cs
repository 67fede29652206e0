namespace GearBlanks.Curves;

/// <summary>A rigid motion of the plane: mirror in the X axis where asked, then turn about the origin, then shift.</summary>
public sealed record Motion
{
    private readonly double _cosine;
    private readonly double _sine;
    private readonly Vector _shift;

    private Motion(double cosine, double sine, Vector shift, bool mirrored)
    {
        _cosine = cosine;
        _sine = sine;
        _shift = shift;
        IsMirrored = mirrored;
    }

    /// <summary>True where the motion turns a counter-clockwise outline into a clockwise one.</summary>
    public bool IsMirrored { get; }

    /// <summary>No motion.</summary>
    public static Motion None { get; } = new(1, 0, default, false);

    /// <summary>The mirror image in the X axis.</summary>
    public static Motion MirrorInX { get; } = new(1, 0, default, true);

    /// <summary>A turn about the origin by an angle, rad, counter-clockwise positive.</summary>
    public static Motion Turn(double angle) => new(Math.Cos(angle), Math.Sin(angle), default, false);

    /// <summary>
    /// The turn by <paramref name="index"/> of <paramref name="count"/> equal steps of one turn,
    /// from the exact index rather than from a running sum.
    /// </summary>
    public static Motion TurnStep(int index, int count) => Turn(2 * Math.PI * index / count);

    /// <summary>A shift by a displacement, mm.</summary>
    public static Motion Shift(Vector by) => new(1, 0, by, false);

    /// <summary>The motion that does this one first and <paramref name="next"/> after it.</summary>
    public Motion Then(Motion next)
    {
        // R2 M2 R1 M1 = R2 R1' (M2 M1), where a mirror reverses the turn that stood before it.
        double sine = next.IsMirrored ? -_sine : _sine;
        return new Motion(
            (next._cosine * _cosine) - (next._sine * sine),
            (next._sine * _cosine) + (next._cosine * sine),
            next.Apply(_shift) + next._shift,
            IsMirrored != next.IsMirrored);
    }

    /// <summary>The motion that undoes this one.</summary>
    internal Motion Back()
    {
        // A mirrored turn undoes itself.
        var turn = new Motion(_cosine, IsMirrored ? _sine : -_sine, default, IsMirrored);
        return new Motion(turn._cosine, turn._sine, -turn.Apply(_shift), IsMirrored);
    }

    /// <summary>Where a point goes.</summary>
    public Point Apply(Point point)
    {
        Vector turned = Apply(new Vector(point.X, point.Y));
        return new Point(turned.X + _shift.X, turned.Y + _shift.Y);
    }

    /// <summary>Where a displacement or direction goes.</summary>
    public Vector Apply(Vector vector)
    {
        double y = IsMirrored ? -vector.Y : vector.Y;
        return new Vector((_cosine * vector.X) - (_sine * y), (_sine * vector.X) + (_cosine * y));
    }
}
