namespace GearBlanks.Curves.Fitting;

/// <summary>
/// How many pieces a curve needs at the least, and where they would join: the running integral of the density of the fewest pieces whose joints
/// lie on the curve. At a tolerance e that density is (|dk/ds| / (72 sqrt(3) e))^(1/3) a mm for tangent-continuous arcs, sqrt(|k| / (8 e)) for chords.
/// </summary>
/// <remarks>Source of the densities: our own; e'' = step - k for arcs, the sagitta for chords.</remarks>
internal sealed class Density
{
    /// <summary>Enough that the first division is good; its errors only cost steps, never accuracy.</summary>
    public const int UsualSteps = 20;

    private readonly double[] _parameters;
    private readonly double[] _weights;

    /// <summary>Integrates over a curve that grows with its parameter.</summary>
    /// <param name="curve">An involute or a trochoid.</param>
    /// <param name="tolerance">Tolerance, mm.</param>
    /// <param name="kind">Arcs or chords.</param>
    /// <param name="steps">Steps of the integral.</param>
    public Density(Curve curve, double tolerance, Pieces kind, int steps = UsualSteps)
    {
        _parameters = new double[steps + 1];
        _weights = new double[steps + 1];
        double scale = kind == Pieces.Arcs ? Math.Cbrt(1 / (72 * Math.Sqrt(3) * tolerance)) : Math.Sqrt(1 / (8 * tolerance));

        // The density of arcs may grow with the cube root of the parameter, which steps of that root undo.
        bool arcs = kind == Pieces.Arcs;
        double first = arcs ? Math.Cbrt(curve.Start) : curve.Start;
        double step = ((arcs ? Math.Cbrt(curve.End) : curve.End) - first) / steps;
        _parameters[0] = curve.Start;
        _weights[0] = 0;
        for (int i = 1; i <= steps; i++)
        {
            double end = first + (step * i);
            double middle = end - (step / 2);
            _parameters[i] = i == steps ? curve.End : arcs ? end * end * end : end;
            double density = scale * curve.PieceDensityAt(arcs ? middle * middle * middle : middle, arcs);
            _weights[i] = _weights[i - 1] + (density * (_parameters[i] - _parameters[i - 1]));
        }
    }

    /// <summary>The least number of pieces, as a fraction.</summary>
    public double Total => _weights[^1];

    /// <summary>The parameter at which a share of the whole, 0 to 1, is reached.</summary>
    public double ParameterAt(double share)
    {
        double weight = share * Total;
        int found = Array.BinarySearch(_weights, weight);
        int above = Math.Clamp(found < 0 ? ~found : found, 1, _weights.Length - 1);

        double step = _weights[above] - _weights[above - 1];
        double part = step > 0 ? (weight - _weights[above - 1]) / step : 0.5;
        return _parameters[above - 1] + (part * (_parameters[above] - _parameters[above - 1]));
    }
}
