using GearBlanks.Teeth;

namespace GearBlanks.Meshing;

/// <summary>An external gear over a rack.</summary>
public sealed record RackPair : GearPair
{
    internal RackPair(PairLayout layout, Toothing first, Toothing second, double centreDistance)
        : base(layout, centreDistance)
    {
        First = first;
        Second = second;
        Gear = first as ExternalGear ?? (ExternalGear)second;
        Rack = first as RackBar ?? (RackBar)second;
    }

    /// <inheritdoc/>
    public override Toothing First { get; }

    /// <inheritdoc/>
    public override Toothing Second { get; }

    /// <summary>The gear.</summary>
    public ExternalGear Gear { get; }

    /// <summary>The rack.</summary>
    public RackBar Rack { get; }

    /// <inheritdoc/>
    public override double FirstWorkingRadius => First is RackBar ? double.PositiveInfinity : Gear.ReferenceRadius;

    /// <inheritdoc/>
    public override double SecondWorkingRadius => Second is RackBar ? double.PositiveInfinity : Gear.ReferenceRadius;

    /// <inheritdoc/>
    public override double FirstTipClearance => First is RackBar ? RackTipClearance : GearTipClearance;

    /// <inheritdoc/>
    public override double SecondTipClearance => Second is RackBar ? RackTipClearance : GearTipClearance;

    /// <inheritdoc/>
    public override double? FirstFilletClearance => First is RackBar ? RackFilletClearance : GearFilletClearance;

    /// <inheritdoc/>
    public override double? SecondFilletClearance => Second is RackBar ? RackFilletClearance : GearFilletClearance;

    // From where the line of action touches the gear's base circle; the pitch point lies on the gear's reference circle.
    private protected override Toothing LineFirst => Gear;

    private protected override ContactWays Ways
    {
        get
        {
            return new ContactWays(
                RollLength(Gear, Gear.FormRadius), RollAtHeight(Rack.TipFormHeight),
                RollLength(Gear, Gear.TipFormRadius), RollAtHeight(Rack.FormHeight));
        }
    }

    private protected override ContactEnd EndAt(double roll)
    {
        double sine = Math.Sin(WorkingPressureAngle);
        double ofRack = Gear.ReferenceRadius * sine;
        double radius = double.Hypot(Gear.BaseRadius, roll);
        double height = RollingHeight + ((ofRack - roll) * sine);
        return First is RackBar
            ? new ContactEnd(height, radius, Sliding(ofRack, roll), Sliding(roll, ofRack), roll - ofRack)
            : new ContactEnd(radius, height, Sliding(roll, ofRack), Sliding(ofRack, roll), roll - ofRack);
    }

    private double RollAtHeight(double height)
    {
        double sine = Math.Sin(WorkingPressureAngle);
        return (Gear.ReferenceRadius * sine) - ((height - RollingHeight) / sine);
    }

    // Of the line on which the gear's reference circle rolls, over the rack's reference line.
    private double RollingHeight => CentreDistance - Gear.ReferenceRadius;

    private double GearTipClearance => CentreDistance - Gear.TipRadius - Rack.RootHeight;

    private double RackTipClearance => CentreDistance - Rack.TipHeight - Gear.RootRadius;

    private double? GearFilletClearance => TipCorner.LeastRoom(
        new RackCornerPath(Gear, Rack, CentreDistance),
        new ExternalSide(Gear, Gear.ReferenceRadius),
        Gear.FormRadius, Math.Max(Gear.FormRadius, Math.Min(Gear.ReferenceRadius, Gear.TipRadius)),
        RollAtHeight(Rack.TipHeight) >= RollLength(Gear, Gear.FormRadius));

    private double? RackFilletClearance => TipCorner.LeastRoom(
        new OverRackCornerPath(Gear, CentreDistance, WorkingPressureAngle),
        new RackSide(Rack, RollingHeight),
        Rack.FormHeight, Math.Max(Rack.FormHeight, Math.Min(RollingHeight, Rack.TipHeight)),
        RollLength(Gear, Gear.TipRadius) <= RollAtHeight(Rack.FormHeight));
}
