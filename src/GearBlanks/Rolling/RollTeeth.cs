using GearBlanks.Curves;
using GearBlanks.Teeth;

namespace GearBlanks.Rolling;

/// <summary>Finds the teeth of a contour: where its height crosses the middle between root and tip, from there down to the root and up to the tip.</summary>
internal sealed class RollTeeth
{
    // In mm: a land or root circle is level within this, so that it belongs to neither side.
    private const double Level = 1e-6;

    // Of its length: what rises less is a land or a root, written with rounded numbers.
    private const double Tangential = 1e-4;

    private readonly Curve[] _curves;
    private readonly double[] _starts;
    private readonly RollKind _kind;
    private readonly double _middle;
    private readonly double _floor;

    /// <summary>Looks at a contour, counter-clockwise about the origin.</summary>
    /// <param name="contour">Its curves in order of travel.</param>
    /// <param name="kind">What it is.</param>
    /// <param name="ends">Heights of root and tip of a rack, whose back lies lower still; null to find them.</param>
    public RollTeeth(IEnumerable<Curve> contour, RollKind kind, (double Root, double Tip)? ends)
    {
        _kind = kind;
        _curves = [.. contour.SelectMany(curve => HeightSplit.Monotone(curve, kind == RollKind.Rack))];
        _starts = [.. _curves.Select(curve => HeightOf(curve.StartPoint))];
        _floor = ends?.Root ?? double.NegativeInfinity;
        _middle = ((ends?.Root ?? _starts.Min()) + (ends?.Tip ?? _starts.Max())) / 2;
    }

    /// <summary>The teeth in counter-clockwise order: the clockwise side of each, then the other one.</summary>
    /// <exception cref="GearGeometryException">The contour has no teeth.</exception>
    public RollSide[] Sides()
    {
        int[] rises = [.. Enumerable.Range(0, _curves.Length).Where(i => _starts[i] < _middle && _starts[Next(i)] >= _middle)];
        if (rises.Length < (_kind == RollKind.Rack ? 3 : 4))
        {
            throw new GearGeometryException("no-teeth", "The contour rises from root to tip too rarely to be a gear; times", rises.Length, 4, "roll a contour with teeth all around its centre");
        }

        return [.. rises.SelectMany(Tooth)];
    }

    private IEnumerable<RollSide> Tooth(int rise)
    {
        int fall = Next(rise);
        while (!(_starts[fall] >= _middle && _starts[Next(fall)] < _middle))
        {
            fall = Next(fall);
        }

        double middle = MiddleOf(rise, fall);
        yield return new RollSide(Climb(rise, -1, 1), _kind, false, middle);
        yield return new RollSide([.. Climb(fall, 1, -1)], _kind, true, middle);
    }

    // From the root to the tip through the curve that crosses the middle: the root lies the first way, the tip the other way.
    private Curve[] Climb(int crossing, int toRoot, int toTip)
    {
        int first = Farthest(crossing, toRoot, -1);
        int last = Farthest(crossing, toTip, 1);
        var side = new List<Curve>();
        for (int i = first; ; i = Along(i, toTip))
        {
            if (Math.Abs(HeightOf(_curves[i].EndPoint) - _starts[i]) > Math.Max(Level, Tangential * _curves[i].Length))
            {
                side.Add(toTip > 0 ? _curves[i] : _curves[i].Reversed());
            }

            if (i == last)
            {
                return [.. side];
            }
        }
    }

    // The last curve on the way, before the middle is crossed again, that goes farther down (or up) than all before it.
    private int Farthest(int crossing, int way, int sense)
    {
        int found = crossing;
        double best = EndOf(crossing, way) * sense;
        for (int i = Along(crossing, way); i != crossing && (EndOf(i, way) - _middle) * sense > 0; i = Along(i, way))
        {
            double reached = EndOf(i, way) * sense;
            if (reached > best + Level)
            {
                (found, best) = (i, reached);
            }

            if (sense < 0 && EndOf(i, way) <= _floor + Level)
            {
                return found;
            }
        }

        return found;
    }

    private double EndOf(int index, int way) => way > 0 ? _starts[Next(index)] : _starts[index];

    private double MiddleOf(int rise, int fall)
    {
        if (_kind == RollKind.Rack)
        {
            return 0;
        }

        double from = _curves[rise].EndPoint.Angle;
        double to = _curves[fall].StartPoint.Angle;
        double turn = to - from;
        return from + ((turn - (2 * Math.PI * Math.Round(turn / (2 * Math.PI)))) / 2);
    }

    private double HeightOf(Point point) => _kind switch
    {
        RollKind.Rack => point.Y,
        RollKind.Ring => -point.Radius,
        _ => point.Radius,
    };

    private int Next(int index) => Along(index, 1);

    private int Along(int index, int way) => (index + way + _curves.Length) % _curves.Length;
}
