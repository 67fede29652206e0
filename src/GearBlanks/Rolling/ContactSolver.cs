using GearBlanks.Curves;

namespace GearBlanks.Rolling;

/// <summary>
/// Finds the second gear's turn at which the first one stops it. A point of the first one at a radius and angle about the second one's centre meets the other side
/// at the turn by which that side's angle at this radius differs; the extreme over all points of all teeth in reach is first contact. It lies
/// where the two directions are one, at a corner, or at the second one's tip: each is bracketed between samples, then found on the exact curves.
/// </summary>
internal sealed class ContactSolver
{
    // mm along the normal: far below 0.1 arcsecond at any radius.
    private const double Exactness = 1e-10;

    // A guard against a hang only.
    private const int MostSteps = 60;

    // Corrections for an eccentric second gear, whose centre moves with its turn: each leaves e / r of the error before.
    private const int MostRounds = 12;

    // rad
    private const double SameTurn = 1e-10;

    private const int LeastSamples = 10;

    // Of a tooth's depth: farther from the second one's tip circle no point below can come inside it.
    private const double Margin = 0.3;

    // mm: a tip below the root circle by less stands on it.
    private const double Touching = 1e-9;

    private readonly SideNodes _nodes;
    private readonly RollGear _first;
    private readonly RollGear _second;
    private readonly bool _isRack;
    private readonly int _outward;
    private readonly double _margin;

    // Of the tooth side that is looked at.
    private double _cosine;
    private double _sine;
    private double _offsetX;
    private double _offsetY;
    private double _expected;
    private int _sense;
    private int _firstSide;
    private int _secondSide;
    private RollSide _mate;
    private Contact _best;

    /// <summary>Makes a solver.</summary>
    /// <param name="placing">The pair.</param>
    /// <param name="first">How far the first one's centre lies from its axis while it stands at 0.</param>
    /// <param name="second">The same for the second one; a rack has none.</param>
    public ContactSolver(RollPlacing placing, Vector first = default, Vector second = default)
    {
        Placing = placing;
        _first = placing.First;
        _second = placing.Second;
        _isRack = _second.Kind == RollKind.Rack;
        _outward = _second.Kind == RollKind.Ring ? -1 : 1;
        FirstCentre = first;
        SecondCentre = second;
        _margin = Margin * Math.Abs(_first.TipRadius - _first.RootRadius);
        _nodes = new SideNodes(_first, Math.Max(LeastSamples, 2 * _second.Sides.Max(side => side.Curves.Length)));
        _mate = _second.Sides[0];
    }

    public RollPlacing Placing { get; }

    public Vector FirstCentre { get; }

    public Vector SecondCentre { get; }

    /// <summary>The second one's turn at which it is stopped.</summary>
    /// <param name="turn">Turn of the first one, rad.</param>
    /// <param name="distance">Distance of the axes, mm.</param>
    /// <param name="isLeading">True for the stop when it turns counter-clockwise.</param>
    /// <param name="expected">About where it stands, rad; of a rack mm.</param>
    public Contact At(double turn, double distance, bool isLeading, double expected)
    {
        if (SecondCentre == default)
        {
            return Solve(turn, Placing.SecondAxis(distance), isLeading, expected);
        }

        Contact contact = default;
        for (int i = 0; i < MostRounds; i++)
        {
            contact = Solve(turn, Placing.SecondAxis(distance) + Turned(SecondCentre, expected), isLeading, expected);
            if (double.IsInfinity(contact.Limit) || Math.Abs(contact.Limit - expected) < SameTurn)
            {
                break;
            }

            expected = contact.Limit;
        }

        return contact;
    }

    /// <summary>A displacement turned about the origin by an angle, rad.</summary>
    public static Vector Turned(Vector vector, double angle)
    {
        (double sine, double cosine) = Math.SinCos(angle);
        return new Vector((cosine * vector.X) - (sine * vector.Y), (sine * vector.X) + (cosine * vector.Y));
    }

    private Contact Solve(double turn, Point centre, bool isLeading, double expected)
    {
        (_sine, _cosine) = Math.SinCos(turn);
        Vector own = Turned(FirstCentre, turn);
        (_offsetX, _offsetY) = (own.X - centre.X, own.Y - centre.Y);
        _expected = expected;

        // The least turn stops it counter-clockwise: its leading sides against the first one's, or in a ring against the other ones.
        _sense = isLeading ? -1 : 1;
        _best = Contact.None(-_sense);
        bool onLeading = isLeading != Placing.IsInternal;
        double apart = Math.Sqrt((_offsetX * _offsetX) + (_offsetY * _offsetY));
        if (Placing.Reach(_isRack ? -_offsetX : apart) is not { } reach)
        {
            return _best;
        }

        // A sample more on either side: eccentricity turns the line of centres, and the tip may be narrow.
        double pitch = _first.Pitch;
        int last = (int)Math.Ceiling((reach - turn - _first.Middles[0]) / pitch) + 1;
        for (int i = (int)Math.Floor((-reach - turn - _first.Middles[0]) / pitch) - 1; i <= last; i++)
        {
            int gap = onLeading ? i : i - 1;
            if (Placing.ToothIn(gap) is { } tooth)
            {
                _firstSide = (2 * (((i % _first.Teeth) + _first.Teeth) % _first.Teeth)) + (onLeading ? 1 : 0);
                _secondSide = (2 * tooth) + (isLeading ? 1 : 0);
                _mate = _second.Sides[_secondSide];
                Scan(_firstSide);
            }
        }

        return _best;
    }

    // From the tip down: where a point is out of the mate's reach, those below it are farther still.
    private void Scan(int side)
    {
        int start = _nodes.Starts[side];
        int last = _nodes.Starts[side + 1] - 1;
        Reading above = ReadNode(last);
        if (above.IsInside && above.Growth >= 0)
        {
            Offer(above, _nodes.X[last], _nodes.Y[last]);
        }

        for (int i = last - 1; i >= start && Beyond(above) < _margin; i--)
        {
            Reading here = ReadNode(i);
            if (_nodes.Curve[i] != _nodes.Curve[i + 1])
            {
                if (here.IsInside && here.Growth >= 0 && above.Growth <= 0)
                {
                    Offer(here, _nodes.X[i], _nodes.Y[i]);
                }
            }
            else if (here.IsInside && above.IsInside ? here.Growth > 0 && above.Growth < 0
                : here.IsInside ? here.Growth > 0 : above.IsInside && above.Growth < 0)
            {
                Refine(i, here, above);
            }

            if (i == start && here.IsInside && here.Growth <= 0)
            {
                Offer(here, _nodes.X[i], _nodes.Y[i]);
            }

            above = here;
        }
    }

    // Between two samples: where the growth ends, or the second one's tip circle is met.
    private void Refine(int lowest, in Reading lower, in Reading higher)
    {
        Curve curve = _nodes.Curves[_nodes.Curve[lowest]];
        (double low, double high) = (_nodes.Parameter[lowest], _nodes.Parameter[lowest + 1]);
        bool isTip = !(lower.IsInside && higher.IsInside);
        (double atLow, double atHigh) = isTip ? (Beyond(lower), Beyond(higher)) : (lower.Growth, higher.Growth);
        double parameter = low;
        Point point = default;
        Reading reading = lower;
        for (int i = 0; i < MostSteps; i++)
        {
            // The false position, and the middle where one end has stayed too long.
            double secant = low + ((high - low) * atLow / (atLow - atHigh));
            parameter = i % 3 == 2 ? (low + high) / 2 : secant;
            CurveState state = curve.StateAt(parameter);
            point = state.Point;
            reading = Read(state.Point.X, state.Point.Y, state.Tangent.X, state.Tangent.Y);
            double value = isTip ? Beyond(reading) : reading.Growth;
            double step = Math.Abs((high - low) * state.Speed);
            if ((isTip ? Math.Abs(value) : value * value * step / Math.Abs(atLow - atHigh)) < Exactness || step < Exactness)
            {
                break;
            }

            if (value * atLow > 0)
            {
                (low, atLow) = (parameter, value);
            }
            else
            {
                (high, atHigh) = (parameter, value);
            }
        }

        Offer(reading, point.X, point.Y, isTip);
    }

    private double Beyond(in Reading reading) => (reading.Radius - _mate.Tip) * _outward;

    private Reading ReadNode(int node) => Read(_nodes.X[node], _nodes.Y[node], _nodes.TangentX[node], _nodes.TangentY[node]);

    // Where a point is seen from the second one's centre, and whether the turn that it allows grows beyond it (towards the tip).
    private Reading Read(double x, double y, double tangentX, double tangentY)
    {
        double awayX = (_cosine * x) - (_sine * y) + _offsetX;
        double awayY = (_sine * x) + (_cosine * y) + _offsetY;
        double radius = _isRack ? -awayX : Math.Sqrt((awayX * awayX) + (awayY * awayY));
        bool isInside = (radius - _mate.Tip) * _outward <= 0;
        (double outX, double outY) = _isRack ? (-1, 0) : (awayX / radius, awayY / radius);
        double alongX = (_cosine * tangentX) - (_sine * tangentY);
        double alongY = (_sine * tangentX) + (_cosine * tangentY);
        double radial = (alongX * outX) + (alongY * outY);
        if (!isInside)
        {
            return new Reading(false, radius, radial, 0);
        }

        double around = (outX * alongY) - (outY * alongX);
        Vector slope = _mate.SlopeAt(radius);
        return new Reading(true, radius, radial, _sense * ((around * slope.X) - (radial * slope.Y)));
    }

    private void Offer(in Reading reading, double x, double y, bool isTip = false)
    {
        double sunk = (_mate.Root - reading.Radius) * _outward;
        double angle = _isRack
            ? -((_sine * x) + (_cosine * y) + _offsetY)
            : Math.Atan2((_sine * x) + (_cosine * y) + _offsetY, (_cosine * x) - (_sine * y) + _offsetX);
        double limit = angle - _mate.AngleAt(reading.Radius);
        limit -= _isRack ? 0 : 2 * Math.PI * Math.Round((limit - _expected) / (2 * Math.PI));
        double ownRadius = Math.Sqrt((x * x) + (y * y));
        bool onFlanks = !_first.IsFillet(ownRadius) && !_second.IsFillet(reading.Radius);
        bool isFirst = (limit - _best.Limit) * _sense > 0;
        _best = (isFirst ? _best with
        {
            Limit = limit,
            FirstSide = _firstSide,
            SecondSide = _secondSide,
            Place = new Point(x, y),
            FirstRadius = ownRadius,
            SecondRadius = reading.Radius,
            Lever = (isTip ? Math.Abs(reading.Radial) : _mate.SlopeAt(reading.Radius).X) * (_isRack ? 1 : reading.Radius),
        }
        : _best) with
        {
            FlankLimit = onFlanks && (limit - _best.FlankLimit) * _sense > 0 ? limit : _best.FlankLimit,
            Sunk = sunk > Touching ? Math.Max(sunk, _best.Sunk) : _best.Sunk,
        };
    }

    private readonly record struct Reading(bool IsInside, double Radius, double Radial, double Growth);
}
