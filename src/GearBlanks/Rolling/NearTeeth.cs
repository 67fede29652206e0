using GearBlanks.Curves;

namespace GearBlanks.Rolling;

/// <summary>Which of the first gear's teeth come near the second one, and which of them as deep as a fillet, by the angles alone over which their sides stand.</summary>
internal sealed class NearTeeth
{
    private readonly RollPlacing _placing;
    private readonly bool _isRack;

    // Of all clockwise and of all leading sides: over which angles they stand beside the even place of their tooth.
    private readonly AngleSpan[] _sides = [AngleSpan.None, AngleSpan.None];

    // Of every side; null where a tip is not the end of a flank.
    private readonly (AngleSpan Fillet, AngleSpan Flank)[]? _parts;
    private readonly double _firstForm;
    private readonly double _secondForm;

    // Of how the axes stand to one another: half the angles about the first one's axis within which its tips reach the second one, its fillets the second one's
    // tips, its tips the second one's fillets; and the direction of the second one.
    private double? _reach;
    private double _ofFillet;
    private double _ofFlank;
    private double _towards;

    /// <summary>Looks at a pair.</summary>
    /// <param name="placing">The pair.</param>
    /// <param name="nodes">Points of the first one's sides.</param>
    public NearTeeth(RollPlacing placing, SideNodes nodes)
    {
        (_placing, _isRack) = (placing, placing.Second.Kind == RollKind.Rack);
        RollGear first = placing.First;
        for (int i = 0; i < first.Sides.Length; i++)
        {
            double even = first.Middles[0] + (i / 2 * first.Pitch);
            _sides[i % 2] = _sides[i % 2].With(nodes.Span(nodes.Starts[i], nodes.Starts[i + 1], even).Less(even));
        }

        if (first.Sides.Concat(placing.Second.Sides).All(side => side.FlankIndex == side.Curves.Length - 1))
        {
            _parts = [.. Enumerable.Range(0, first.Sides.Length).Select(i => (
                nodes.Span(nodes.Starts[i], nodes.Flanks[i].Start, first.Sides[i].TipAngle),
                nodes.Span(nodes.Flanks[i].Start, nodes.Starts[i + 1], first.Sides[i].TipAngle)))];
            _firstForm = first.Sides.Max(side => side.Flank!.Least);
            _secondForm = placing.Second.Sides.Max(side => side.Flank!.Least);
        }
    }

    /// <summary>Sets how the axes stand to one another.</summary>
    /// <param name="away">From the second one's centre to the first one's.</param>
    /// <returns>False where the teeth are apart.</returns>
    public bool Place(Vector away)
    {
        double distance = _isRack ? -away.X : away.Length;
        _reach = _placing.Reach(distance);
        _towards = _isRack ? 0 : (_placing.Second.Kind == RollKind.Ring ? away : -away).Angle;
        if (_parts is not null)
        {
            _ofFillet = RollPlacing.ReachWithin(distance, _firstForm, _placing.Second.TipRadius) ?? double.NegativeInfinity;
            _ofFlank = RollPlacing.ReachWithin(distance, _placing.First.TipRadius, _secondForm) ?? double.NegativeInfinity;
        }

        return _reach is not null;
    }

    /// <summary>The teeth in reach, counted on without end.</summary>
    /// <param name="turn">Turn of the first one, rad.</param>
    /// <param name="isLeading">True for their leading sides.</param>
    public (int From, int To) In(double turn, bool isLeading)
    {
        double pitch = _placing.First.Pitch;
        AngleSpan side = _sides[isLeading ? 1 : 0];
        double first = _towards - turn - _placing.First.Middles[0];
        return ((int)Math.Ceiling((first - _reach!.Value - side.Greatest) / pitch), (int)Math.Floor((first + _reach.Value - side.Least) / pitch));
    }

    /// <summary>False where a side and the one it faces are too far from the line of centres for the tip of either to come as deep as the other one's fillet.</summary>
    /// <param name="side">The first one's side.</param>
    /// <param name="turn">Its turn, rad.</param>
    public bool MayMeetFillet(int side, double turn) =>
        _parts is null || _parts[side].Fillet.Touches(_towards - turn, _ofFillet) || _parts[side].Flank.Touches(_towards - turn, _ofFlank);
}

/// <summary>A range of directions, rad.</summary>
internal readonly record struct AngleSpan(double Least, double Greatest)
{
    /// <summary>No direction at all.</summary>
    public static AngleSpan None => new(double.PositiveInfinity, double.NegativeInfinity);

    /// <summary>This one and another, and what lies between.</summary>
    public AngleSpan With(AngleSpan other) => new(Math.Min(Least, other.Least), Math.Max(Greatest, other.Greatest));

    /// <summary>Turned back.</summary>
    public AngleSpan Less(double angle) => new(Least - angle, Greatest - angle);

    /// <summary>True where it has a direction no farther than so much from another one.</summary>
    public bool Touches(double direction, double within)
    {
        double middle = (Least + Greatest) / 2;
        double off = middle - direction;
        return Math.Abs(off - (2 * Math.PI * Math.Round(off / (2 * Math.PI)))) <= within + ((Greatest - Least) / 2);
    }
}
