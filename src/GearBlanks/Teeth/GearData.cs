namespace GearBlanks.Teeth;

/// <summary>The numbers that define a round gear: an external one, or, as <see cref="RingData"/>, a ring.</summary>
/// <param name="Teeth">Tooth count z, 4 to 1000; positive for a ring too.</param>
/// <param name="Module">Module m, mm, 0.05 to 50.</param>
/// <param name="Rack">Basic rack.</param>
/// <param name="ProfileShift">Profile shift coefficient x, -1 to 1.5; positive thickens the teeth.</param>
/// <param name="Thinning">Loss of tooth thickness on the reference circle, mm (arc), 0 or more.</param>
/// <param name="TipDiameter">Tip diameter, mm; null for d + 2 (haP + x) m, of a ring d - 2 (haP + x) m.</param>
public record GearData(
    int Teeth, double Module, BasicRack Rack, double ProfileShift = 0, double Thinning = 0, double? TipDiameter = null)
    : ToothData(Module, Rack, ProfileShift, Thinning)
{
    /// <summary>Reference diameter d = m z, mm (ISO 21771:2007, clause 4.2; from memory).</summary>
    public double ReferenceDiameter => Module * Teeth;

    /// <summary>Radius of the base circle, mm.</summary>
    internal double BaseRadius => ReferenceDiameter / 2 * Math.Cos(Rack.PressureAngle);

    internal override ToothData WithTip(double tip) => this with { TipDiameter = tip };
}
