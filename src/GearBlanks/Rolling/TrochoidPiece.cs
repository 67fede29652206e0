using GearBlanks.Curves;

namespace GearBlanks.Rolling;

/// <summary>
/// A fillet about the gear's own centre. With c = cos t of its parameter the square of the radius is K - 2 r rho c + vc^2 / c^2 - 2 vc rho / c,
/// K = (r + vc)^2 + rho^2 - vc^2: c is found from it without an angle, and the direction follows from c.
/// </summary>
internal sealed class TrochoidPiece : SidePiece
{
    private const int Entries = 16;

    // A guard against a hang only: halving alone gets there in this many steps.
    private const int MostSteps = 60;

    // Of c: the step after which its last places are right, as each one squares the error.
    private const double LastStep = 1e-8;

    private readonly double[] _cosines = new double[Entries + 1];
    private readonly double _perEntry;
    private readonly double _rolling;
    private readonly double _height;
    private readonly double _tip;
    private readonly double _constant;
    private readonly double _foot;
    private readonly int _hand;

    public TrochoidPiece(Trochoid fillet)
        : base(fillet.StartPoint.Radius, fillet.EndPoint.Radius)
    {
        (_rolling, _height, _tip) = (fillet.RollingRadius, fillet.CentreHeight, fillet.TipRadius);
        _constant = ((_rolling + _height) * (_rolling + _height)) + (_tip * _tip) - (_height * _height);
        _foot = fillet.Placement.Apply(new Vector(1, 0)).Angle;
        _hand = fillet.Placement.IsMirrored ? -1 : 1;
        bool isOutward = fillet.EndPoint.Radius >= fillet.StartPoint.Radius;
        (_cosines[0], _cosines[Entries]) = (Math.Cos(isOutward ? fillet.Start : fillet.End), Math.Cos(isOutward ? fillet.End : fillet.Start));
        _perEntry = Entries / (Greatest - Least);
        for (int i = 1; i < Entries; i++)
        {
            _cosines[i] = Solve(Least + (i / _perEntry), _cosines[i - 1], _cosines[Entries], _cosines[i - 1]);
        }
    }

    /// <summary>True where the gear's centre is the origin.</summary>
    public static bool IsCentred(Trochoid fillet) => fillet.Placement.Apply(default(Point)).Radius < InvolutePiece.Rounding;

    /// <inheritdoc/>
    public override double AngleAt(double radius)
    {
        double cosine = CosineAt(radius);
        (double x, double y, double sine) = PlaceAt(cosine);
        return _foot + (_hand * (Math.Atan2(y, x) + (_height * sine / cosine / _rolling)));
    }

    /// <inheritdoc/>
    /// <remarks>In the rack's frame the place is (x, y) and the direction (sin t, cos t): the gear's roll turns both.</remarks>
    public override Vector SlopeAt(double radius)
    {
        double cosine = CosineAt(radius);
        (double x, double y, double sine) = PlaceAt(cosine);
        double outward = ((x * sine) + (y * cosine)) / radius;
        double around = ((x * cosine) - (y * sine)) / radius * _hand;
        return outward < 0 ? new Vector(-outward, -around) : new Vector(outward, around);
    }

    private (double X, double Y, double Sine) PlaceAt(double cosine)
    {
        double sine = Math.Sqrt((1 - cosine) * (1 + cosine));
        return (_rolling + _height - (_tip * cosine), (_tip * sine) - (_height * sine / cosine), sine);
    }

    private double CosineAt(double radius)
    {
        double place = (radius - Least) * _perEntry;
        int entry = Math.Clamp((int)place, 0, Entries - 1);
        (double low, double high) = (_cosines[entry], _cosines[entry + 1]);
        return Solve(radius, low, high, low + ((high - low) * (place - entry)));
    }

    // Newton's steps, kept between the two ends.
    private double Solve(double radius, double low, double high, double start)
    {
        double cosine = start;
        for (int i = 0; i < MostSteps; i++)
        {
            double inverse = 1 / cosine;
            double excess = _constant - (radius * radius) - (2 * _rolling * _tip * cosine) + (_height * inverse * ((_height * inverse) - (2 * _tip)));
            double slope = (-2 * _rolling * _tip) + (2 * _height * inverse * inverse * (_tip - (_height * inverse)));
            (low, high) = excess < 0 ? (cosine, high) : (low, cosine);
            double next = cosine - (excess / slope);
            next = (next - low) * (next - high) <= 0 ? next : (low + high) / 2;
            if (Math.Abs(next - cosine) <= LastStep)
            {
                return next;
            }

            cosine = next;
        }

        return cosine;
    }
}
