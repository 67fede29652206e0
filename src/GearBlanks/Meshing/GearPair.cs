using System.Numerics;
using GearBlanks.Curves;
using GearBlanks.Teeth;

namespace GearBlanks.Meshing;

/// <summary>
/// Two toothings in mesh at one distance: everything that follows from involute geometry.
/// Source of the relations: ISO 21771:2007, clauses 5 and 7; from memory.
/// </summary>
public abstract record GearPair
{
    private protected GearPair(PairLayout layout, double centreDistance)
    {
        Layout = layout;
        CentreDistance = centreDistance;
        WorkingPressureAngle = layout.WorkingAngleAt(centreDistance);
    }

    /// <summary>The first toothing.</summary>
    public abstract Toothing First { get; }

    /// <summary>The second toothing.</summary>
    public abstract Toothing Second { get; }

    /// <summary>Centre distance a, mm; with a rack the height of the gear's centre over the rack's reference line.</summary>
    public double CentreDistance { get; }

    /// <summary>Working pressure angle, rad: cos alpha_w = (rb1 + rb2) / a, in a ring (rb2 - rb1) / a; with a rack the rack's own.</summary>
    public double WorkingPressureAngle { get; }

    /// <summary>Radius of the first one's working circle, mm: a z1 / (z1 + z2), in a ring a z1 / |z2 - z1|; infinite for a rack.</summary>
    public abstract double FirstWorkingRadius { get; }

    /// <summary>Radius of the second one's working circle, mm; infinite for a rack.</summary>
    public abstract double SecondWorkingRadius { get; }

    /// <summary>
    /// Circumferential backlash at the working circle, mm (arc): 2 a (inv alpha_w - inv alpha_w0), with alpha_w0 the working angle without backlash; in a
    /// ring with the other sign; over a rack 2 tan alpha (a - a0). Negative where the teeth overlap.
    /// </summary>
    public double CircumferentialBacklash => Layout.BacklashAt(CentreDistance);

    /// <summary>Normal backlash, mm: along the line of action.</summary>
    public double NormalBacklash => CircumferentialBacklash * Math.Cos(WorkingPressureAngle);

    /// <summary>
    /// Radial backlash, mm: how far the distance is from the one without backlash, positive where there is play; null where no distance is without. A ring's
    /// play is closed by a greater distance, every other one by a smaller.
    /// </summary>
    public double? RadialBacklash => Layout.Sense * (CentreDistance - Layout.ClosedDistance);

    /// <summary>Angular backlash of the first one, the second held, rad; null for a rack.</summary>
    public double? FirstAngularBacklash => AngularBacklash(FirstWorkingRadius);

    /// <summary>Angular backlash of the second one, the first held, rad; null for a rack.</summary>
    public double? SecondAngularBacklash => AngularBacklash(SecondWorkingRadius);

    /// <summary>Transverse contact ratio from the real form and tip form circles; 0 where the flanks never touch.</summary>
    public double ContactRatio
    {
        get
        {
            (double start, double end) = Contact;
            return Math.Max(0, end - start) / Layout.BasePitch;
        }
    }

    /// <summary>
    /// Where contact begins and ends: at the root of the first one's flank (in a ring the pinion's, over a rack the gear's) and at its tip; null where the flanks
    /// never touch. Both lie within the flanks that are really there: undercut, tip round, chamfer and relief are out.
    /// Source: the specific sliding as in ISO/TR 4467:1982; from memory.
    /// </summary>
    public (ContactEnd AtRoot, ContactEnd AtTip)? ContactEnds => Contact is var (start, end) && start <= end ? (EndAt(start), EndAt(end)) : null;

    /// <summary>
    /// Turns of the first one until the same two teeth meet again: z2 / gcd(z1, z2); null with a rack. The greater the better the wear is spread: it is greatest, a
    /// hunting tooth, where the counts have no common divisor.
    /// </summary>
    public int? HuntingTurns => First is RackBar || Second is RackBar
        ? null
        : Second.Teeth / (int)BigInteger.GreatestCommonDivisor(First.Teeth, Second.Teeth);

    /// <summary>Clearance of the first one's tip from the second's root, mm.</summary>
    public abstract double FirstTipClearance { get; }

    /// <summary>Clearance of the second one's tip from the first's root, mm.</summary>
    public abstract double SecondTipClearance { get; }

    /// <summary>
    /// Least distance between the second one's tip corner on its way and the first one's fillet, mm: negative where it digs in, there or into the flank
    /// beside it; null where it stays clear of the fillet. The corner is the sharp one, also where it is rounded or chamfered.
    /// </summary>
    public abstract double? FirstFilletClearance { get; }

    /// <summary>The same for the first one's tip corner and the second one's fillet, mm.</summary>
    public abstract double? SecondFilletClearance { get; }

    internal PairLayout Layout { get; }

    /// <summary>
    /// By how much contact, as far as the second one's tip reaches, stays above the first one's form circle, mm along the line of action: negative where the tip would touch a
    /// flank that is not there, beside the involute's start or inside its base circle. The tip counts from where its round, chamfer or relief starts.
    /// </summary>
    public double FirstFormMargin => ReferenceEquals(LineFirst, Second) ? Ways.Margins.Other : Ways.Margins.Own;

    /// <summary>The same of the second one's form circle and the first one's tip, mm.</summary>
    public double SecondFormMargin => ReferenceEquals(LineFirst, Second) ? Ways.Margins.Own : Ways.Margins.Other;

    /// <summary>Whose base circle the way along the line of action is counted from.</summary>
    private protected virtual Toothing LineFirst => First;

    /// <summary>What bounds contact on the line of action.</summary>
    private protected abstract ContactWays Ways { get; }

    /// <summary>Where contact begins and ends on the line of action, mm.</summary>
    private protected (double Start, double End) Contact => Ways.Contact;

    /// <summary>An end of contact at a length of the line of action, mm, counted as <see cref="Contact"/> does.</summary>
    private protected abstract ContactEnd EndAt(double roll);

    /// <summary>The pair at a distance.</summary>
    /// <param name="first">One toothing.</param>
    /// <param name="second">The other; of the two, at most one is a ring or a rack.</param>
    /// <param name="centreDistance">
    /// Centre distance, mm; at least the sum of the base radii, in a ring their difference; with a rack the height of the gear's centre over the rack's
    /// reference line, at least 0.
    /// </param>
    /// <exception cref="GearGeometryException">The two do not mesh at any distance, or there is no line of action at this one.</exception>
    public static GearPair At(Toothing first, Toothing second, double centreDistance)
    {
        PairLayout layout = PairLayout.Of(first.Data, second.Data);
        layout.RequireLineOfAction(centreDistance);
        return (first, second) switch
        {
            (RackBar, _) or (_, RackBar) => new RackPair(layout, first, second, centreDistance),
            (RingGear, _) or (_, RingGear) => new RingPair(layout, (Gear)first, (Gear)second, centreDistance),
            _ => new ExternalPair(layout, (ExternalGear)first, (ExternalGear)second, centreDistance),
        };
    }

    /// <summary>
    /// The distance without backlash, mm: inv alpha_w0 = inv alpha + 2 (xE1 + xE2) tan alpha / (z1 + z2), in a ring with z1 - z2 (pinion less ring);
    /// over a rack d/2 + (xE1 + xE2) m. Null where no distance closes the backlash: teeth too thin outside, too thick in a ring.
    /// </summary>
    /// <exception cref="GearGeometryException">The two do not mesh at any distance.</exception>
    public static double? ZeroBacklashDistance(Toothing first, Toothing second) => PairLayout.Of(first.Data, second.Data).ClosedDistance;

    /// <summary>The distance, mm, at which the circumferential backlash is the one wanted.</summary>
    /// <param name="first">One toothing.</param>
    /// <param name="second">The other.</param>
    /// <param name="backlash">Circumferential backlash at the working circle, mm; at least 0.</param>
    /// <exception cref="GearGeometryException">The two do not mesh at any distance, or none has this backlash.</exception>
    public static double DistanceFor(Toothing first, Toothing second, double backlash) =>
        PairLayout.Of(first.Data, second.Data).DistanceFor(backlash);

    /// <summary>Length of the tangent from a point of a gear at a radius to its base circle, mm.</summary>
    private protected static double RollLength(Gear gear, double radius) => Involute.RollAt(gear.BaseRadius, radius) * gear.BaseRadius;

    /// <summary>Specific sliding of the one whose way along the flank is the first given, against the other's.</summary>
    private protected static double Sliding(double own, double other) => own > 0 ? 1 - (other / own) : double.NegativeInfinity;

    private double? AngularBacklash(double workingRadius) =>
        double.IsInfinity(workingRadius) ? null : CircumferentialBacklash / workingRadius;
}
