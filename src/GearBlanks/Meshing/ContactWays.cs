namespace GearBlanks.Meshing;

/// <summary>What bounds contact on the line of action, mm from where it touches one gear's base circle: in a ring the pinion's, over a rack the gear's.</summary>
/// <param name="OwnForm">Where this gear's involute begins.</param>
/// <param name="OtherTip">Where the other's tip begins to touch.</param>
/// <param name="OwnTip">Where this gear's tip ends to touch.</param>
/// <param name="OtherForm">Where the other's involute begins.</param>
internal readonly record struct ContactWays(double OwnForm, double OtherTip, double OwnTip, double OtherForm)
{
    /// <summary>Where contact begins and ends.</summary>
    public (double Start, double End) Contact => (Math.Max(OwnForm, OtherTip), Math.Min(OwnTip, OtherForm));

    /// <summary>By how much each one's flank goes further down than the other's tip reaches.</summary>
    public (double Own, double Other) Margins => (OtherTip - OwnForm, OtherForm - OwnTip);
}
