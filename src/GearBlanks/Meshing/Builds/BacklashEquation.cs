using GearBlanks.Teeth;

namespace GearBlanks.Meshing.Builds;

/// <summary>
/// The circumferential backlash of one pair as it is built: at any distance, each gear grown as a whole by its own share and its teeth thicker by any length.
/// With B = rb2 + rb1 (in a ring rb2 - rb1) of the grown gears, jn = 2 (sqrt(a^2 - B^2) - B acos(B / a) - K) and jt = jn a / B, K the same at the
/// distance without backlash; in a ring with the other sign. Where growth differs the mean of both base pitches counts.
/// Source: ISO 21771:2007, clauses 5 and 7 (from memory), with each gear's own growth; worked out here.
/// </summary>
internal sealed class BacklashEquation
{
    // Below this tangent of the turn from the nominal angle, the series is exact to the last bits.
    private const double SmallTurn = 0.05;

    private readonly bool _isRack;
    private readonly double _sense;
    private readonly double _tangent;
    private readonly double _nominalSine;
    private readonly double _nominalCosine;
    private readonly double _nominalAngle;
    private readonly Half _first;
    private readonly Half _second;

    public BacklashEquation(GearPair pair)
    {
        _isRack = pair is RackPair;
        _sense = pair.Layout.Sense;
        _tangent = Math.Tan(pair.First.PressureAngle);
        _nominalAngle = pair.WorkingPressureAngle;
        (_nominalSine, _nominalCosine) = Math.SinCos(_nominalAngle);
        _first = Of(pair.First, pair);
        _second = Of(pair.Second, pair);
    }

    /// <summary>1 where play grows with the distance, -1 in a ring.</summary>
    public double Sense => _sense;

    /// <summary>The backlash, mm; where the base circles leave no line of action, that of the least distance with one.</summary>
    /// <param name="distance">Centre distance as built, mm; over a rack the height of the gear's centre.</param>
    /// <param name="firstGrowth">Growth of the first gear, mm a mm.</param>
    /// <param name="secondGrowth">Growth of the second.</param>
    /// <param name="firstThicker">How much thicker the first one's teeth are, mm (arc) on the reference circle before it grew.</param>
    /// <param name="secondThicker">The same of the second.</param>
    public double At(double distance, double firstGrowth, double secondGrowth, double firstThicker, double secondThicker)
    {
        double one = 1 + firstGrowth;
        double two = 1 + secondGrowth;
        double closed = (one * (_first.Closed + (_first.Thicker * firstThicker))) + (two * (_second.Closed + (_second.Thicker * secondThicker)));
        if (_isRack)
        {
            return (2 * _tangent * distance) - closed;
        }

        double common = (one * _first.Base) + (two * _second.Base);
        if (distance <= common)
        {
            return -2 * _sense * closed;
        }

        double line = Math.Sqrt((distance * distance) - (common * common));
        double along = (common * _nominalCosine) + (line * _nominalSine);

        // One division serves both.
        double over = 1 / (along * common);
        double turn = ((line * _nominalCosine) - (common * _nominalSine)) * common * over;
        double angle = Math.Abs(turn) < SmallTurn ? _nominalAngle + Arctangent(turn) : Math.Atan2(line, common);
        return 2 * _sense * (line - (common * angle) - closed) * distance * along * over;
    }

    /// <summary>
    /// By how much the backlash may lie outside its values at the ends of a range of growth, mm: an eighth of its second derivative, for a straight line
    /// through the ends, and as much again for the cosine by which the normal backlash becomes the circumferential one.
    /// </summary>
    /// <param name="distance">Centre distance, mm.</param>
    /// <param name="frameRange">Range of the frame's growth.</param>
    /// <param name="firstRange">Range of the first gear's, from the same end to the same end.</param>
    /// <param name="secondRange">Range of the second's.</param>
    public double Bend(double distance, double frameRange, double firstRange, double secondRange)
    {
        double common = _first.Base + _second.Base;
        if (_isRack || distance <= common)
        {
            return 0;
        }

        double strain = frameRange - (((_first.Base * firstRange) + (_second.Base * secondRange)) / common);
        double cosine = common / distance;
        return distance * cosine * strain * strain / Math.Sqrt(1 - (cosine * cosine)) / 2;
    }

    private static double Arctangent(double tangent)
    {
        double square = tangent * tangent;
        return tangent * (1 - (square * ((1.0 / 3) - (square * ((1.0 / 5) - (square * ((1.0 / 7) - (square / 9))))))));
    }

    private Half Of(Toothing one, GearPair pair)
    {
        ToothData data = one.Data;
        double shift = 2 * data.GeneratingShift * data.Module * _tangent;
        if (_isRack)
        {
            double radius = one is ExternalGear gear ? gear.ReferenceRadius : 0;
            return new Half(0, (2 * _tangent * radius) + shift, 1);
        }

        double cosine = Math.Cos(one.PressureAngle);
        double radiusOfBase = one.Teeth * data.Module * cosine / 2;
        double side = pair is RingPair && one is not RingGear ? -1 : 1;
        double thicker = _sense * cosine / 2;
        return new Half(side * radiusOfBase, (side * radiusOfBase * InvoluteFunction.Inv(one.PressureAngle)) + (thicker * shift), thicker);
    }

    // Of one gear: its base radius, negative for a ring's pinion, its part of K, and what each mm of thickness adds to that.
    private readonly record struct Half(double Base, double Closed, double Thicker);
}
