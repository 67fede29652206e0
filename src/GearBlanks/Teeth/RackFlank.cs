namespace GearBlanks.Teeth;

/// <summary>The flanks of a rack's tooth: a straight line and its mirror image.</summary>
/// <param name="HalfAtReference">Half the tooth's thickness on the reference line, mm.</param>
/// <param name="Tangent">How much of it each mm of height takes.</param>
internal readonly record struct RackFlank(double HalfAtReference, double Tangent)
{
    /// <summary>Angle between the flank and the height, rad.</summary>
    public double Angle => Math.Atan(Tangent);

    /// <summary>Half the tooth's thickness at a height over the reference line, mm.</summary>
    public double HalfThicknessAt(double height) => HalfAtReference - (height * Tangent);

    /// <summary>The flank that leaves this one at a height and has receded by an amount, mm normal to this one, at the tip.</summary>
    public RackFlank Relieved(double start, double tip, double amount)
    {
        double tangent = Tangent + (amount / Math.Cos(Angle) / (tip - start));
        return new RackFlank(HalfThicknessAt(start) + (start * tangent), tangent);
    }
}
