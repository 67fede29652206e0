using GearBlanks.Teeth;

namespace GearBlanks.Meshing;

/// <summary>A pinion in a ring gear.</summary>
public sealed record RingPair : GearPair
{
    internal RingPair(PairLayout layout, Gear first, Gear second, double centreDistance)
        : base(layout, centreDistance)
    {
        First = first;
        Second = second;
        Ring = first as RingGear ?? (RingGear)second;
        Pinion = first as ExternalGear ?? (ExternalGear)second;
    }

    /// <inheritdoc/>
    public override Gear First { get; }

    /// <inheritdoc/>
    public override Gear Second { get; }

    /// <summary>The external gear.</summary>
    public ExternalGear Pinion { get; }

    /// <summary>The ring.</summary>
    public RingGear Ring { get; }

    /// <inheritdoc/>
    public override double FirstWorkingRadius => WorkingRadius(First);

    /// <inheritdoc/>
    public override double SecondWorkingRadius => WorkingRadius(Second);

    /// <inheritdoc/>
    public override double FirstTipClearance => First is RingGear ? RingTipClearance : PinionTipClearance;

    /// <inheritdoc/>
    public override double SecondTipClearance => Second is RingGear ? RingTipClearance : PinionTipClearance;

    /// <inheritdoc/>
    public override double? FirstFilletClearance => First is RingGear ? RingFilletClearance : PinionFilletClearance;

    /// <inheritdoc/>
    public override double? SecondFilletClearance => Second is RingGear ? RingFilletClearance : PinionFilletClearance;

    /// <summary>
    /// Involute interference, mm: how far along the line of action from the pinion's base circle the ring's tip comes into contact; negative where it
    /// would have to touch an involute that the pinion no longer has. rb2 tan alpha_a2 - a sin alpha_w.
    /// Source: Stock Drive Products / Sterling Instrument, Elements of Metric Gear Technology, D785/D805, 5.2, eq. (5-4), as a length; from memory.
    /// </summary>
    public double InvoluteClearance => RollLength(Ring, Ring.TipRadius) - Line;

    /// <summary>
    /// Trochoid interference, mm: arc on the ring's tip circle between the pinion's tip corner and the ring's where the two tip circles cross, away from the line
    /// of centres, while the flanks touch; negative where the corners overlap; null where the tip circles do not cross.
    /// Source: Stock Drive Products / Sterling Instrument, Elements of Metric Gear Technology, D785/D805, 5.2, eqs. (5-6) to (5-8), as a length; from memory.
    /// </summary>
    public double? TrochoidClearance
    {
        get
        {
            RoundCornerPath path = PinionCorner;
            var side = new RingSide(Ring, WorkingRadius(Ring));
            double reach = path.Reach(Ring.TipRadius);
            return double.IsNaN(reach)
                ? null
                : Math.Min(side.FlankRoom(path.At(reach)), side.FlankRoom(path.At(-reach))) * Ring.TipRadius / Ring.BaseRadius;
        }
    }

    /// <summary>
    /// Trimming interference, mm: room on the pinion's tip circle, the backlash shared by both sides, between its tip corners and the ring's where the pinion moves in along the line of
    /// centres without turning, whichever teeth stand there; negative where it may have to be put in along the axis; null where the corners never pass one another.
    /// Where the pinion does not fit into the ring's tip circle at all, the difference of the tip radii, which is negative.
    /// Source: Stock Drive Products / Sterling Instrument, Elements of Metric Gear Technology, D785/D805, 5.2, eqs. (5-9) and (5-10), as a length and with the backlash added; from memory.
    /// </summary>
    public double? TrimmingClearance
    {
        get
        {
            double fits = Ring.TipRadius - Pinion.TipRadius;
            double ratio = (double)Pinion.Teeth / Ring.Teeth;
            double tips = ratio * Ring.TipRadius / Pinion.TipRadius;
            if (fits <= 0)
            {
                return fits;
            }

            if (tips >= 1)
            {
                return null;
            }

            double sine = Math.Sqrt((1 - (tips * tips)) / (1 - (ratio * ratio)));
            double first = Math.Asin(sine);
            double second = Math.Asin(sine * Pinion.TipRadius / Ring.TipRadius);
            double invWorking = InvoluteFunction.Inv(WorkingPressureAngle);
            double touching = first + InvoluteAt(Pinion) - invWorking - ((second + InvoluteAt(Ring) - invWorking) / ratio);
            return (touching + (CircumferentialBacklash / 2 / WorkingRadius(Pinion))) * Pinion.TipRadius;
        }
    }

    // From where the line of action touches the pinion's base circle; it touches the ring's a line's length before.
    private protected override ContactWays Ways => new(
        RollLength(Pinion, Pinion.FormRadius), RollLength(Ring, Ring.TipFormRadius) - Line,
        RollLength(Pinion, Pinion.TipFormRadius), RollLength(Ring, Ring.FormRadius) - Line);

    private protected override Toothing LineFirst => Pinion;

    private protected override ContactEnd EndAt(double roll)
    {
        double other = roll + Line;
        (double pinion, double ring) = (roll / Pinion.Teeth, other / Ring.Teeth);
        (double pinionRadius, double ringRadius) = (double.Hypot(Pinion.BaseRadius, roll), double.Hypot(Ring.BaseRadius, other));
        double fromPitchPoint = roll - (WorkingRadius(Pinion) * Math.Sin(WorkingPressureAngle));
        return First is RingGear
            ? new ContactEnd(ringRadius, pinionRadius, Sliding(ring, pinion), Sliding(pinion, ring), fromPitchPoint)
            : new ContactEnd(pinionRadius, ringRadius, Sliding(pinion, ring), Sliding(ring, pinion), fromPitchPoint);
    }

    private double Line => CentreDistance * Math.Sin(WorkingPressureAngle);

    private double PinionTipClearance => Ring.RootRadius - CentreDistance - Pinion.TipRadius;

    private double RingTipClearance => Ring.TipRadius - CentreDistance - Pinion.RootRadius;

    private RoundCornerPath PinionCorner => RoundCornerPath.InRing(Ring, Pinion, CentreDistance, WorkingPressureAngle);

    // With nearly equal tooth counts the working circles lie beyond the teeth: then half the flank belongs to the fillet, and the rest to the tips.
    private double? PinionFilletClearance => TipCorner.LeastRoom(
        RoundCornerPath.OfRing(Pinion, Ring, CentreDistance, WorkingPressureAngle),
        new ExternalSide(Pinion, WorkingRadius(Pinion)),
        Pinion.FormRadius, Math.Max(Pinion.FormRadius, Math.Min(WorkingRadius(Pinion), MiddleOf(Pinion))));

    private double? RingFilletClearance => TipCorner.LeastRoom(
        PinionCorner, new RingSide(Ring, WorkingRadius(Ring)),
        Ring.FormRadius, Math.Min(Ring.FormRadius, Math.Max(WorkingRadius(Ring), MiddleOf(Ring))));

    private static double MiddleOf(Gear gear) => (gear.FormRadius + gear.TipRadius) / 2;

    private static double InvoluteAt(Gear gear) => InvoluteFunction.Inv(Math.Acos(gear.BaseRadius / gear.TipRadius));

    private double WorkingRadius(Gear gear) => CentreDistance * gear.Teeth / (Ring.Teeth - Pinion.Teeth);
}
