using System.Runtime.Intrinsics;
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

    private const uint AllLanes = 0b1111;

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
    public double At(double distance, double firstGrowth, double secondGrowth, double firstThicker, double secondThicker) => At(
        Vector256.Create(distance), Vector256.Create(firstGrowth), Vector256.Create(secondGrowth), Vector256.Create(firstThicker), Vector256.Create(secondThicker)).ToScalar();

    /// <summary>The same of several builds side by side.</summary>
    public Vector256<double> At(
        Vector256<double> distance, Vector256<double> firstGrowth, Vector256<double> secondGrowth, Vector256<double> firstThicker, Vector256<double> secondThicker)
    {
        Vector256<double> one = firstGrowth + Vector256<double>.One;
        Vector256<double> two = secondGrowth + Vector256<double>.One;
        Vector256<double> closed = (one * ((firstThicker * _first.Thicker) + Vector256.Create(_first.Closed))) + (two * ((secondThicker * _second.Thicker) + Vector256.Create(_second.Closed)));
        if (_isRack)
        {
            return (distance * (2 * _tangent)) - closed;
        }

        Vector256<double> common = (one * _first.Base) + (two * _second.Base);
        Vector256<double> line = Vector256.Sqrt(Vector256.Max((distance * distance) - (common * common), Vector256<double>.Zero));
        Vector256<double> along = (common * _nominalCosine) + (line * _nominalSine);

        // One division serves both.
        Vector256<double> over = Vector256<double>.One / (along * common);
        Vector256<double> turn = ((line * _nominalCosine) - (common * _nominalSine)) * common * over;
        Vector256<double> angle = Vector256.Create(_nominalAngle) + Arctangent(turn);
        Vector256<double> backlash = (line - (common * angle) - closed) * distance * along * over * (2 * _sense);
        Vector256<double> near = Vector256.LessThan(Vector256.Abs(turn), Vector256.Create(SmallTurn)) & Vector256.GreaterThan(distance, common);
        return near.ExtractMostSignificantBits() == AllLanes ? backlash : Vector256.ConditionalSelect(near, backlash, Far(distance, common, closed));
    }

    // Where the series is not exact, or there is no line of action.
    private Vector256<double> Far(Vector256<double> distances, Vector256<double> commons, Vector256<double> closed)
    {
        Span<double> backlash = stackalloc double[Vector256<double>.Count];
        for (int i = 0; i < backlash.Length; i++)
        {
            (double distance, double common) = (distances[i], commons[i]);
            double line = Math.Sqrt(Math.Max(0, (distance * distance) - (common * common)));
            backlash[i] = distance <= common
                ? -2 * _sense * closed[i]
                : 2 * _sense * (line - (common * Math.Atan2(line, common)) - closed[i]) * distance / common;
        }

        return Vector256.Create<double>(backlash);
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

    private static Vector256<double> Arctangent(Vector256<double> tangent)
    {
        Vector256<double> square = tangent * tangent;
        Vector256<double> series = Vector256.Create(1.0 / 7) - (square * (1.0 / 9));
        series = Vector256.Create(1.0 / 5) - (square * series);
        series = Vector256.Create(1.0 / 3) - (square * series);
        return tangent * (Vector256<double>.One - (square * series));
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
