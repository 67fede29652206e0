namespace GearBlanks.Teeth;

/// <summary>The involute function inv t = tan t - t and its inverse. Source: ISO 21771:2007, clause 4.3; from memory.</summary>
public static class InvoluteFunction
{
    // Below this angle tan t - t loses more digits than the series does.
    private const double SeriesBelow = 0.1;

    /// <summary>inv t, rad, for an angle in [0, pi/2) rad.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The angle is outside [0, pi/2) or not a number.</exception>
    public static double Inv(double angle)
    {
        if (!(angle is >= 0 and < Math.PI / 2))
        {
            throw new ArgumentOutOfRangeException(nameof(angle), angle, "The involute function is used for angles from 0 to a quarter turn.");
        }

        if (angle >= SeriesBelow)
        {
            return Math.Tan(angle) - angle;
        }

        // tan t - t = t^3/3 + 2t^5/15 + 17t^7/315 + 62t^9/2835 + 1382t^11/155925 + 21844t^13/6081075 + 929569t^15/638512875: the next term
        // is below an ulp.
        double s = angle * angle;
        return angle * s * ((1.0 / 3) + (s * ((2.0 / 15) + (s * ((17.0 / 315) + (s * ((62.0 / 2835) + (s * ((1382.0 / 155925)
            + (s * ((21844.0 / 6081075) + (s * (929569.0 / 638512875)))))))))))));
    }

    /// <summary>
    /// The angle, rad in [0, pi/2), whose involute function is given. Newton's method from above: the function is convex there, so the
    /// steps fall towards the root and never pass it, until rounding stops them with a residual of a few units in the last place.
    /// </summary>
    /// <param name="involute">inv t, rad; at least 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative, infinite or not a number.</exception>
    public static double Inverse(double involute)
    {
        if (!(involute >= 0) || double.IsInfinity(involute))
        {
            throw new ArgumentOutOfRangeException(nameof(involute), involute, "No angle has a negative involute function.");
        }

        if (involute == 0)
        {
            return 0;
        }

        // inv t exceeds both t^3/3 and tan t - pi/2, so both guesses lie above the root.
        double angle = Math.Min(Math.Cbrt(3 * involute), Math.Atan(involute + (Math.PI / 2)));
        while (true)
        {
            double tangent = Math.Tan(angle);
            double next = angle - ((Inv(angle) - involute) / (tangent * tangent));
            if (!(next < angle))
            {
                return angle;
            }

            angle = next;
        }
    }
}
