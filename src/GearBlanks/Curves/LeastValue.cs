namespace GearBlanks.Curves;

/// <summary>The least value of a continuous function: equal samples, then Brent's minimisation about the least of them.</summary>
internal static class LeastValue
{
    // Of the range: the function is least there, so that where it is smooth the square of it is all that is lost.
    private const double Accuracy = 1e-6;

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
        (from, to) = (Math.Min(from, to), Math.Max(from, to));
        double step = (to - from) / samples;
        Span<double> values = stackalloc double[samples + 1];
        int best = 0;
        for (int i = 0; i <= samples; i++)
        {
            values[i] = function(from + (i * step));
            best = values[i] < values[best] ? i : best;
        }

        (int left, int right) = (Math.Max(0, best - 1), Math.Min(samples, best + 1));
        return Dip(
            function, (from + (left * step), values[left]), (from + (best * step), values[best]), (from + (right * step), values[right]), Accuracy * (to - from));
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
