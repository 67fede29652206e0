namespace GearBlanks.Teeth;

/// <summary>The numbers that define an external spur gear.</summary>
/// <param name="Teeth">Tooth count z, 4 to 1000.</param>
/// <param name="Module">Module m, mm, 0.05 to 50.</param>
/// <param name="Rack">Basic rack.</param>
/// <param name="ProfileShift">Profile shift coefficient x, -1 to 1.5.</param>
/// <param name="Thinning">
/// Loss of tooth thickness on the reference circle, mm (arc), 0 or more: made by the generating shift xE, the tip circle stays that of x.
/// </param>
/// <param name="TipDiameter">Tip diameter, mm; null for d + 2 (haP + x) m.</param>
public sealed record GearData(
    int Teeth, double Module, BasicRack Rack, double ProfileShift = 0, double Thinning = 0, double? TipDiameter = null)
{
    /// <summary>Reference diameter d = m z, mm (ISO 21771:2007, clause 4.2; from memory).</summary>
    public double ReferenceDiameter => Module * Teeth;

    /// <summary>Generating profile shift coefficient xE = x - thinning / (2 m tan alpha) (ISO 21771:2007, clause 8; from memory).</summary>
    public double GeneratingShift => ProfileShift - (Thinning / (2 * Module * Math.Tan(Rack.PressureAngle)));

    /// <summary>Tooth thickness on the reference circle, thinned, mm (arc): m (pi/2 + 2 xE tan alpha).</summary>
    public double ToothThickness => Module * ((Math.PI / 2) + (2 * GeneratingShift * Math.Tan(Rack.PressureAngle)));
}
