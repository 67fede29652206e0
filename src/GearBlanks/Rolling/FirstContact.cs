namespace GearBlanks.Rolling;

/// <summary>Of all contacts that are looked at the one that stops the second gear first.</summary>
/// <param name="placing">The pair.</param>
internal sealed class FirstContact(RollPlacing placing)
{
    // mm: a tip below the root circle by less stands on it.
    private const double Touching = 1e-9;

    private readonly RollGear _first = placing.First;
    private readonly RollGear _second = placing.Second;
    private readonly bool _isRack = placing.Second.Kind == RollKind.Rack;
    private double _expected;
    private double _sense;
    private Contact _best;

    /// <summary>The first of those so far.</summary>
    public Contact Best => _best;

    /// <summary>Forgets all.</summary>
    /// <param name="expected">About where the second gear stands, rad; of a rack mm.</param>
    /// <param name="sense">-1 where the least turn stops it first, 1 where the greatest does.</param>
    public void Begin(double expected, int sense) => (_expected, _sense, _best) = (expected, sense, Contact.None(-sense));

    /// <summary>A turn that is the same, nearest to where the second gear stands.</summary>
    public double Wrapped(double turn) => _isRack ? turn : turn - (2 * Math.PI * Math.Round((turn - _expected) / (2 * Math.PI)));

    /// <summary>Where the second gear is stopped for sure: by the best, or by the best of flanks where that comes later.</summary>
    public double Slowest => (_best.Limit - _best.FlankLimit) * _sense > 0 ? _best.FlankLimit : _best.Limit;

    /// <summary>True where a turn comes no more than rounding before the best.</summary>
    public bool IsBehind(double turn, double rounding) => (turn - _best.Limit) * _sense <= rounding;

    /// <summary>Looks at a contact.</summary>
    /// <param name="sides">Numbers of the two sides.</param>
    /// <param name="turn">The second gear's turn, rad.</param>
    /// <param name="ownRadius">Radius of the place on the first one, mm.</param>
    /// <param name="mateRadius">Radius of the place on the second one, mm.</param>
    /// <param name="lever">Its lever, as <see cref="Contact.Lever"/>.</param>
    public void Take((int First, int Second) sides, double turn, double ownRadius, double mateRadius, double lever)
    {
        double limit = Wrapped(turn);
        if ((limit - _best.FlankLimit) * _sense > 0 && !_first.IsFillet(ownRadius) && !_second.IsFillet(mateRadius))
        {
            _best = _best with { FlankLimit = limit };
        }

        if ((limit - _best.Limit) * _sense > 0)
        {
            _best = new Contact(limit, _best.FlankLimit, sides.First, sides.Second, ownRadius, mateRadius, lever, _best.Sunk);
        }
    }

    /// <summary>Notes how far below a root circle a place lies, mm.</summary>
    public void Sink(double depth) => _best = depth > Math.Max(Touching, _best.Sunk) ? _best with { Sunk = depth } : _best;
}
