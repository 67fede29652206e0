namespace GearBlanks.Curves;

/// <summary>
/// A smooth, exact piece of an outline, travelled from <see cref="Start"/> to <see cref="End"/>.
/// The parameter's meaning is the curve's own; it falls along a reversed curve.
/// </summary>
public abstract record Curve
{
    /// <summary>Parameter at which the travel begins.</summary>
    public abstract double Start { get; }

    /// <summary>Parameter at which the travel ends.</summary>
    public abstract double End { get; }

    /// <summary>The point where the travel begins.</summary>
    public Point StartPoint => PointAt(Start);

    /// <summary>The point where the travel ends.</summary>
    public Point EndPoint => PointAt(End);

    /// <summary>Arc length of the whole piece, mm.</summary>
    public double Length => LengthBetween(Start, End);

    /// <summary>
    /// Parameters strictly inside the piece where the curvature has an extremum, in order of travel: between them it is monotone.
    /// </summary>
    public virtual IReadOnlyList<double> CurvatureExtrema => [];

    /// <summary>The point at a parameter between <see cref="Start"/> and <see cref="End"/>.</summary>
    public abstract Point PointAt(double parameter);

    /// <summary>The direction of travel at a parameter, length 1.</summary>
    public abstract Vector TangentAt(double parameter);

    /// <summary>Signed curvature at a parameter, 1/mm: positive where the travel bends to the left.</summary>
    public abstract double CurvatureAt(double parameter);

    /// <summary>Arc length between two parameters, mm: positive where <paramref name="to"/> comes later on the way.</summary>
    public abstract double LengthBetween(double from, double to);

    /// <summary>Point, tangent, curvature and length in one.</summary>
    internal abstract CurveState StateAt(double parameter);

    /// <summary>Angle by which the direction turns between two parameters, rad, counter-clockwise positive.</summary>
    internal virtual double TurnBetween(double from, double to) => StateAt(to).Turned - StateAt(from).Turned;

    /// <summary>
    /// What the fewest pieces depend on, per unit of the parameter: |dk/ds|^(1/3) ds for arcs, |k|^(1/2) ds for chords, with k the curvature.
    /// </summary>
    internal abstract double PieceDensityAt(double parameter, bool arcs);

    /// <summary>The same points travelled the other way.</summary>
    public abstract Curve Reversed();

    /// <summary>The curve after a rigid motion; a mirror keeps the order of travel.</summary>
    public abstract Curve Moved(Motion motion);

    /// <summary>The part of the curve between two of its parameters, travelled from the first to the second.</summary>
    public abstract Curve Between(double start, double end);

    /// <summary>
    /// The parallel at a signed distance, mm, to the right of travel: outside of a counter-clockwise outline. Exact: a curve of the
    /// same kind, with the same tangent at each parameter's counterpart.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The parallel folds: the distance exceeds a radius of curvature on that side.</exception>
    public abstract Curve Parallel(double distance);
}
