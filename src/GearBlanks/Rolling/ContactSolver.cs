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
    // Corrections for an eccentric second gear, whose centre moves with its turn: each leaves e / r of the error before.
    private const int MostRounds = 12;

    // rad
    private const double SameTurn = 1e-10;

    private const int LeastSamples = 10;

    // rad: contacts of two teeth that are one but for rounding.
    private const double SameLimit = 1e-12;

    private readonly SideNodes _nodes;
    private readonly MateView _view;
    private readonly InvoluteContact _involutes;
    private readonly NearTeeth _near;
    private readonly FirstContact _best;
    private readonly SideScan _scan;

    // Sides that face one another, with the turn at which involutes meet.
    private readonly ((int First, int Second) Sides, double? Limit)[] _facing;

    // Where the first one's centre is seen from the second one's; anew what is worked out of that.
    private Vector _offset = new(double.NaN, 0);
    private bool _isApart;

    /// <summary>Makes a solver.</summary>
    /// <param name="placing">The pair.</param>
    /// <param name="first">How far the first one's centre lies from its axis while it stands at 0.</param>
    /// <param name="second">The same for the second one; a rack has none.</param>
    public ContactSolver(RollPlacing placing, Vector first = default, Vector second = default)
    {
        Placing = placing;
        FirstCentre = first;
        SecondCentre = second;
        _nodes = new SideNodes(placing.First, Math.Max(LeastSamples, placing.Second.Sides.Max(side => side.Curves.Length)));
        _view = new MateView(placing.Second);
        _involutes = new InvoluteContact(placing.First, placing.Second);
        _near = new NearTeeth(placing, _nodes);
        _best = new FirstContact(placing);
        _scan = new SideScan(placing, _nodes, _view, _best);

        // All around, and those that are looked at beside.
        _facing = new ((int, int), double?)[placing.First.Teeth + 4];
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
        .Apply(Point.Polar(contact.FirstRadius, Placing.First.Sides[contact.FirstSide].AngleAt(contact.FirstRadius)));

    private static Vector Turned(Vector vector, double angle) => vector == default ? vector : Motion.Turn(angle).Apply(vector);

    private Contact Solve(double turn, Point centre, bool isLeading, double expected)
    {
        // The least turn stops it counter-clockwise: its leading sides against the first one's, or in a ring against the other ones.
        int sense = isLeading ? -1 : 1;
        _best.Begin(expected, sense);
        _view.Place(turn, Turned(FirstCentre, turn), centre, sense);
        if (_view.Offset != _offset)
        {
            _offset = _view.Offset;
            _involutes.Place(_offset);
            _isApart = !_near.Place(_offset);
        }

        if (_isApart)
        {
            return _best.Best;
        }

        bool onLeading = isLeading != Placing.IsInternal;
        (int from, int to) = _near.In(turn, onLeading);
        int count = 0;
        for (int i = from; i <= to; i++)
        {
            if (Placing.ToothIn(onLeading ? i : i - 1) is { } mate)
            {
                (int, int) sides = ((2 * RollPlacing.Wrapped(i, Placing.First.Teeth)) + (onLeading ? 1 : 0), (2 * mate) + (isLeading ? 1 : 0));
                _facing[count++] = (sides, Meet(sides, turn));
            }
        }

        foreach (((int First, int Second) sides, double? limit) in _facing.AsSpan(0, count))
        {
            bool isBehind = limit is { } known && _involutes.IsBound && _best.IsBehind(known, SameLimit);
            if (!isBehind || _near.MayMeetFillet(sides.First, turn))
            {
                _scan.Over(sides, limit is null ? (-1, 0) : _nodes.Flanks[sides.First], isBehind);
            }
        }

        return _best.Best;
    }

    // The contact of the sides that face one another, where it is known in closed form: its turn, whether it is there or beyond an end; else null.
    private double? Meet((int First, int Second) sides, double turn)
    {
        if (!_involutes.Has(sides.First, sides.Second))
        {
            return null;
        }

        FlankMeeting meeting = _involutes.Of(sides.First, sides.Second, turn);
        if (meeting.IsReal)
        {
            _best.Take(sides, meeting.Limit, meeting.FirstRadius, meeting.SecondRadius, meeting.SecondBase);
        }

        return _best.Wrapped(meeting.Limit);
    }
}
