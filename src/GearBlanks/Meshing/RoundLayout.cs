using GearBlanks.Teeth;
using MathNet.Numerics.RootFinding;

namespace GearBlanks.Meshing;

/// <summary>
/// Two round gears: cos alpha_w = B / a and inv alpha_w0 = inv alpha +- 2 (xE1 + xE2) tan alpha / Z, with B and Z the sum (of a ring and its
/// pinion: the difference) of base radii and tooth counts; the lower sign is the ring's.
/// </summary>
internal sealed record RoundLayout : PairLayout
{
    // Beyond this working angle, rad, no teeth reach one another.
    private const double WidestAngle = 1.5;

    // A guard against a hang only: bracketed roots here take under thirty steps.
    private const int MaxSteps = 200;

    private readonly double _closedInvolute;

    private RoundLayout(GearData first, GearData second, int sense, int teeth, double baseDistance)
        : base(first.Module, first.Rack.PressureAngle, 2 * Math.PI * BaseRadius(first) / first.Teeth, first.GeneratingShift + second.GeneratingShift)
    {
        Sense = sense;
        Teeth = teeth;
        LeastDistance = baseDistance;
        _closedInvolute = InvoluteFunction.Inv(PressureAngle) + (sense * 2 * ShiftSum * Math.Tan(PressureAngle) / teeth);
    }

    /// <inheritdoc/>
    public override int Sense { get; }

    /// <summary>Z: the sum of the tooth counts, or a ring's less its pinion's.</summary>
    public int Teeth { get; }

    /// <inheritdoc/>
    public override double LeastDistance { get; }

    /// <inheritdoc/>
    public override double? ClosedDistance =>
        _closedInvolute < 0 ? null : LeastDistance / Math.Cos(InvoluteFunction.Inverse(_closedInvolute));

    public static RoundLayout Outside(GearData first, GearData second) =>
        new(first, second, 1, first.Teeth + second.Teeth, BaseRadius(first) + BaseRadius(second));

    public static RoundLayout InRing(GearData pinion, RingData ring) =>
        new(pinion, ring, -1, ring.Teeth - pinion.Teeth, BaseRadius(ring) - BaseRadius(pinion));

    /// <inheritdoc/>
    public override double WorkingAngleAt(double distance) => Math.Acos(Math.Min(1, LeastDistance / distance));

    /// <inheritdoc/>
    /// <remarks>+- 2 a (inv alpha_w - inv alpha_w0).</remarks>
    public override double BacklashAt(double distance) => BacklashAtAngle(WorkingAngleAt(distance), distance);

    /// <inheritdoc/>
    public override double DistanceFor(double backlash)
    {
        double Excess(double angle) => BacklashAtAngle(angle, LeastDistance / Math.Cos(angle)) - backlash;
        (double low, double high) = Sense > 0 ? (0, WidestAngle) : (WidestPlay(), ClosedAngle());
        RequireWithinReach(Excess(low), Excess(high), backlash);
        return LeastDistance / Math.Cos(Excess(high) == 0 ? high : Brent.FindRoot(Excess, low, high, 1e-15, MaxSteps));
    }

    /// <inheritdoc/>
    public override double BacklashOfThinning(double distance) => 2 * distance / (Module * Teeth);

    protected override GearGeometryException NoLineOfAction(double distance) => new(
        "no-line-of-action",
        Sense > 0
            ? "The base circles overlap, so the flanks cannot drive one another; centre distance, mm"
            : "The pinion's base circle lies inside the ring's without a common tangent, so the flanks cannot drive one another; centre distance, mm",
        distance, LeastDistance,
        ClosedDistance is { } a ? FormattableString.Invariant($"without backlash these gears mesh at {a:0.###} mm") : null);

    private static double BaseRadius(GearData data) => data.ReferenceDiameter / 2 * Math.Cos(data.Rack.PressureAngle);

    private double BacklashAtAngle(double angle, double distance) => Sense * 2 * distance * (InvoluteFunction.Inv(angle) - _closedInvolute);

    // The working angle without backlash; 0 where no distance is without, so that the bracket is empty.
    private double ClosedAngle() => _closedInvolute > 0 ? InvoluteFunction.Inverse(_closedInvolute) : 0;

    // In a ring the arc of backlash grows with the working circle before it shrinks, up to inv t + tan t = inv alpha_w0.
    private double WidestPlay()
    {
        double high = ClosedAngle();
        return high == 0 ? 0 : Brent.FindRoot(t => InvoluteFunction.Inv(t) + Math.Tan(t) - _closedInvolute, 0, high, 1e-15, MaxSteps);
    }

    private void RequireWithinReach(double atLow, double atHigh, double backlash)
    {
        const string shapeCase = "backlash-out-of-reach";
        bool reached = Sense > 0 ? atLow < 0 : atHigh <= 0 && _closedInvolute >= 0;
        if (!reached)
        {
            throw Sense > 0
                ? new GearGeometryException(
                    shapeCase, "The teeth are so thin that the backlash is greater at every distance; backlash, mm",
                    backlash, atLow + backlash, "use less thinning or a greater profile shift")
                : new GearGeometryException(
                    shapeCase, "The teeth are so thick that the backlash is smaller at every distance; backlash, mm",
                    backlash, atHigh + backlash, "use more thinning or a smaller profile shift");
        }

        if (!(Sense > 0 ? atHigh > 0 : atLow >= 0))
        {
            throw new GearGeometryException(
                shapeCase, "No centre distance gives so much backlash; backlash, mm",
                backlash, (Sense > 0 ? atHigh : atLow) + backlash, "use less backlash");
        }
    }
}
