using Fractions;

namespace GearBlanks.Trains;

/// <summary>
/// Gauss elimination of homogeneous equations of few terms, exactly: always the unknown next that stands in the fewest equations, so that trees need no
/// elimination at all and numbers stay as short as the answers. What was added to what is kept, so that every conclusion can be traced to the
/// equations it follows from.
/// </summary>
internal sealed class SparseElimination
{
    private readonly SparseRow[] _rows;
    private readonly SortedSet<int>[] _rowsOf;
    private readonly SparseRow?[] _expressions;
    private readonly bool[] _isDone;
    private readonly List<(int Target, int Source, Fraction Factor)> _steps = [];
    private readonly List<(int Row, int Unknown)> _pivots = [];
    private readonly Dictionary<int, int> _rank;

    /// <param name="unknowns">How many unknowns there are.</param>
    /// <param name="rows">The equations; they are used up.</param>
    /// <param name="last">Unknowns to solve for only where nothing else is left, and of them the first as the last.</param>
    public SparseElimination(int unknowns, SparseRow[] rows, IReadOnlyList<int> last)
    {
        _rows = rows;
        _rank = last.Select((unknown, i) => (unknown, i)).ToDictionary(pair => pair.unknown, pair => last.Count - pair.i);
        _rowsOf = [.. Enumerable.Range(0, unknowns).Select(_ => new SortedSet<int>())];
        _isDone = new bool[rows.Length];
        for (int row = 0; row < rows.Length; row++)
        {
            foreach (int unknown in rows[row].Terms.Keys)
            {
                _rowsOf[unknown].Add(row);
            }
        }

        Eliminate();
        _expressions = new SparseRow?[unknowns];
        Substitute();
    }

    /// <summary>Equations that follow from the others.</summary>
    public IEnumerable<int> Surplus => Enumerable.Range(0, _rows.Length).Where(row => !_isDone[row] && _rows[row].IsEmpty);

    /// <summary>Equations between the last unknowns alone, each a row and what is left of it.</summary>
    public IEnumerable<(int Row, SparseRow Left)> BetweenLast => _pivots.Where(pivot => _rank.ContainsKey(pivot.Unknown)).Select(pivot => (pivot.Row, _rows[pivot.Row]));

    /// <summary>An unknown by the free ones: all that the equations leave to it.</summary>
    public SparseRow Expression(int unknown) => _expressions[unknown]!;

    /// <summary>Factors of the equations as given whose sum is what is left of one of them.</summary>
    public SortedDictionary<int, Fraction> Origin(int row) => Traced(new() { [row] = Fraction.One });

    /// <summary>
    /// Factors of the equations as given whose sum is a linear form, but for terms of unknowns that the equations leave free, and of the last ones where
    /// they are held.
    /// </summary>
    public SortedDictionary<int, Fraction> Combination(SparseRow form, bool holdsLast)
    {
        var rest = new SparseRow();
        rest.Add(form, Fraction.One);
        var weights = new Dictionary<int, Fraction>();
        foreach ((int row, int unknown) in _pivots.Where(pivot => !holdsLast || !_rank.ContainsKey(pivot.Unknown)))
        {
            Fraction times = rest[unknown] / _rows[row][unknown];
            if (!times.IsZero)
            {
                rest.Add(_rows[row], -times);
                weights[row] = times;
            }
        }

        return Traced(weights);
    }

    private void Eliminate()
    {
        var queue = new PriorityQueue<int, (int, int, int)>();
        for (int unknown = 0; unknown < _rowsOf.Length; unknown++)
        {
            Enqueue(queue, unknown);
        }

        while (queue.TryDequeue(out int unknown, out var priority))
        {
            if (priority == Priority(unknown))
            {
                EliminateOne(unknown, queue);
            }
        }
    }

    private (int, int, int) Priority(int unknown) => (_rank.GetValueOrDefault(unknown), _rowsOf[unknown].Count, unknown);

    // An unknown whose count changes is queued again; what it had before is then out of date.
    private void Enqueue(PriorityQueue<int, (int, int, int)> queue, int unknown)
    {
        if (_rowsOf[unknown].Count > 0)
        {
            queue.Enqueue(unknown, Priority(unknown));
        }
    }

    private void EliminateOne(int unknown, PriorityQueue<int, (int, int, int)> queue)
    {
        int pivot = _rowsOf[unknown].MinBy(row => _rows[row].Terms.Count);
        _isDone[pivot] = true;
        _pivots.Add((pivot, unknown));
        int[] others = [.. _rowsOf[unknown].Where(row => row != pivot)];
        foreach (int row in others)
        {
            Fraction times = -_rows[row][unknown] / _rows[pivot][unknown];
            _rows[row].Add(_rows[pivot], times);
            _steps.Add((row, pivot, times));
        }

        foreach (int term in _rows[pivot].Terms.Keys)
        {
            _rowsOf[term].Remove(pivot);
            foreach (int row in others)
            {
                _ = _rows[row].Terms.ContainsKey(term) ? _rowsOf[term].Add(row) : _rowsOf[term].Remove(row);
            }

            Enqueue(queue, term);
        }
    }

    // From the last pivot back: its row has but free unknowns and later pivots beside it.
    private void Substitute()
    {
        foreach ((int row, int unknown) in _pivots.AsEnumerable().Reverse())
        {
            Fraction own = _rows[row][unknown];
            var expression = new SparseRow();
            foreach ((int other, Fraction factor) in _rows[row].Terms.Where(term => term.Key != unknown))
            {
                expression.Add(_expressions[other] ??= Itself(other), -factor / own);
            }

            _expressions[unknown] = expression;
        }

        for (int unknown = 0; unknown < _expressions.Length; unknown++)
        {
            _expressions[unknown] ??= Itself(unknown);
        }
    }

    private static SparseRow Itself(int unknown)
    {
        var row = new SparseRow();
        row.Add(unknown, Fraction.One);
        return row;
    }

    // Each step added a multiple of one equation to another: undone from the last one on, what is left are the equations as given.
    private SortedDictionary<int, Fraction> Traced(Dictionary<int, Fraction> weights)
    {
        foreach ((int target, int source, Fraction factor) in _steps.AsEnumerable().Reverse())
        {
            if (weights.TryGetValue(target, out Fraction weight))
            {
                weights[source] = weights.GetValueOrDefault(source, Fraction.Zero) + (weight * factor);
            }
        }

        return new(weights.Where(pair => !pair.Value.IsZero).ToDictionary());
    }
}
