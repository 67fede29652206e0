using GearBlanks.Teeth;

namespace GearBlanks.Meshing;

/// <summary>Two external gears.</summary>
public sealed record ExternalPair : GearPair
{
    internal ExternalPair(PairLayout layout, ExternalGear first, ExternalGear second, double centreDistance)
        : base(layout, centreDistance)
    {
        First = first;
        Second = second;
    }

    /// <inheritdoc/>
    public override ExternalGear First { get; }

    /// <inheritdoc/>
    public override ExternalGear Second { get; }

    /// <inheritdoc/>
    public override double FirstWorkingRadius => CentreDistance * First.Teeth / (First.Teeth + Second.Teeth);

    /// <inheritdoc/>
    public override double SecondWorkingRadius => CentreDistance - FirstWorkingRadius;

    /// <inheritdoc/>
    public override double FirstTipClearance => CentreDistance - First.TipRadius - Second.RootRadius;

    /// <inheritdoc/>
    public override double SecondTipClearance => CentreDistance - Second.TipRadius - First.RootRadius;

    /// <inheritdoc/>
    public override double? FirstFilletClearance => FilletClearance(First, Second);

    /// <inheritdoc/>
    public override double? SecondFilletClearance => FilletClearance(Second, First);

    // From where the line of action touches the first gear's base circle.
    private protected override ContactWays Ways
    {
        get
        {
            double line = CentreDistance * Math.Sin(WorkingPressureAngle);
            return new ContactWays(
                RollLength(First, First.FormRadius), line - RollLength(Second, Second.TipFormRadius),
                RollLength(First, First.TipFormRadius), line - RollLength(Second, Second.FormRadius));
        }
    }

    private protected override ContactEnd EndAt(double roll)
    {
        double other = (CentreDistance * Math.Sin(WorkingPressureAngle)) - roll;

        // Along its flank a gear moves by its speed of turning, which is as 1 / z, times the radius of curvature.
        return new ContactEnd(
            double.Hypot(First.BaseRadius, roll), double.Hypot(Second.BaseRadius, other),
            Sliding(roll / First.Teeth, other / Second.Teeth), Sliding(other / Second.Teeth, roll / First.Teeth),
            roll - (FirstWorkingRadius * Math.Sin(WorkingPressureAngle)));
    }

    private double? FilletClearance(ExternalGear gear, ExternalGear mate)
    {
        double working = CentreDistance * gear.Teeth / (gear.Teeth + mate.Teeth);
        return TipCorner.LeastRoom(
            RoundCornerPath.Outside(gear, mate, CentreDistance, WorkingPressureAngle),
            new ExternalSide(gear, working),
            gear.FormRadius, Math.Max(gear.FormRadius, Math.Min(working, gear.TipRadius)),
            (CentreDistance * Math.Sin(WorkingPressureAngle)) - RollLength(mate, mate.TipRadius) >= RollLength(gear, gear.FormRadius));
    }
}
