using System.Collections.Immutable;
using GearBlanks.Findings;
using GearBlanks.Teeth;

namespace GearBlanks.Trains.Closing;

/// <summary>
/// Finds the profile shifts with which every mesh has its wanted backlash at its distance. Of all shifts that keep the comfortable bounds (where there are
/// none: the bounds of what fails) it takes those for which the rule's sum is least; the one number that each group leaves free is searched through.
/// </summary>
public static class Closer
{
    // In the shift coefficient: feasible stretches shorter than this are looked for by the violation's dips.
    private const double Step = 0.01;
    private const double CoarseStep = 0.05;

    private const double Finest = 1e-6;

    // Digits that are written; and how many of their last places the answer may move to stay feasible.
    private const int Decimals = 5;
    private const int MostNudges = 40;

    private static readonly double Golden = (Math.Sqrt(5) - 1) / 2;

    /// <summary>The answer for each group of gears that meshes connect.</summary>
    /// <param name="task">The task.</param>
    /// <exception cref="GearGeometryException">Two gears do not mesh at any distance, or their mesh has no line of action at its distance.</exception>
    public static ImmutableArray<ClosedGroup> Solve(ClosingTask task) => [.. ShiftSums.Of(task).Select(sums => Solve(task, sums))];

    private static ClosedGroup Solve(ClosingTask task, ShiftSums sums)
    {
        ShiftState best = Best(task, sums, Step);
        bool isOpen = best.Level == Level.Fails || sums.Contradiction is not null;
        if (isOpen && task.ChangesModule && NearestClosing.Module(task, sums, Closes) is { } module)
        {
            ClosingTask changed = NearestClosing.OfModule(task, sums, module) with { ChangesModule = false };
            return Solve(changed, ShiftSums.Of(changed).First(group => group.Gears.Contains(sums.Gears[0])));
        }

        return new ClosedGroup(
            sums.Gears, sums.Meshes, best.Data, isOpen ? Level.Fails : best.Level, best.Objective,
            isOpen ? [.. ((string?[])[sums.Contradiction]).OfType<string>(), .. best.Level == Level.Fails ? best.Worst : []] : [],
            isOpen ? [.. NearestClosing.Of(task, sums, Closes)] : []);
    }

    private static bool Closes(ClosingTask task) =>
        ShiftSums.Of(task).All(group => group.Contradiction is null && Best(task, group, CoarseStep).Level != Level.Fails);

    private static ShiftState Best(ClosingTask task, ShiftSums sums, double step)
    {
        (double low, double high) = Range(sums);
        ShiftState At(double t) => ShiftState.Of(task, sums, place => sums.ShiftOf(place, t));
        if (sums.Fixed is { } only || high - low <= Finest)
        {
            return Rounded(task, sums, sums.Fixed ?? low, At(sums.Fixed ?? low).Level);
        }

        int count = (int)Math.Ceiling((high - low) / step) + 1;
        double[] ts = [.. Enumerable.Range(0, count).Select(i => low + ((high - low) * i / (count - 1)))];
        ShiftState[] states = [.. ts.Select(At)];
        double t = Least(ts, states, At, state => state.Discomfort)
            ?? Least(ts, states, At, state => state.Excess)
            ?? Dip(ts, states, At, state => state.Excess);
        return Rounded(task, sums, t, At(t).Level);
    }

    // Where the shifts of all gears are in the range that gears are made in; where there is no such place, the middle.
    private static (double Low, double High) Range(ShiftSums sums)
    {
        (double low, double high) = (double.NegativeInfinity, double.PositiveInfinity);
        for (int place = 0; place < sums.Gears.Length; place++)
        {
            double one = (GearRanges.LeastShift - sums.Offsets[place]) * sums.Signs[place];
            double other = (GearRanges.GreatestShift - sums.Offsets[place]) * sums.Signs[place];
            (low, high) = (Math.Max(low, Math.Min(one, other)), Math.Min(high, Math.Max(one, other)));
        }

        return low <= high ? (low, high) : ((low + high) / 2, (low + high) / 2);
    }

    // The least objective where the violation is 0 or less; null where it never is.
    private static double? Least(double[] ts, ShiftState[] states, Func<double, ShiftState> at, Func<ShiftState, double> violation)
    {
        bool IsIn(ShiftState state) => violation(state) <= 0;
        if (!states.Any(IsIn))
        {
            // A stretch between two samples, if any.
            double dip = Dip(ts, states, at, violation);
            return IsIn(at(dip)) ? Between(Edge(ts.Last(t => t <= dip), dip), Edge(ts.First(t => t >= dip), dip), dip).T : null;
        }

        (double Objective, double T) best = (double.PositiveInfinity, 0);
        for (int i = 0; i < ts.Length; i++)
        {
            if (!IsIn(states[i]) || IsBetter(i - 1, i) || IsBetter(i + 1, i))
            {
                continue;
            }

            double left = i == 0 ? ts[i] : IsIn(states[i - 1]) ? ts[i - 1] : Edge(ts[i - 1], ts[i]);
            double right = i == ts.Length - 1 ? ts[i] : IsIn(states[i + 1]) ? ts[i + 1] : Edge(ts[i + 1], ts[i]);
            (double Objective, double T) found = Between(left, right, ts[i]);
            best = found.Objective < best.Objective ? found : best;
        }

        return best.T;

        // The best of a stretch that is all in, but for its ends.
        (double Objective, double T) Between(double left, double right, double inside) =>
            ((double[])[Minimum(s => at(s).Objective, left, right), left, right, inside])
                .Select(t => (State: at(t), T: t)).Where(one => IsIn(one.State))
                .Select(one => (one.State.Objective, one.T)).DefaultIfEmpty((double.PositiveInfinity, inside)).MinBy(one => one.Item1);

        bool IsBetter(int j, int i) => j >= 0 && j < ts.Length && IsIn(states[j]) && states[j].Objective < states[i].Objective;

        double Edge(double outside, double inside)
        {
            while (Math.Abs(inside - outside) > Finest)
            {
                double middle = (inside + outside) / 2;
                (outside, inside) = IsIn(at(middle)) ? (outside, middle) : (middle, inside);
            }

            return inside;
        }
    }

    private static double Dip(double[] ts, ShiftState[] states, Func<double, ShiftState> at, Func<ShiftState, double> violation)
    {
        double best = ts[0];
        double least = double.PositiveInfinity;
        for (int i = 0; i < ts.Length; i++)
        {
            double here = violation(states[i]);
            if ((i > 0 && violation(states[i - 1]) < here) || (i + 1 < ts.Length && violation(states[i + 1]) < here))
            {
                continue;
            }

            double t = Minimum(s => violation(at(s)), ts[Math.Max(0, i - 1)], ts[Math.Min(ts.Length - 1, i + 1)]);
            (best, least) = violation(at(t)) < least ? (t, violation(at(t))) : (best, least);
            (best, least) = here < least ? (ts[i], here) : (best, least);
        }

        return best;
    }

    // Golden section search.
    private static double Minimum(Func<double, double> of, double low, double high)
    {
        while (high - low > Finest)
        {
            double left = high - (Golden * (high - low));
            double right = low + (Golden * (high - low));
            (low, high) = of(left) < of(right) ? (low, right) : (left, high);
        }

        return (low + high) / 2;
    }

    // With as many digits as are written, moved by a few of the last where rounding would leave the bounds.
    private static ShiftState Rounded(ClosingTask task, ShiftSums sums, double t, Level level)
    {
        double unit = Math.Pow(10, -Decimals);
        ShiftState? best = null;
        for (int nudge = 0; nudge <= (sums.Fixed is null ? MostNudges : 0); nudge++)
        {
            foreach (int sign in (int[])[1, -1])
            {
                double moved = t + (sign * nudge * unit);
                ShiftState state = ShiftState.Of(task, sums, place => Math.Round(sums.ShiftOf(place, moved), Decimals));
                if (state.Level <= level)
                {
                    return state;
                }

                best ??= state;
            }
        }

        return best!;
    }
}
