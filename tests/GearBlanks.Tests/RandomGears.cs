using CsCheck;
using GearBlanks.Teeth;

namespace GearBlanks.Tests;

/// <summary>Random gear data over the whole ranges, with small tooth counts and usual proportions made likely.</summary>
internal static class RandomGears
{
    public static Gen<BasicRack> Racks { get; } = Gen.OneOf(
        Gen.Select(Gen.OneOf('A', 'B', 'C', 'D'), Gen.OneOf(Gen.OneOf(14.5, 20.0, 25.0), Gen.Double[14.5, 25])).Select((type, degrees) => TestRacks.Iso(type, degrees)),
        Gen.Select(Gen.Double[5, 45], Gen.Double[0.4, 1.6], Gen.Double[0.5, 2], Gen.Double[0, 1])
            .Select((degrees, addendum, dedendum, round) => Round(TestRacks.Radians(degrees), addendum, dedendum, round)));

    public static Gen<GearData> Data { get; } = Gen.Select(
        Gen.OneOf(Gen.Int[4, 40], Gen.Int[4, 150], Gen.Int[4, 1000]),
        Gen.Double[Math.Log(0.05), Math.Log(50)].Select(log => Math.Clamp(Math.Exp(log), 0.05, 50)),
        Racks,
        Gen.Double[-1, 1.5],
        Gen.OneOf(Gen.Const(0.0), Gen.Double[0, 0.2]),
        Gen.OneOf(Gen.Const(double.NaN), Gen.Const(double.NaN), Gen.Double[-0.8, 0.3]))
        .Select((teeth, module, rack, shift, thinning, tip) => new GearData(
            teeth, module, rack, shift, thinning * module,
            double.IsNaN(tip) ? null : module * (teeth + (2 * (rack.Addendum + shift + tip)))));

    /// <summary>The gears among the data; the rest is refused.</summary>
    public static Gen<ExternalGear> Legal { get; } = Data.Select(TryCreate).Where(gear => gear is not null).Select(gear => gear!);

    public static ExternalGear? TryCreate(GearData data)
    {
        try
        {
            return ExternalGear.Create(data);
        }
        catch (GearGeometryException)
        {
            return null;
        }
    }

    // A share of the widest round, so that most racks exist.
    private static BasicRack Round(double alpha, double addendum, double dedendum, double share)
    {
        double widest = ((Math.PI / 4) - (dedendum * Math.Tan(alpha))) * Math.Cos(alpha) / (1 - Math.Sin(alpha));
        return new BasicRack("random", alpha, addendum, dedendum, share < 0.05 ? 0 : Math.Max(0, share * widest));
    }
}
