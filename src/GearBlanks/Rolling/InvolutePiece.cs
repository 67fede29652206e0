using GearBlanks.Curves;

namespace GearBlanks.Rolling;

/// <summary>An involute of a circle about the gear's own centre.</summary>
internal sealed class InvolutePiece : SidePiece
{
    // mm: a placement that moves the centre by less only turns.
    private const double Rounding = 1e-12;

    private readonly double _baseRadius;
    private readonly double _foot;
    private readonly int _sense;

    public InvolutePiece(Involute involute)
        : base(involute.StartPoint.Radius, involute.EndPoint.Radius)
    {
        _baseRadius = involute.BaseRadius;
        _foot = involute.Placement.Apply(new Vector(1, 0)).Angle;
        _sense = involute.Placement.IsMirrored ? -1 : 1;
    }

    /// <summary>True where the base circle's centre is the origin.</summary>
    public static bool IsCentred(Involute involute) => involute.Placement.Apply(default(Point)).Radius < Rounding;

    /// <inheritdoc/>
    /// <remarks>u - arctan u with the roll angle u = tan of the angle between flank and radius.</remarks>
    public override double AngleAt(double radius)
    {
        double roll = Involute.RollAt(_baseRadius, radius);
        return _foot + (_sense * (roll - Math.Atan(roll)));
    }

    /// <inheritdoc/>
    public override Vector SlopeAt(double radius)
    {
        double cosine = Math.Min(1, _baseRadius / radius);
        return new Vector(cosine, _sense * Math.Sqrt((1 - cosine) * (1 + cosine)));
    }
}
