using GearBlanks.Curves;

namespace GearBlanks.Rolling;

/// <summary>An involute of a circle about the gear's own centre.</summary>
internal sealed class InvolutePiece : SidePiece
{
    // mm: a placement that moves the centre by less only turns.
    internal const double Rounding = 1e-12;

    public InvolutePiece(Involute involute)
        : base(involute.StartPoint.Radius, involute.EndPoint.Radius)
    {
        BaseRadius = involute.BaseRadius;
        Foot = involute.Placement.Apply(new Vector(1, 0)).Angle;
        Sense = involute.Placement.IsMirrored ? -1 : 1;
        LeastRoll = Math.Min(involute.StartRoll, involute.EndRoll);
        GreatestRoll = Math.Max(involute.StartRoll, involute.EndRoll);
    }

    /// <summary>Radius of the base circle, mm.</summary>
    public double BaseRadius { get; }

    /// <summary>Angle of the place where it leaves the base circle, rad.</summary>
    public double Foot { get; }

    /// <summary>1 where it unwinds counter-clockwise, -1 where it does not.</summary>
    public int Sense { get; }

    /// <summary>The least roll angle, rad.</summary>
    public double LeastRoll { get; }

    /// <summary>The greatest roll angle, rad.</summary>
    public double GreatestRoll { get; }

    /// <summary>True where the base circle's centre is the origin.</summary>
    public static bool IsCentred(Involute involute) => involute.Placement.Apply(default(Point)).Radius < Rounding;

    /// <inheritdoc/>
    /// <remarks>u - arctan u with the roll angle u = tan of the angle between flank and radius.</remarks>
    public override double AngleAt(double radius)
    {
        double roll = Involute.RollAt(BaseRadius, radius);
        return Foot + (Sense * (roll - Math.Atan(roll)));
    }

    /// <inheritdoc/>
    public override Vector SlopeAt(double radius)
    {
        double cosine = Math.Min(1, BaseRadius / radius);
        return new Vector(cosine, Sense * Math.Sqrt((1 - cosine) * (1 + cosine)));
    }
}
