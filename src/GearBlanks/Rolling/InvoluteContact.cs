using GearBlanks.Curves;

namespace GearBlanks.Rolling;

/// <summary>
/// Contact of two involutes in closed form: both normals lie on the common tangent of the base circles, an inner one of two external gears, an outer one in a
/// ring (ISO 21771:2007, clause 5.3, line of action; from memory).
/// </summary>
internal sealed class InvoluteContact
{
    // mm: base circles of one gear that differ by less are one.
    private const double Rounding = 1e-12;

    private readonly InvolutePiece?[] _first;
    private readonly InvolutePiece?[] _second;
    private readonly bool _isInternal;
    private readonly bool _isFirstRing;
    private readonly double _firstBase;
    private readonly double _secondBase;

    // Of the position: the direction that the tangent's ends lie about, how far about it, and the tangent's length.
    private double _direction;
    private double _aside;
    private double _length;

    // Of all flanks the longest way along the tangent, mm.
    private readonly double _firstMost;
    private readonly double _secondMost;

    /// <summary>Looks at two gears.</summary>
    public InvoluteContact(RollGear first, RollGear second)
    {
        _first = [.. first.Sides.Select(side => side.Flank)];
        _second = [.. second.Sides.Select(side => side.Flank)];
        _isFirstRing = first.Kind == RollKind.Ring;
        _isInternal = _isFirstRing || second.Kind == RollKind.Ring;
        _firstBase = BaseOf(_first);
        _secondBase = BaseOf(_second);
        _firstMost = _firstBase * _first.Max(flank => flank?.GreatestRoll ?? 0);
        _secondMost = _secondBase * _second.Max(flank => flank?.GreatestRoll ?? 0);
    }

    /// <summary>
    /// True where no point of one involute can stop the other before their contact in closed form does, whether that lies on both or beyond an end: round flanks
    /// that touch cross nowhere, as long as neither reaches past the other one's base circle. In a ring tips may.
    /// </summary>
    public bool IsBound => !_isInternal && _firstMost <= _length && _secondMost <= _length;

    /// <summary>Turns both base circles to where they stand.</summary>
    /// <param name="away">From the second one's centre to the first one's.</param>
    public void Place(Vector away)
    {
        double distance = away.Length;
        double cosine = (_isInternal ? Math.Abs(_secondBase - _firstBase) : _firstBase + _secondBase) / distance;
        _aside = Math.Acos(cosine);
        _length = distance * Math.Sqrt((1 - cosine) * (1 + cosine));
        bool isAhead = !_isInternal || _isFirstRing;
        _direction = (isAhead ? -away : away).Angle;
    }

    /// <summary>True where two sides are involutes that a common tangent serves.</summary>
    public bool Has(int firstSide, int secondSide) =>
        !double.IsNaN(_aside) && _first[firstSide] is { } first && _second[secondSide] is { } second && first.Sense == second.Sense;

    /// <summary>The contact of one such side with another, as if both involutes went on without end.</summary>
    /// <param name="firstSide">Number of the first one's side.</param>
    /// <param name="secondSide">Number of the second one's side.</param>
    /// <param name="turn">Turn of the first one, rad.</param>
    public FlankMeeting Of(int firstSide, int secondSide, double turn)
    {
        (InvolutePiece first, InvolutePiece second) = (_first[firstSide]!, _second[secondSide]!);
        double at = _direction + (first.Sense * _aside);
        double away = at - turn - first.Foot;
        double firstRoll = first.Sense * (away - (2 * Math.PI * Math.Round(away / (2 * Math.PI))));
        double secondRoll = (!_isInternal ? _length - (_firstBase * firstRoll) : (_firstBase * firstRoll) + (_isFirstRing ? -_length : _length)) / _secondBase;
        bool isReal = firstRoll >= first.LeastRoll && firstRoll <= first.GreatestRoll && secondRoll >= second.LeastRoll && secondRoll <= second.GreatestRoll;
        return new FlankMeeting(isReal, at + (_isInternal ? 0 : Math.PI) - (second.Sense * secondRoll) - second.Foot, firstRoll, secondRoll, _firstBase, _secondBase);
    }

    private static double BaseOf(InvolutePiece?[] flanks)
    {
        double[] known = [.. flanks.Where(flank => flank is not null).Select(flank => flank!.BaseRadius)];
        return known.Length > 0 && known.Max() - known.Min() < Rounding ? known[0] : double.NaN;
    }
}

/// <summary>Where two involutes touch.</summary>
/// <param name="IsReal">True where both are there.</param>
/// <param name="Limit">The second one's turn, rad, not wrapped.</param>
/// <param name="FirstRoll">Roll angle on the first one, rad.</param>
/// <param name="SecondRoll">Roll angle on the second one, rad.</param>
/// <param name="FirstBase">The first one's base radius, mm.</param>
/// <param name="SecondBase">The second one's base radius, mm: its lever, too.</param>
internal readonly record struct FlankMeeting(bool IsReal, double Limit, double FirstRoll, double SecondRoll, double FirstBase, double SecondBase)
{
    /// <summary>Radius on the first one, mm.</summary>
    public double FirstRadius => FirstBase * Math.Sqrt(1 + (FirstRoll * FirstRoll));

    /// <summary>Radius on the second one, mm.</summary>
    public double SecondRadius => SecondBase * Math.Sqrt(1 + (SecondRoll * SecondRoll));
}
