using GearBlanks.Teeth;
using MathNet.Numerics.RootFinding;

namespace GearBlanks.Meshing;

/// <summary>
/// Two external gears in mesh at one centre distance: everything that follows from involute geometry.
/// Source of the relations: ISO 21771:2007, clauses 5 and 7; from memory.
/// </summary>
public sealed record GearPair
{
    // The two gears' base pitches may differ by rounding only.
    private const double BasePitchAgreement = 1e-9;

    // A guard against a hang only: bracketed roots here take under thirty steps.
    private const int MaxSteps = 200;

    private GearPair(ExternalGear first, ExternalGear second, double centreDistance)
    {
        First = first;
        Second = second;
        CentreDistance = centreDistance;
        WorkingPressureAngle = Math.Acos(Math.Min(1, BaseSum(first, second) / centreDistance));
    }

    /// <summary>The first gear.</summary>
    public ExternalGear First { get; }

    /// <summary>The second gear.</summary>
    public ExternalGear Second { get; }

    /// <summary>Centre distance a, mm.</summary>
    public double CentreDistance { get; }

    /// <summary>Working pressure angle, rad: cos alpha_w = (rb1 + rb2) / a.</summary>
    public double WorkingPressureAngle { get; }

    /// <summary>Radius of the first gear's working circle, mm: a z1 / (z1 + z2).</summary>
    public double FirstWorkingRadius => CentreDistance * First.Teeth / (First.Teeth + Second.Teeth);

    /// <summary>Radius of the second gear's working circle, mm.</summary>
    public double SecondWorkingRadius => CentreDistance - FirstWorkingRadius;

    /// <summary>
    /// Circumferential backlash at the working circle, mm (arc): 2 a (inv alpha_w - inv alpha_w0), with alpha_w0 the working angle without backlash.
    /// Negative where the teeth overlap.
    /// </summary>
    public double CircumferentialBacklash => 2 * CentreDistance * (Inv(WorkingPressureAngle) - ZeroBacklashInvolute(First, Second));

    /// <summary>Normal backlash, mm: along the line of action.</summary>
    public double NormalBacklash => CircumferentialBacklash * Math.Cos(WorkingPressureAngle);

    /// <summary>Radial backlash, mm: the centre distance less the one without backlash; null where no distance is without.</summary>
    public double? RadialBacklash => CentreDistance - ZeroBacklashDistance(First, Second);

    /// <summary>Angular backlash of the first gear, the second held, rad.</summary>
    public double FirstAngularBacklash => CircumferentialBacklash / FirstWorkingRadius;

    /// <summary>Angular backlash of the second gear, the first held, rad.</summary>
    public double SecondAngularBacklash => CircumferentialBacklash / SecondWorkingRadius;

    /// <summary>Transverse contact ratio from the real form and tip circles; 0 where the flanks never touch.</summary>
    public double ContactRatio
    {
        get
        {
            double line = CentreDistance * Math.Sin(WorkingPressureAngle);
            double start = Math.Max(RollLength(First, First.FormRadius), line - RollLength(Second, Second.TipRadius));
            double end = Math.Min(RollLength(First, First.TipRadius), line - RollLength(Second, Second.FormRadius));
            return Math.Max(0, end - start) / (2 * Math.PI * First.BaseRadius / First.Teeth);
        }
    }

    /// <summary>Clearance of the first gear's tip from the second's root circle, mm.</summary>
    public double FirstTipClearance => CentreDistance - First.TipRadius - Second.RootRadius;

    /// <summary>Clearance of the second gear's tip from the first's root circle, mm.</summary>
    public double SecondTipClearance => CentreDistance - Second.TipRadius - First.RootRadius;

    /// <summary>
    /// Least distance between the second gear's tip corner on its way and the first gear's fillet, mm: negative where it digs in;
    /// null where it stays outside the form circle.
    /// </summary>
    public double? FirstFilletClearance => TipCornerPath.LeastRoom(First, Second, CentreDistance);

    /// <summary>The same for the first gear's tip corner and the second gear's fillet, mm.</summary>
    public double? SecondFilletClearance => TipCornerPath.LeastRoom(Second, First, CentreDistance);

    /// <summary>The pair at a centre distance.</summary>
    /// <param name="first">First gear.</param>
    /// <param name="second">Second gear.</param>
    /// <param name="centreDistance">Centre distance, mm; at least the sum of the base radii.</param>
    /// <exception cref="GearGeometryException">The base pitches differ, or the base circles overlap: there is no line of action.</exception>
    public static GearPair At(ExternalGear first, ExternalGear second, double centreDistance)
    {
        RequireEqualPitch(first, second);
        double least = BaseSum(first, second);
        if (!(centreDistance >= least) || double.IsInfinity(centreDistance))
        {
            throw new GearGeometryException(
                "no-line-of-action", "The base circles overlap, so the flanks cannot drive one another; centre distance, mm", centreDistance, least,
                ZeroBacklashDistance(first, second) is { } a ? FormattableString.Invariant($"without backlash these gears mesh at {a:0.###} mm") : null);
        }

        return new GearPair(first, second, centreDistance);
    }

    /// <summary>
    /// The centre distance without backlash, mm: inv alpha_w0 = inv alpha + 2 (xE1 + xE2) tan alpha / (z1 + z2);
    /// null where the teeth are so thin that no distance closes the backlash.
    /// </summary>
    /// <exception cref="GearGeometryException">The base pitches differ.</exception>
    public static double? ZeroBacklashDistance(ExternalGear first, ExternalGear second)
    {
        RequireEqualPitch(first, second);
        double involute = ZeroBacklashInvolute(first, second);
        return involute < 0 ? null : BaseSum(first, second) / Math.Cos(InvoluteFunction.Inverse(involute));
    }

    /// <summary>The centre distance, mm, at which the circumferential backlash is the one wanted.</summary>
    /// <param name="first">First gear.</param>
    /// <param name="second">Second gear.</param>
    /// <param name="backlash">Circumferential backlash at the working circle, mm; at least 0.</param>
    /// <exception cref="GearGeometryException">The base pitches differ, or even at the least distance the backlash is greater.</exception>
    public static double DistanceFor(ExternalGear first, ExternalGear second, double backlash)
    {
        RequireEqualPitch(first, second);
        double sum = BaseSum(first, second);
        double closed = ZeroBacklashInvolute(first, second);
        double Excess(double angle) => (2 * sum / Math.Cos(angle) * (Inv(angle) - closed)) - backlash;
        if (Excess(0) >= 0)
        {
            throw new GearGeometryException(
                "backlash-out-of-reach", "The teeth are so thin that the backlash is greater at every distance; backlash, mm",
                backlash, Excess(0) + backlash, "use less thinning or a greater profile shift");
        }

        const double widest = 1.5;
        if (!(Excess(widest) > 0))
        {
            throw new GearGeometryException(
                "backlash-out-of-reach", "No centre distance gives so much backlash; backlash, mm",
                backlash, Excess(widest) + backlash, "use less backlash");
        }

        return sum / Math.Cos(Brent.FindRoot(Excess, 0, widest, 1e-15, MaxSteps));
    }

    /// <summary>Length of the tangent from a point of a gear at a radius to its base circle, mm.</summary>
    internal static double RollLength(ExternalGear gear, double radius) =>
        Curves.Involute.RollAt(gear.BaseRadius, radius) * gear.BaseRadius;

    private static double ZeroBacklashInvolute(ExternalGear first, ExternalGear second) =>
        InvoluteFunction.Inv(first.PressureAngle)
            + (2 * (first.Data.GeneratingShift + second.Data.GeneratingShift) * Math.Tan(first.PressureAngle) / (first.Teeth + second.Teeth));

    private static double BaseSum(ExternalGear first, ExternalGear second) => first.BaseRadius + second.BaseRadius;

    private static double Inv(double angle) => InvoluteFunction.Inv(angle);

    private static void RequireEqualPitch(ExternalGear first, ExternalGear second)
    {
        double one = first.BaseRadius / first.Teeth;
        double other = second.BaseRadius / second.Teeth;
        if (Math.Abs(one - other) > BasePitchAgreement * one || Math.Abs(first.PressureAngle - second.PressureAngle) > BasePitchAgreement)
        {
            throw new GearGeometryException(
                "pitch-mismatch",
                FormattableString.Invariant($"Gears of module {first.Module:0.####} at {first.PressureAngle * 180 / Math.PI:0.##} degrees and module {second.Module:0.####} at {second.PressureAngle * 180 / Math.PI:0.##} degrees do not mesh; base pitch, mm"),
                2 * Math.PI * other, 2 * Math.PI * one, "give both gears one module and one pressure angle");
        }
    }
}
