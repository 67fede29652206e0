namespace GearBlanks.Teeth;

/// <summary>
/// The numbers that define a ring gear, whose teeth point inward. The sign of x is that of ISO 21771: positive thickens the ring's teeth
/// and makes its tip and root circles smaller.
/// </summary>
/// <param name="Teeth">Tooth count z, positive, 4 to 1000.</param>
/// <param name="Module">Module m, mm, 0.05 to 50.</param>
/// <param name="Rack">Basic rack: its proportions, not a tool that could cut a ring.</param>
/// <param name="RimDiameter">Outer diameter of the rim, mm; greater than the root circle's.</param>
/// <param name="RootFilletRadius">Radius of the round between flank and root circle, mm; null for the rack's fillet radius.</param>
/// <param name="ProfileShift">Profile shift coefficient x, -1 to 1.5.</param>
/// <param name="Thinning">Loss of tooth thickness on the reference circle, mm (arc), 0 or more.</param>
/// <param name="TipDiameter">Tip diameter, mm; null for d - 2 (haP + x) m.</param>
public sealed record RingData(
    int Teeth, double Module, BasicRack Rack, double RimDiameter, double? RootFilletRadius = null,
    double ProfileShift = 0, double Thinning = 0, double? TipDiameter = null)
    : GearData(Teeth, Module, Rack, ProfileShift, Thinning, TipDiameter);
