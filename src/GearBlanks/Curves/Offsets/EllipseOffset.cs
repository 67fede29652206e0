namespace GearBlanks.Curves.Offsets;

/// <summary>
/// Where the centre of an elliptic beam runs that touches a curve from one side: each point moved by the beam's edge with the curve's
/// normal. The tangent is the curve's own at the same parameter. An arc of radius 0 stands for a corner that the beam runs about.
/// </summary>
/// <remarks>ds changes by the beam's radius of curvature times the turn of the tangent, so radii of curvature and lengths add.</remarks>
/// <param name="Base">The curve that the beam touches.</param>
/// <param name="Beam">The beam; not round.</param>
/// <param name="Side">1 where the beam is to the right of travel, -1 to the left.</param>
/// <param name="Placement">Where the whole stands.</param>
internal sealed record EllipseOffset(Curve Base, Beam Beam, int Side, Motion Placement) : Curve
{
    // Enough to see every extremum: a tooth's curves have few, and an ellipse one each quarter turn.
    private const int Samples = 128;

    // A relative change of curvature that is rounding.
    private const double Rounding = 1e-9;

    private const double RelativeStep = 1e-5;

    private double Handedness => Placement.IsMirrored ? -1 : 1;

    /// <inheritdoc/>
    public override double Start => Base.Start;

    /// <inheritdoc/>
    public override double End => Base.End;

    /// <inheritdoc/>
    public override IReadOnlyList<double> CurvatureExtrema
    {
        get
        {
            double step = (End - Start) / Samples;
            double[] curvatures = [.. Enumerable.Range(0, Samples + 1).Select(i => CurvatureAt(Start + (i * step)))];
            double scale = Rounding * curvatures.Max(Math.Abs);
            var extrema = new List<double>();
            for (int i = 1; i < Samples; i++)
            {
                (double before, double after) = (curvatures[i] - curvatures[i - 1], curvatures[i] - curvatures[i + 1]);
                if ((before > scale && after >= -scale && after + before > 2 * scale && after >= 0) || (before < -scale && after <= 0))
                {
                    extrema.Add(Extremum(Start + ((i - 1) * step), Start + ((i + 1) * step), Math.Sign(before)));
                }
            }

            return extrema;
        }
    }

    /// <inheritdoc/>
    public override Point PointAt(double parameter) => Placement.Apply(Base.PointAt(parameter) + Beam.EdgeAt(NormalAt(parameter)));

    /// <inheritdoc/>
    public override Vector TangentAt(double parameter) => Placement.Apply(Base.TangentAt(parameter));

    /// <inheritdoc/>
    public override double CurvatureAt(double parameter)
    {
        double curvature = Base.CurvatureAt(parameter);
        return curvature == 0 ? 0 : Handedness / ((1 / curvature) + (Side * Beam.RadiusAt(NormalAt(parameter))));
    }

    /// <inheritdoc/>
    public override double LengthBetween(double from, double to)
    {
        double start = NormalAt(from).Angle;
        return Base.LengthBetween(from, to) + (Side * Beam.EdgeLength(start, start + Base.TurnBetween(from, to)));
    }

    /// <inheritdoc/>
    internal override double TurnBetween(double from, double to) => Handedness * Base.TurnBetween(from, to);

    /// <inheritdoc/>
    internal override CurveState StateAt(double parameter)
    {
        CurveState state = Base.StateAt(parameter);
        return new(
            PointAt(parameter), TangentAt(parameter), Handedness * state.Turned, CurvatureAt(parameter), LengthBetween(Start, parameter),
            Math.Abs(SpeedAt(parameter, state)) * Math.Sign(End - Start));
    }

    /// <inheritdoc/>
    /// <remarks>The change of curvature by a central difference: the density only places joints.</remarks>
    internal override double PieceDensityAt(double parameter, bool arcs)
    {
        double speed = Math.Abs(SpeedAt(parameter, Base.StateAt(parameter)));
        if (!arcs)
        {
            return Math.Sqrt(Math.Abs(CurvatureAt(parameter))) * speed;
        }

        double step = RelativeStep * (End - Start);
        double change = (CurvatureAt(parameter + step) - CurvatureAt(parameter - step)) / (2 * step);
        return Math.Cbrt(Math.Abs(change) * speed * speed);
    }

    /// <inheritdoc/>
    public override Curve Reversed() => this with { Base = Base.Reversed(), Side = -Side };

    /// <inheritdoc/>
    public override Curve Moved(Motion motion) => this with { Placement = Placement.Then(motion) };

    /// <inheritdoc/>
    public override Curve Between(double start, double end) => this with { Base = Base.Between(start, end) };

    /// <inheritdoc/>
    /// <exception cref="NotSupportedException">Always: what the beam's width is taken off once is never offset again.</exception>
    public override Curve Parallel(double distance) => throw new NotSupportedException("An outline that carries the beam's width is not offset again.");

    // How fast the length grows with the parameter; where the curvature is infinite, as on a corner, the turn is told by its own change.
    private double SpeedAt(double parameter, CurveState state)
    {
        double turn = state.Speed * state.Curvature;
        double step = RelativeStep * (End - Start);
        double rate = double.IsFinite(turn) ? turn : (Base.StateAt(parameter + step).Turned - state.Turned) / step;
        return state.Speed + (Side * Beam.RadiusAt(NormalAt(parameter)) * rate);
    }

    private Vector NormalAt(double parameter) => Base.TangentAt(parameter).TurnedRight * Side;

    // Golden section, to what a comparison of doubles can tell.
    private double Extremum(double from, double to, int sense)
    {
        const double Golden = 0.6180339887498949;
        for (int i = 0; i < 40; i++)
        {
            (double low, double high) = (to - (Golden * (to - from)), from + (Golden * (to - from)));
            (from, to) = sense * (CurvatureAt(low) - CurvatureAt(high)) > 0 ? (from, high) : (low, to);
        }

        return (from + to) / 2;
    }
}
