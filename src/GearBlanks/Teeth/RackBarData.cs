namespace GearBlanks.Teeth;

/// <summary>The numbers that define a straight rack.</summary>
/// <param name="Module">Module m, mm, 0.05 to 50.</param>
/// <param name="Rack">Basic rack.</param>
/// <param name="Length">Length of the bar, mm: at least one pitch, at most 1000 pitches.</param>
/// <param name="BackHeight">Distance of the back from the reference line, mm; greater than the dedendum.</param>
/// <param name="ProfileShift">Profile shift coefficient x, -1 to 1.5: moves tip and root off the reference line, positive outward.</param>
/// <param name="Thinning">Loss of tooth thickness on the reference line, mm, 0 or more.</param>
/// <param name="TipHeight">Height of the tips over the reference line, mm; null for (haP + x) m.</param>
public sealed record RackBarData(
    double Module, BasicRack Rack, double Length, double BackHeight, double ProfileShift = 0, double Thinning = 0, double? TipHeight = null)
    : ToothData(Module, Rack, ProfileShift, Thinning)
{
    internal override ToothData WithTip(double tip) => this with { TipHeight = tip };
}
