using System.Numerics;
using Fractions;

namespace GearBlanks.Trains;

/// <summary>Turns exact fractions into doubles, however long their digits are.</summary>
internal static class FractionDoubles
{
    // More bits than a double holds, so that cutting the quotient off costs nothing.
    private const int QuotientBits = 80;

    /// <summary>The nearest double, also where numerator and denominator are each beyond any double.</summary>
    public static double Nearest(this Fraction fraction)
    {
        BigInteger numerator = fraction.Numerator;
        BigInteger denominator = fraction.Denominator;
        if (numerator.IsZero)
        {
            return 0;
        }

        int shift = QuotientBits - (int)(BigInteger.Abs(numerator).GetBitLength() - denominator.GetBitLength());
        BigInteger quotient = shift >= 0 ? (numerator << shift) / denominator : numerator / (denominator << -shift);
        return Math.ScaleB((double)quotient, -shift);
    }
}
