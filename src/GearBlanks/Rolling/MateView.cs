using GearBlanks.Curves;

namespace GearBlanks.Rolling;

/// <summary>The first gear's points as seen from the second one's centre: how far, in which direction, and what turn the side they face allows them.</summary>
internal sealed class MateView
{
    private readonly bool _isRack;
    private readonly int _outward;
    private double _cosine;
    private double _sine;
    private double _offsetX;
    private double _offsetY;
    private int _sense;

    public MateView(RollGear second)
    {
        _isRack = second.Kind == RollKind.Rack;
        _outward = second.Kind == RollKind.Ring ? -1 : 1;
        Mate = second.Sides[0];
    }

    /// <summary>The second one's side that is faced.</summary>
    public RollSide Mate { get; set; }

    /// <summary>From the second one's centre to the first one's, mm.</summary>
    public Vector Offset => new(_offsetX, _offsetY);

    /// <summary>Sets how both stand.</summary>
    /// <param name="turn">Turn of the first one, rad.</param>
    /// <param name="own">Its centre against its axis as it stands.</param>
    /// <param name="centre">The second one's centre.</param>
    /// <param name="sense">-1 where the second one's leading sides are faced, 1 where the others are.</param>
    public void Place(double turn, Vector own, Point centre, int sense)
    {
        (_sine, _cosine) = Math.SinCos(turn);
        (_offsetX, _offsetY) = (own.X - centre.X, own.Y - centre.Y);
        _sense = sense;
    }

    /// <summary>How far a radius lies beyond the mate's tip, mm; negative inside.</summary>
    public double Beyond(double radius) => (radius - Mate.Tip) * _outward;

    /// <summary>How far a radius lies below the mate's root, mm; negative above.</summary>
    public double Sunk(double radius) => (Mate.Root - radius) * _outward;

    /// <summary>Radius of a point about the second one's centre, mm; of a rack its height.</summary>
    public double RadiusOf(double x, double y)
    {
        (double awayX, double awayY) = Away(x, y);
        return _isRack ? -awayX : Math.Sqrt((awayX * awayX) + (awayY * awayY));
    }

    /// <summary>The direction of a point, rad; of a rack its way against the X axis, mm.</summary>
    public double AngleOf(double x, double y)
    {
        (double awayX, double awayY) = Away(x, y);
        return _isRack ? -awayY : Math.Atan2(awayY, awayX);
    }

    /// <summary>Where the corner of the mate's tip stands at a turn of it, as a point of the first one.</summary>
    public Point TipAt(double turn)
    {
        (double sine, double cosine) = Math.SinCos(Mate.TipAngle + turn);
        (double x, double y) = _isRack ? (-Mate.Tip, -Mate.TipAngle - turn) : (Mate.Tip * cosine, Mate.Tip * sine);
        (x, y) = (x - _offsetX, y - _offsetY);
        return new Point((_cosine * x) + (_sine * y), (_cosine * y) - (_sine * x));
    }

    /// <summary>How far the mate's surface at a radius moves along its normal for each rad of its turn, mm; of a rack for each mm.</summary>
    public double Lever(double radius) => Mate.SlopeAt(radius).X * (_isRack ? 1 : radius);

    /// <summary>How far the mate's tip moves along the normal of a side that it meets, for each rad of its turn, mm; of a rack for each mm.</summary>
    /// <param name="x">The place.</param>
    /// <param name="y">The place.</param>
    /// <param name="tangent">The direction of the first one's side there.</param>
    public double TipLever(double x, double y, Vector tangent)
    {
        (double awayX, double awayY) = Away(x, y);
        double alongX = (_cosine * tangent.X) - (_sine * tangent.Y);
        double alongY = (_sine * tangent.X) + (_cosine * tangent.Y);
        return Math.Abs(_isRack ? alongX : (alongX * awayX) + (alongY * awayY));
    }

    /// <summary>Looks at a point of the first one of which only the radius is asked.</summary>
    public Reading ReadRadius(double x, double y)
    {
        double radius = RadiusOf(x, y);
        return new Reading(Beyond(radius) <= 0, radius, double.NaN, double.NaN);
    }

    /// <summary>Looks at a point of the first one and the direction of its side there, towards the tip. Beyond its tip the mate is taken to go on as it ends.</summary>
    /// <param name="x">The place.</param>
    /// <param name="y">The place.</param>
    /// <param name="tangentX">The direction.</param>
    /// <param name="tangentY">The direction.</param>
    /// <param name="beside">How far from there the mate's own direction is taken, mm of radius: it has two at a corner.</param>
    public Reading Read(double x, double y, double tangentX, double tangentY, double beside = 0)
    {
        (double awayX, double awayY) = Away(x, y);
        double radius = _isRack ? -awayX : Math.Sqrt((awayX * awayX) + (awayY * awayY));
        (double outX, double outY) = _isRack ? (-1, 0) : (awayX / radius, awayY / radius);
        double alongX = (_cosine * tangentX) - (_sine * tangentY);
        double alongY = (_sine * tangentX) + (_cosine * tangentY);
        double radial = (alongX * outX) + (alongY * outY);
        double around = (outX * alongY) - (outY * alongX);
        bool isInside = Beyond(radius) <= 0;
        Vector slope = isInside ? Mate.SlopeAt(radius + beside) : Mate.TipSlope;
        return new Reading(isInside, radius, _sense * ((around * slope.X) - (radial * slope.Y)), radial * _outward);
    }

    private (double X, double Y) Away(double x, double y) => ((_cosine * x) - (_sine * y) + _offsetX, (_sine * x) + (_cosine * y) + _offsetY);
}

/// <summary>A point as it is seen.</summary>
/// <param name="IsInside">True within the mate's tip circle.</param>
/// <param name="Radius">Its radius there, mm.</param>
/// <param name="Growth">Whether the turn that the mate is allowed grows beyond it; not a number where that was not asked.</param>
/// <param name="Outward">How fast the side goes out of the mate's tip circle there.</param>
internal readonly record struct Reading(bool IsInside, double Radius, double Growth, double Outward);
