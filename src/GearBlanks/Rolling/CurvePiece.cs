using GearBlanks.Curves;

namespace GearBlanks.Rolling;

/// <summary>Any other curve: its parameter at a radius is found by Newton's method between two entries of a table.</summary>
internal sealed class CurvePiece : SidePiece
{
    private const int Entries = 16;

    // A guard against a hang only: halving alone gets there in this many steps.
    private const int MostSteps = 60;

    // In radii: no finer than the rounding of a point.
    private const double Exactness = 1e-15;

    private readonly Curve _curve;
    private readonly double[] _radii = new double[Entries + 1];
    private readonly double _from;
    private readonly double _step;
    private readonly double _middle;

    public CurvePiece(Curve curve)
        : base(curve.StartPoint.Radius, curve.EndPoint.Radius)
    {
        _curve = curve;
        bool isOutward = curve.EndPoint.Radius >= curve.StartPoint.Radius;
        _from = isOutward ? curve.Start : curve.End;
        _step = ((isOutward ? curve.End : curve.Start) - _from) / Entries;
        for (int i = 0; i <= Entries; i++)
        {
            _radii[i] = curve.PointAt(_from + (i * _step)).Radius;
        }

        _middle = curve.PointAt(_from + (_step * Entries / 2)).Angle;
    }

    /// <inheritdoc/>
    public override double AngleAt(double radius)
    {
        double angle = _curve.PointAt(ParameterAt(radius)).Angle - _middle;
        return _middle + angle - (2 * Math.PI * Math.Round(angle / (2 * Math.PI)));
    }

    /// <inheritdoc/>
    public override Vector SlopeAt(double radius)
    {
        double parameter = ParameterAt(radius);
        Vector outward = (_curve.PointAt(parameter) - default(Point)).Unit;
        Vector tangent = _curve.TangentAt(parameter);
        double along = outward.Dot(tangent);
        return new Vector(Math.Abs(along), outward.Cross(tangent) * (along < 0 ? -1 : 1));
    }

    private double ParameterAt(double radius)
    {
        int entry = Array.BinarySearch(_radii, radius);
        int low = Math.Clamp(entry >= 0 ? entry : ~entry - 1, 0, Entries - 1);
        (double inner, double outer) = (0, 1);
        double start = _from + (low * _step);
        double share = Math.Clamp((radius - _radii[low]) / Math.Max(double.Epsilon, _radii[low + 1] - _radii[low]), 0, 1);
        for (int i = 0; i < MostSteps && outer - inner > Exactness; i++)
        {
            CurveState state = _curve.StateAt(start + (share * _step));
            double reached = state.Point.Radius;
            double excess = reached - radius;
            if (Math.Abs(excess) <= Exactness * radius)
            {
                break;
            }

            (inner, outer) = excess < 0 ? (share, outer) : (inner, share);
            double growth = (state.Point - default(Point)).Dot(state.Tangent) / reached * state.Speed * _step;
            double next = share - (excess / growth);
            share = next > inner && next < outer ? next : (inner + outer) / 2;
        }

        return start + (share * _step);
    }
}
