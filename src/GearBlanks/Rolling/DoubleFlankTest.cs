namespace GearBlanks.Rolling;

/// <summary>The distance at which both flanks touch, position by position: one root in the distance, in which the play is monotone.</summary>
internal sealed class DoubleFlankTest(ContactSolver solver)
{
    // Of the play, rad (of a rack mm): less than a tenth of a micrometre of distance even at small angles.
    private const double Exactness = 1e-11;

    private const int MostSteps = 80;

    // mm: how finely the distance can be told, and the first step where nothing is known.
    private const double Finest = 1e-9;
    private const double FirstStep = 0.05;

    private readonly int _opening = solver.Placing.IsInternal ? -1 : 1;
    private double _slope;

    /// <summary>The distance without play at a turn of the first gear, mm; NaN where none was found.</summary>
    public double DistanceAt(double turn, double guess)
    {
        (double tight, double loose) = (double.NaN, double.NaN);
        double distance = guess;
        double step = FirstStep;
        for (int i = 0; i < MostSteps; i++)
        {
            double play = PlayAt(turn, distance);
            if (Math.Abs(play) < Exactness)
            {
                return distance;
            }

            double before = distance;
            (tight, loose) = play < 0 ? (distance, loose) : (tight, distance);
            double aimed = _slope > 0 && double.IsFinite(play) ? distance - (_opening * play / _slope) : double.NaN;
            distance = Within(aimed, tight, loose) ? aimed
                : double.IsNaN(tight) ? loose - (_opening * step)
                : double.IsNaN(loose) ? tight + (_opening * step)
                : (tight + loose) / 2;
            step *= 2;
            if (Math.Abs(loose - tight) < Finest || Math.Abs(distance - before) < Finest * 1e-3)
            {
                return distance;
            }

            if (!(distance > 0))
            {
                return double.NaN;
            }

            double next = double.IsFinite(play) ? PlayAt(turn, distance) : double.NaN;
            double slope = (next - play) / (distance - before) * _opening;
            _slope = double.IsFinite(slope) && slope > 0 ? slope : _slope;
        }

        return distance;
    }

    private static bool Within(double distance, double tight, double loose) =>
        !double.IsNaN(distance)
        && (double.IsNaN(tight) || double.IsNaN(loose) ? !(distance == tight || distance == loose) : distance > Math.Min(tight, loose) && distance < Math.Max(tight, loose));

    // Both stops, each where the last one lies: an eccentric second gear stands where they meet.
    private double PlayAt(double turn, double distance)
    {
        double expected = solver.Placing.TurnFor(turn);
        Contact leading = solver.At(turn, distance, true, expected);
        Contact trailing = solver.At(turn, distance, false, expected);
        return leading.Sunk > 0 || trailing.Sunk > 0 ? double.NegativeInfinity : leading.Limit - trailing.Limit;
    }
}
