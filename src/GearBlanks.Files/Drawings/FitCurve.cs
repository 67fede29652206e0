using GearBlanks.Curves;

namespace GearBlanks.Files.Drawings;

/// <summary>
/// The cubic spline through points, its parameter the length of the chords: bent nowhere at its ends unless their directions are given, or closed and smooth
/// all around. Source: the common equations for the slopes of an interpolating cubic; from memory.
/// </summary>
internal sealed class FitCurve
{
    private readonly Point[] _points;
    private readonly double[] _at;
    private readonly Vector[] _slopes;

    /// <param name="points">At least two points, of a closed curve three, neighbours apart; of a closed curve the first one is not repeated.</param>
    /// <param name="start">Direction at the start; null where it is free.</param>
    /// <param name="end">Direction at the end; null where it is free.</param>
    /// <param name="isClosed">True where it goes on from the last point to the first.</param>
    public FitCurve(Point[] points, Vector? start, Vector? end, bool isClosed)
    {
        _points = isClosed ? [.. points, points[0]] : points;
        _at = new double[_points.Length];
        for (int i = 1; i < _at.Length; i++)
        {
            _at[i] = _at[i - 1] + _points[i - 1].DistanceTo(_points[i]);
        }

        _slopes = isClosed ? Around() : Between(start, end);
    }

    /// <summary>The parameters of its points, each cubic from one to the next.</summary>
    public IReadOnlyList<double> Joints => _at;

    /// <summary>A point of the cubic that begins at a joint.</summary>
    public Point At(double parameter, int joint)
    {
        double width = Width(joint);
        double share = (parameter - _at[joint]) / width;
        double rest = 1 - share;
        Vector chord = _points[joint + 1] - _points[joint];
        return _points[joint] + (chord * (share * share * (3 - (2 * share))))
            + (_slopes[joint] * (width * share * rest * rest)) - (_slopes[joint + 1] * (width * share * share * rest));
    }

    private double Width(int joint) => _at[joint + 1] - _at[joint];

    private Vector Chord(int joint) => (_points[joint + 1] - _points[joint]) * (1 / Width(joint));

    private Vector[] Between(Vector? start, Vector? end)
    {
        int last = _points.Length - 1;
        var rows = new Row[_points.Length];
        rows[0] = start is { } first ? new Row(0, 1, 0, first.Unit) : new Row(0, 2, 1, Chord(0) * 3);
        rows[last] = end is { } final ? new Row(0, 1, 0, final.Unit) : new Row(1, 2, 0, Chord(last - 1) * 3);
        for (int i = 1; i < last; i++)
        {
            rows[i] = Smooth(i - 1, i);
        }

        return Solve(rows);
    }

    // The first row reaches to the last slope and the last row to the first one: what that adds is taken off again with a second solution.
    private Vector[] Around()
    {
        int count = _points.Length - 1;
        var rows = new Row[count];
        for (int i = 0; i < count; i++)
        {
            rows[i] = Smooth(i > 0 ? i - 1 : count - 1, i);
        }

        (double first, double last, double gamma) = (rows[0].Before, rows[^1].After, -rows[0].Own);
        rows[0] = rows[0] with { Before = 0, Own = rows[0].Own - gamma };
        rows[^1] = rows[^1] with { After = 0, Own = rows[^1].Own - (first * last / gamma) };
        Vector[] plain = Solve(rows);
        double[] added = [.. Solve([.. rows.Select((row, i) => row with { Sum = new Vector(i == 0 ? gamma : i == count - 1 ? last : 0, 0) })]).Select(slope => slope.X)];
        Vector off = (plain[0] + (plain[^1] * (first / gamma))) * (1 / (1 + added[0] + (added[^1] * first / gamma)));
        Vector[] slopes = [.. plain.Select((slope, i) => slope - (off * added[i]))];
        return [.. slopes, slopes[0]];
    }

    // Both cubics that meet have one curvature there.
    private Row Smooth(int before, int after) => new(
        Width(after), 2 * (Width(before) + Width(after)), Width(before), (Chord(before) * (3 * Width(after))) + (Chord(after) * (3 * Width(before))));

    private static Vector[] Solve(Row[] rows)
    {
        var work = (Row[])rows.Clone();
        for (int i = 1; i < work.Length; i++)
        {
            double share = work[i].Before / work[i - 1].Own;
            work[i] = work[i] with { Own = work[i].Own - (share * work[i - 1].After), Sum = work[i].Sum - (work[i - 1].Sum * share) };
        }

        var found = new Vector[work.Length];
        for (int i = work.Length - 1; i >= 0; i--)
        {
            Vector rest = i + 1 < work.Length ? work[i].Sum - (found[i + 1] * work[i].After) : work[i].Sum;
            found[i] = rest * (1 / work[i].Own);
        }

        return found;
    }

    private readonly record struct Row(double Before, double Own, double After, Vector Sum);
}
