using GearBlanks.Curves;

namespace GearBlanks.Rolling;

/// <summary>
/// Finds the second gear's turn at which the first one stops it. A point of the first one at a radius and angle about the second one's centre meets the other side
/// at the turn by which that side's angle at this radius differs; the extreme over all points of all teeth in reach is first contact. It lies
/// where the two directions are one, at a corner, or at the second one's tip: each is bracketed between samples, then found on the exact curves. Where two exact
/// involutes face one another it is known in closed form.
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

    // rad: contacts of two teeth that are one but for rounding.
    private const double SameLimit = 1e-12;

    // mm: a tip below the root circle by less stands on it.
    private const double Touching = 1e-9;

    private readonly SideNodes _nodes;
    private readonly RollGear _first;
    private readonly RollGear _second;
    private readonly MateView _view;
    private readonly InvoluteContact _involutes;
    private readonly NearTeeth _near;
    private readonly bool _isRack;
    private readonly double _margin;

    // Sides that face one another, with the turn at which involutes meet.
    private readonly (int First, int Second, double Limit)[] _facing;

    // Of how the axes stand to one another, worked out when that changes.
    private Vector _offset = new(double.NaN, 0);
    private bool _isApart;

    // Of the tooth side that is looked at.
    private double _expected;
    private int _sense;
    private int _firstSide;
    private int _secondSide;
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
        FirstCentre = first;
        SecondCentre = second;
        _margin = Margin * Math.Abs(_first.TipRadius - _first.RootRadius);
        _nodes = new SideNodes(_first, Math.Max(LeastSamples, _second.Sides.Max(side => side.Curves.Length)));
        _view = new MateView(_second);
        _involutes = new InvoluteContact(_first, _second);
        _near = new NearTeeth(placing, _nodes);

        // All around, and those that are looked at beside.
        _facing = new (int, int, double)[_first.Teeth + 4];
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

    /// <summary>Where a contact is.</summary>
    /// <param name="contact">The contact.</param>
    /// <param name="turn">Turn of the first one, rad.</param>
    public Point PlaceOf(in Contact contact, double turn) => RollPlacing.FirstAt(turn, FirstCentre)
        .Apply(Point.Polar(contact.FirstRadius, _first.Sides[contact.FirstSide].AngleAt(contact.FirstRadius)));

    private static Vector Turned(Vector vector, double angle) => vector == default ? vector : Motion.Turn(angle).Apply(vector);

    private Contact Solve(double turn, Point centre, bool isLeading, double expected)
    {
        // The least turn stops it counter-clockwise: its leading sides against the first one's, or in a ring against the other ones.
        _expected = expected;
        _sense = isLeading ? -1 : 1;
        _best = Contact.None(-_sense);
        _view.Place(turn, Turned(FirstCentre, turn), centre, _sense);
        bool onLeading = isLeading != Placing.IsInternal;
        if (_view.Offset != _offset)
        {
            _offset = _view.Offset;
            _involutes.Place(_offset);
            _isApart = !_near.Place(_offset);
        }

        if (_isApart)
        {
            return _best;
        }

        (int from, int to) = _near.In(turn, onLeading);
        int count = 0;
        for (int i = from; i <= to; i++)
        {
            if (Placing.ToothIn(onLeading ? i : i - 1) is { } mate)
            {
                (_firstSide, _secondSide) = ((2 * RollPlacing.Wrapped(i, _first.Teeth)) + (onLeading ? 1 : 0), (2 * mate) + (isLeading ? 1 : 0));
                _facing[count++] = (_firstSide, _secondSide, Meet(turn));
            }
        }

        bool isBound = _involutes.IsBound;
        foreach ((int firstSide, int secondSide, double limit) in _facing.AsSpan(0, count))
        {
            (_firstSide, _secondSide, _view.Mate) = (firstSide, secondSide, _second.Sides[secondSide]);
            bool isBehind = isBound && (limit - _best.Limit) * _sense <= SameLimit;
            if (!isBehind || _near.MayMeetFillet(firstSide, turn))
            {
                Scan(isBehind);
            }
        }

        return _best;
    }

    // The contact of the sides that face one another, where it is known in closed form: its turn, whether it is there or beyond an end; else not a number.
    private double Meet(double turn)
    {
        if (!_involutes.Has(_firstSide, _secondSide))
        {
            return double.NaN;
        }

        FlankMeeting meeting = _involutes.Of(_firstSide, _secondSide, turn);
        if (meeting.IsReal)
        {
            Take(meeting.Limit, meeting.FirstRadius, meeting.SecondRadius, meeting.SecondBase);
        }

        return Wrapped(meeting.Limit);
    }

    // From the tip down: where a point is out of the mate's reach, those below it are farther still. What is bound by a contact that is known is passed over.
    private void Scan(bool isBound)
    {
        (int flank, int flankStart) = _involutes.Has(_firstSide, _secondSide) ? _nodes.Flanks[_firstSide] : (-1, 0);
        int start = _nodes.Starts[_firstSide];
        int last = _nodes.Starts[_firstSide + 1] - 1;
        Reading Full(in Reading reading, int node) => isBound && _nodes.Curve[node] == flank && PastFillet(reading) ? reading : Grown(reading, node);
        Reading above = Full(ReadNode(last, flank), last);
        if (above.IsInside && above.Growth >= 0)
        {
            Offer(above, last);
        }

        for (int i = last - 1; i >= start && _view.Beyond(above.Radius) < _margin; i--)
        {
            // On a flank out of reach of the mate's fillet there is nothing to be found down to its end.
            i = isBound && _nodes.Curve[i + 1] == flank && i >= flankStart && PastFillet(above) ? flankStart : i;
            Reading here = ReadNode(i, flank);
            if (_nodes.Curve[i] != _nodes.Curve[i + 1])
            {
                (here, above) = (Full(here, i), Full(above, i + 1));
                if (here.IsInside && here.Growth >= 0 && above.Growth <= 0)
                {
                    Offer(here, i);
                }
            }
            else if (_nodes.Curve[i] != flank || !(isBound ? PastFillet(here) && PastFillet(above) : OnFlank(here) && OnFlank(above)))
            {
                (here, above) = (Grown(here, i), Grown(above, i + 1));
                if (here.IsInside && above.IsInside ? here.Growth > 0 && above.Growth < 0
                    : here.IsInside ? here.Growth > 0 : above.IsInside && above.Growth < 0)
                {
                    Refine(i, here, above);
                }
            }

            here = i == start ? Full(here, i) : here;
            if (i == start && here.IsInside && here.Growth <= 0)
            {
                Offer(here, i);
            }

            above = here;
        }
    }

    private bool OnFlank(in Reading reading) => PastFillet(reading) && reading.Radius <= _view.Mate.Flank!.Greatest;

    private bool PastFillet(in Reading reading) => reading.Radius >= _view.Mate.Flank!.Least;

    // Between two samples: where the growth ends, or the second one's tip circle is met.
    private void Refine(int lowest, in Reading lower, in Reading higher)
    {
        bool isTip = !(lower.IsInside && higher.IsInside);
        if (isTip && IsBehind(lowest))
        {
            return;
        }

        Curve curve = _nodes.Curves[_nodes.Curve[lowest]];
        (double low, double high) = (_nodes.Parameter[lowest], _nodes.Parameter[lowest + 1]);
        (double atLow, double atHigh) = isTip ? (_view.Beyond(lower.Radius), _view.Beyond(higher.Radius)) : (lower.Growth, higher.Growth);
        double speed = double.Hypot(_nodes.X[lowest + 1] - _nodes.X[lowest], _nodes.Y[lowest + 1] - _nodes.Y[lowest]) / Math.Abs(high - low);
        (Point point, Vector tangent, Reading reading) = (default(Point), default(Vector), lower);
        for (int i = 0; i < MostSteps; i++)
        {
            // The false position, and the middle where one end has stayed too long.
            double secant = low + ((high - low) * atLow / (atLow - atHigh));
            double parameter = i % 3 == 2 ? (low + high) / 2 : secant;
            (point, tangent) = (curve.PointAt(parameter), curve.TangentAt(parameter));
            reading = _view.Read(point.X, point.Y, tangent.X, tangent.Y);
            double value = isTip ? _view.Beyond(reading.Radius) : reading.Growth;
            double step = Math.Abs((high - low) * speed);
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

        Offer(reading, point.X, point.Y, isTip ? _view.TipLever(point.X, point.Y, tangent) : null);
    }

    // True where the mate's tip is stopped nowhere between two samples before it is stopped elsewhere: the curve between them keeps near their chord.
    private bool IsBehind(int lowest)
    {
        double one = Wrapped(_view.AngleOf(_nodes.X[lowest], _nodes.Y[lowest]) - _view.Mate.TipAngle);
        double other = Wrapped(_view.AngleOf(_nodes.X[lowest + 1], _nodes.Y[lowest + 1]) - _view.Mate.TipAngle);
        double nearest = (_sense > 0 ? Math.Max(one, other) : Math.Min(one, other)) * _sense;
        return nearest + (SideNodes.SafeRise * _nodes.Rise[lowest] / (_isRack ? 1 : _view.Mate.Least)) < Math.Min(_best.Limit * _sense, _best.FlankLimit * _sense);
    }

    // Within a flank whose contact is known in closed form only the radius is needed.
    private Reading ReadNode(int node, int flank)
    {
        if (_nodes.Curve[node] == flank)
        {
            double radius = _view.RadiusOf(_nodes.X[node], _nodes.Y[node]);
            return new Reading(_view.Beyond(radius) <= 0, radius, double.NaN);
        }

        return _view.Read(_nodes.X[node], _nodes.Y[node], _nodes.TangentX[node], _nodes.TangentY[node]);
    }

    private Reading Grown(in Reading reading, int node) => double.IsNaN(reading.Growth) ? ReadNode(node, -1) : reading;

    private void Offer(in Reading reading, int node) => Offer(reading, _nodes.X[node], _nodes.Y[node], null);

    private void Offer(in Reading reading, double x, double y, double? tipLever)
    {
        Take(
            _view.AngleOf(x, y) - _view.Mate.AngleAt(reading.Radius), Math.Sqrt((x * x) + (y * y)), reading.Radius, tipLever ?? _view.Lever(reading.Radius));
        double sunk = _view.Sunk(reading.Radius);
        _best = sunk > Math.Max(Touching, _best.Sunk) ? _best with { Sunk = sunk } : _best;
    }

    private double Wrapped(double turn) => _isRack ? turn : turn - (2 * Math.PI * Math.Round((turn - _expected) / (2 * Math.PI)));

    private void Take(double turn, double ownRadius, double mateRadius, double lever)
    {
        double limit = Wrapped(turn);
        if ((limit - _best.FlankLimit) * _sense > 0 && !_first.IsFillet(ownRadius) && !_second.IsFillet(mateRadius))
        {
            _best = _best with { FlankLimit = limit };
        }

        if ((limit - _best.Limit) * _sense > 0)
        {
            _best = new Contact(limit, _best.FlankLimit, _firstSide, _secondSide, ownRadius, mateRadius, lever, _best.Sunk);
        }
    }
}
