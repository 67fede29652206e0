using CsCheck;
using GearBlanks.Curves;
using GearBlanks.Curves.Fitting;
using GearBlanks.Teeth;

namespace GearBlanks.Tests.Properties;

/// <summary>A random gear, its exact outline, and that outline written as arcs within a random tolerance, mm.</summary>
internal sealed record Specimen(ExternalGear Gear, Outline Exact, double Tolerance, ArcPath Written)
{
    public static Gen<Specimen> Any { get; } = Gen.Select(RandomGears.Legal, Gen.Double[-4.5, -2], Make);

    /// <summary>Half a pitch, rad.</summary>
    public double HalfPitch => Math.PI / Gear.Teeth;

    /// <summary>What lengths may differ by through rounding alone, mm.</summary>
    public double Rounding => 1e-12 * (1 + Gear.TipRadius);

    public static Specimen Of(ExternalGear gear, double tolerance)
    {
        Outline exact = gear.Outline();
        return new Specimen(gear, exact, tolerance, OutlineFit.Fit(exact, tolerance));
    }

    // A neck thinner than a few tolerances can close up in a drawing: such a gear is drawn more finely.
    private static Specimen Make(ExternalGear gear, double log) =>
        Of(gear, Math.Max(OutlineFit.LeastTolerance, Math.Min(gear.Module * Math.Pow(10, log), gear.NeckThickness / 8)));

    public override string ToString() => $"{Gear.Data}, tolerance {Tolerance:R}";
}
