namespace GearBlanks.Curves.Fitting;

/// <summary>
/// A curve's stretch of monotone curvature, divided so that pieces deviate alike: equal steps of the integral of |dk/ds|^(1/3) ds for arcs,
/// of |k|^(1/2) ds for chords, which are the densities of the fewest pieces.
/// </summary>
internal sealed class Stretch
{
    // Enough that the division is good; its errors only cost pieces, never accuracy.
    private const int Samples = 48;

    private readonly double[] _parameters = new double[Samples + 1];
    private readonly double[] _weights = new double[Samples + 1];

    public Stretch(Curve curve, double start, double end, Pieces kind)
    {
        double power = kind == Pieces.Arcs ? 3 : 2;
        _parameters[0] = start;
        for (int i = 1; i <= Samples; i++)
        {
            double from = _parameters[i - 1];
            double to = _parameters[i] = start + ((end - start) * i / Samples);
            _weights[i] = _weights[i - 1] + Weight(curve, from, to, kind, power);
        }
    }

    // Of an involute the integrals are known: the roll angle itself for arcs, its power 3/2 for chords; at its foot the curvature is infinite.
    private static double Weight(Curve curve, double from, double to, Pieces kind, double power)
    {
        if (curve is Involute)
        {
            return kind == Pieces.Arcs ? Math.Abs(to - from) : Math.Abs(Math.Pow(to, 1.5) - Math.Pow(from, 1.5));
        }

        double length = curve.LengthBetween(from, to);
        double first = curve.CurvatureAt(from);
        double second = curve.CurvatureAt(to);
        double density = kind == Pieces.Arcs ? Math.Abs(second - first) / length : Math.Abs(first + second) / 2;
        return Math.Pow(density, 1 / power) * length;
    }

    /// <summary>The parameter at which a share of the weight, 0 to 1, is reached.</summary>
    public double ParameterAt(int index, int count)
    {
        if (index == 0 || index == count || _weights[^1] == 0)
        {
            return index == count ? _parameters[^1] : _parameters[0] + ((_parameters[^1] - _parameters[0]) * index / count);
        }

        double weight = _weights[^1] * index / count;
        int above = Array.FindIndex(_weights, w => w >= weight);
        double share = (weight - _weights[above - 1]) / (_weights[above] - _weights[above - 1]);
        return _parameters[above - 1] + (share * (_parameters[above] - _parameters[above - 1]));
    }
}
