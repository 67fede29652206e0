namespace GearBlanks.Curves;

/// <summary>The least value of a continuous function: equal samples, then Brent's minimisation about the least of them.</summary>
internal static class LeastValue
{
    // Of the range: the function is least there, so that where it is smooth the square of it is all that is lost.
    private const double Accuracy = 1e-6;

    // The first samples are so many steps apart.
    private const int Coarse = 4;

    // A guard against a hang only: the golden section alone takes thirty steps.
    private const int MostSteps = 100;

    private static readonly double Golden = (3 - Math.Sqrt(5)) / 2;

    /// <summary>The least value between two arguments, and where it is.</summary>
    /// <param name="function">The function.</param>
    /// <param name="from">The argument at one end.</param>
    /// <param name="to">The argument at the other.</param>
    /// <param name="samples">Steps that are fine enough to tell its dips apart.</param>
    public static (double At, double Value) Of(Func<double, double> function, double from, double to, int samples)
    {
        var grid = new Grid(function, from, to, stackalloc double[samples + 1]);
        for (int i = 0; i <= samples; i++)
        {
            grid.At(i);
        }

        return grid.Dip();
    }

    /// <summary>The same for a function that changes no faster than a known rate: where that cannot bring it down to the least so far, samples are left out.</summary>
    /// <param name="function">The function.</param>
    /// <param name="rate">A bound on how fast it changes, nowhere greater between two arguments than at one of them.</param>
    /// <param name="from">The argument at one end.</param>
    /// <param name="to">The argument at the other.</param>
    /// <param name="samples">Steps that are fine enough to tell its dips apart; a multiple of four.</param>
    public static (double At, double Value) Of(Func<double, double> function, Func<double, double> rate, double from, double to, int samples)
    {
        var grid = new Grid(function, from, to, stackalloc double[samples + 1]) { Rates = stackalloc double[samples + 1] };
        grid.Rates.Fill(double.NaN);
        for (int i = 0; i <= samples; i += Coarse)
        {
            grid.At(i);
        }

        for (int width = Coarse; width > 1; width /= 2)
        {
            for (int i = 0; i < samples; i += width)
            {
                if (grid.Bound(i, i + width, rate) < grid.Least)
                {
                    grid.At(i + (width / 2));
                }
            }
        }

        return grid.Dip();
    }

    // Equal samples, each worked out when it is asked for.
    private ref struct Grid
    {
        private readonly Func<double, double> _function;
        private readonly Span<double> _values;
        private readonly double _from;
        private readonly double _step;
        private int _best;

        public Grid(Func<double, double> function, double from, double to, Span<double> values)
        {
            _function = function;
            _values = values;
            _from = Math.Min(from, to);
            _step = Math.Abs(to - from) / (values.Length - 1);
            values.Fill(double.NaN);
        }

        // Once each.
        public Span<double> Rates { get; init; }

        public readonly double Least => _values[_best];

        public double At(int index)
        {
            if (double.IsNaN(_values[index]))
            {
                _values[index] = _function(ArgumentAt(index));
                _best = _values[index] < _values[_best] || double.IsNaN(_values[_best]) ? index : _best;
            }

            return _values[index];
        }

        // The least it can be between two samples; where one was left out, what led to that holds here too.
        public readonly double Bound(int one, int other, Func<double, double> rate) => double.IsNaN(_values[one] + _values[other])
            ? double.PositiveInfinity
            : (_values[one] + _values[other] - (Math.Max(RateAt(one, rate), RateAt(other, rate)) * (other - one) * _step)) / 2;

        public (double At, double Value) Dip()
        {
            int best = _best;
            (int left, int right) = (Math.Max(0, best - 1), Math.Min(_values.Length - 1, best + 1));
            return LeastValue.Dip(
                _function, (ArgumentAt(left), At(left)), (ArgumentAt(best), At(best)), (ArgumentAt(right), At(right)), Accuracy * _step * (_values.Length - 1));
        }

        private readonly double RateAt(int index, Func<double, double> rate) => Rates[index] = double.IsNaN(Rates[index]) ? rate(ArgumentAt(index)) : Rates[index];

        private readonly double ArgumentAt(int index) => _from + (index * _step);
    }

    // The vertex of the parabola through the three best points where it leads on, else the golden section of the wider side.
    private static (double At, double Value) Dip(
        Func<double, double> function, (double At, double Value) left, (double At, double Value) best, (double At, double Value) right, double accuracy)
    {
        (double low, double high) = (left.At, right.At);
        ((double At, double Value) second, (double At, double Value) third) = left.Value < right.Value ? (left, right) : (right, left);
        (double step, double before) = (high - low, high - low);
        for (int i = 0; i < MostSteps && Math.Abs(best.At - ((low + high) / 2)) + ((high - low) / 2) > 2 * accuracy; i++)
        {
            double vertex = Vertex(best, second, third);
            if (Math.Abs(vertex) < Math.Abs(before) / 2 && best.At + vertex > low && best.At + vertex < high)
            {
                (before, step) = (step, vertex);
            }
            else
            {
                before = (best.At < (low + high) / 2 ? high : low) - best.At;
                step = Golden * before;
            }

            double at = best.At + (Math.Abs(step) < accuracy ? Math.CopySign(accuracy, step) : step);
            (double At, double Value) found = (at, function(at));
            if (found.Value <= best.Value)
            {
                (low, high) = found.At < best.At ? (low, best.At) : (best.At, high);
                (best, second, third) = (found, best, second);
            }
            else
            {
                (low, high) = found.At < best.At ? (found.At, high) : (low, found.At);
                (second, third) = found.Value <= second.Value || second.At == best.At ? (found, second)
                    : found.Value <= third.Value || third.At == best.At || third.At == second.At ? (second, found)
                    : (second, third);
            }
        }

        return best;
    }

    // Way from the best point to the vertex of the parabola through all three; not a number where they lie on a line.
    private static double Vertex((double At, double Value) best, (double At, double Value) second, (double At, double Value) third)
    {
        (double a, double b) = (second.At - best.At, third.At - best.At);
        (double ofA, double ofB) = (b * (second.Value - best.Value), a * (third.Value - best.Value));
        return ((b * ofA) - (a * ofB)) / (2 * (ofA - ofB));
    }
}
