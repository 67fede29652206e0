using GearBlanks.Curves;

namespace GearBlanks.Teeth;

/// <summary>
/// A round between an involute and a circle further out, inside the tooth-shaped region that the involute and its mirror image bound: the tip round of an
/// external tooth, the root round of a ring's gap. The centre of the round lies on the involute's parallel, so everything follows in closed form.
/// </summary>
internal readonly record struct RoundedCorner
{
    private RoundedCorner(double contactRoll, double centreRadius, double centreHalfAngle)
    {
        ContactRoll = contactRoll;
        CentreRadius = centreRadius;
        CentreHalfAngle = centreHalfAngle;
    }

    /// <summary>Roll angle of the involute where the round touches it, rad.</summary>
    public double ContactRoll { get; }

    /// <summary>Distance of the round's centre from the gear's, mm.</summary>
    public double CentreRadius { get; }

    /// <summary>Angle of the round's centre from the region's centre line, rad: negative where the round is too wide for it.</summary>
    public double CentreHalfAngle { get; }

    /// <summary>The round.</summary>
    /// <param name="baseRadius">Radius of the involute's base circle, mm.</param>
    /// <param name="halfAtBase">Half the region's angle at the base circle, rad.</param>
    /// <param name="circle">Radius of the circle that the round touches from inside, mm.</param>
    /// <param name="round">Radius of the round, mm; 0 for a sharp corner.</param>
    public static RoundedCorner Of(double baseRadius, double halfAtBase, double circle, double round)
    {
        double centre = circle - round;
        double roll = Involute.RollAt(baseRadius, centre);
        double contact = roll + (round / baseRadius);
        return new RoundedCorner(contact, centre, halfAtBase - contact + Math.Atan(roll));
    }
}
