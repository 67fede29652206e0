namespace GearBlanks.Curves;

/// <summary>
/// A piece of the fillet that the round tip of a rack tooth leaves in a gear: the parallel, at the tip's radius, of the trochoid on
/// which the round's centre runs while the rack rolls.
/// The parameter is the angle t of the contact normal on the round, rad: 0 where the tip points at the gear's centre, a quarter turn less the
/// pressure angle where the rack's straight flank begins.
/// Before its placement the gear's centre is the origin and the round's centre crosses +X at t = 0; t grows counter-clockwise, with the material on the left.
/// </summary>
/// <remarks>
/// With the rack's centre at (r + vc, -vc tan t) the contact normal passes through the pitch point (r, 0): the law of gearing,
/// e.g. F. L. Litvin and A. Fuentes, Gear Geometry and Applied Theory, 2nd ed. 2004, ch. 6; from memory. The parametrisation by t is our own:
/// it stays regular where vc = 0, where the whole fillet lies at one position of the rack.
/// </remarks>
/// <param name="RollingRadius">Radius r of the gear's rolling (reference) circle, mm; positive.</param>
/// <param name="CentreHeight">Height vc of the round's centre over the rolling line, mm, outward positive: negative for a tip that reaches below it.</param>
/// <param name="TipRadius">Radius of the round, mm; 0 for a sharp corner, negative for a parallel beyond the centre's path.</param>
/// <param name="StartNormal">Angle t where the piece begins, rad, in [0, pi/2).</param>
/// <param name="EndNormal">Angle t where it ends, rad, in [0, pi/2).</param>
/// <param name="Placement">Where the fillet stands.</param>
public sealed record Trochoid(
    double RollingRadius, double CentreHeight, double TipRadius, double StartNormal, double EndNormal, Motion Placement) : Curve
{
    private double Sense => EndNormal < StartNormal ? -1 : 1;

    private double Handedness => Placement.IsMirrored ? -1 : 1;

    /// <inheritdoc/>
    public override double Start => StartNormal;

    /// <inheritdoc/>
    public override double End => EndNormal;

    /// <inheritdoc/>
    /// <remarks>d(curvature)/dt vanishes inside only where cos^2 t = vc / (3 r).</remarks>
    public override IReadOnlyList<double> CurvatureExtrema
    {
        get
        {
            double square = CentreHeight / (3 * RollingRadius);
            double normal = square is > 0 and < 1 ? Math.Acos(Math.Sqrt(square)) : double.NaN;
            return normal > Math.Min(Start, End) && normal < Math.Max(Start, End) ? [normal] : [];
        }
    }

    /// <inheritdoc/>
    public override Point PointAt(double parameter)
    {
        (double sine, double cosine) = Math.SinCos(parameter);
        double offset = -CentreHeight * sine / cosine;
        double x = RollingRadius + CentreHeight - (TipRadius * cosine);
        double y = offset + (TipRadius * sine);
        (double turnSine, double turnCosine) = Math.SinCos(-offset / RollingRadius);
        return Placement.Apply(new Point((turnCosine * x) - (turnSine * y), (turnSine * x) + (turnCosine * y)));
    }

    /// <summary>Distance of the point at <paramref name="parameter"/> from the gear's centre, mm; grows with it.</summary>
    public double RadiusAt(double parameter)
    {
        (double sine, double cosine) = Math.SinCos(parameter);
        double x = RollingRadius + CentreHeight - (TipRadius * cosine);
        double y = (-CentreHeight * sine / cosine) + (TipRadius * sine);
        return Math.Sqrt((x * x) + (y * y));
    }

    /// <summary>
    /// Angle of the point at <paramref name="parameter"/> about the gear's centre before the placement, rad, counter-clockwise
    /// from where t = 0.
    /// </summary>
    public double PolarAngleAt(double parameter)
    {
        (double sine, double cosine) = Math.SinCos(parameter);
        double offset = -CentreHeight * sine / cosine;
        return Math.Atan2(offset + (TipRadius * sine), RollingRadius + CentreHeight - (TipRadius * cosine)) - (offset / RollingRadius);
    }

    /// <inheritdoc/>
    public override Vector TangentAt(double parameter) =>
        Placement.Apply(Vector.AtAngle((CentreHeight * Math.Tan(parameter) / RollingRadius) + (Math.PI / 2) - parameter)) * Sense;

    /// <inheritdoc/>
    public override double CurvatureAt(double parameter)
    {
        (double turn, double length) = Rates(parameter);
        return -Sense * Handedness * turn / length;
    }

    /// <inheritdoc/>
    /// <remarks>The integral of ds/dt has a closed form: rho (t - vc tan t / r) + vc^2 (sec t tan t + ln(sec t + tan t)) / (2 r).</remarks>
    public override double LengthBetween(double from, double to) => Sense * (LengthFromZero(to) - LengthFromZero(from));

    /// <inheritdoc/>
    internal override CurveState StateAt(double parameter)
    {
        (double sine, double cosine) = Math.SinCos(parameter);
        double secant = 1 / cosine;
        double tangent = sine * secant;
        double roll = CentreHeight * tangent / RollingRadius;
        (double turnSine, double turnCosine) = Math.SinCos(roll);
        double x = RollingRadius + CentreHeight - (TipRadius * cosine);
        double y = (TipRadius * sine) - (RollingRadius * roll);
        double turn = 1 - (CentreHeight * secant * secant / RollingRadius);
        double speed = (TipRadius * turn) + (CentreHeight * CentreHeight * secant * secant * secant / RollingRadius);

        // The tangent's angle is a quarter turn, less t, and the roll.
        var direction = new Vector((turnCosine * sine) - (turnSine * cosine), (turnCosine * cosine) + (turnSine * sine));
        return new(
            Placement.Apply(new Point((turnCosine * x) - (turnSine * y), (turnSine * x) + (turnCosine * y))),
            Placement.Apply(direction) * Sense,
            (roll - parameter) * Handedness,
            -Sense * Handedness * turn / speed,
            Sense * LengthFromZero(parameter, tangent, secant),
            Sense * speed);
    }

    /// <inheritdoc/>
    /// <remarks>dk/ds is vc^2 sec^3 t tan t ((vc / r) sec^2 t - 3) / (r (ds/dt)^3): of its cube root the tip's radius cancels.</remarks>
    internal override double PieceDensityAt(double parameter, bool arcs)
    {
        double tangent = Math.Tan(parameter);
        double square = 1 + (tangent * tangent);
        double turn = 1 - (CentreHeight * square / RollingRadius);
        double spread = CentreHeight * CentreHeight / RollingRadius;
        return arcs
            ? Math.Cbrt(spread * tangent * Math.Abs(2 + turn)) * Math.Sqrt(square)
            : Math.Sqrt(Math.Abs(turn) * ((TipRadius * turn) + (spread * square * Math.Sqrt(square))));
    }

    /// <inheritdoc/>
    public override Curve Reversed() => this with { StartNormal = EndNormal, EndNormal = StartNormal };

    /// <inheritdoc/>
    public override Curve Moved(Motion motion) => this with { Placement = Placement.Then(motion) };

    /// <inheritdoc/>
    public override Curve Between(double start, double end) => this with { StartNormal = start, EndNormal = end };

    /// <inheritdoc/>
    /// <remarks>The parallel of a fillet is the same centre path with another tip radius.</remarks>
    public override Curve Parallel(double distance)
    {
        Trochoid parallel = this with { TipRadius = TipRadius - (Sense * Handedness * distance) };
        double least = CurvatureExtrema.Append(Start).Append(End).Min(t => parallel.Rates(t).Length);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(least, nameof(distance));
        return parallel;
    }

    // How fast the tangent turns clockwise, and the length grows, with t.
    private (double Turn, double Length) Rates(double parameter)
    {
        double secant = 1 / Math.Cos(parameter);
        double turn = 1 - (CentreHeight * secant * secant / RollingRadius);
        return (turn, (TipRadius * turn) + (CentreHeight * CentreHeight * secant * secant * secant / RollingRadius));
    }

    private double LengthFromZero(double parameter)
    {
        (double sine, double cosine) = Math.SinCos(parameter);
        return LengthFromZero(parameter, sine / cosine, 1 / cosine);
    }

    private double LengthFromZero(double parameter, double tangent, double secant) =>
        (TipRadius * (parameter - (CentreHeight * tangent / RollingRadius)))
            + (CentreHeight * CentreHeight * ((tangent * secant) + Math.Asinh(tangent)) / (2 * RollingRadius));
}
