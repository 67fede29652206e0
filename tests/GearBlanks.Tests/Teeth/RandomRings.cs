using CsCheck;
using GearBlanks.Teeth;

namespace GearBlanks.Tests.Teeth;

/// <summary>Random ring data over the whole ranges; tips shortened where the full depth would reach inside the base circle.</summary>
internal static class RandomRings
{
    public static Gen<RingData> Data { get; } = Gen.Select(
        Gen.OneOf(Gen.Int[4, 60], Gen.Int[30, 150], Gen.Int[4, 1000]),
        Gen.Double[Math.Log(0.05), Math.Log(50)].Select(log => Math.Clamp(Math.Exp(log), 0.05, 50)),
        RandomGears.Racks,
        Gen.Double[-1, 1.5],
        Gen.OneOf(Gen.Const(0.0), Gen.Double[0, 0.2]),
        Gen.OneOf(Gen.Const(double.NaN), Gen.Const(1.0), Gen.Double[0.7, 1.2]),
        Gen.OneOf(Gen.Const(double.NaN), Gen.Const(0.0), Gen.Double[0, 0.6]))
        .Select((teeth, module, rack, shift, thinning, tip, round) => new RingData(
            teeth, module, rack, module * (teeth + 10), double.IsNaN(round) ? null : round * module, shift, thinning * module,
            double.IsNaN(tip) ? null : Tip(teeth, module, rack, shift) * tip));

    public static Gen<RingGear> Legal { get; } = Data.Select(TryCreate).Where(ring => ring is not null).Select(ring => ring!);

    public static RingGear? TryCreate(RingData data)
    {
        try
        {
            return RingGear.Create(data);
        }
        catch (GearGeometryException)
        {
            return null;
        }
    }

    private static double Tip(int teeth, double module, BasicRack rack, double shift) =>
        module * Math.Max(teeth - (2 * (rack.Addendum + shift)), teeth * Math.Cos(rack.PressureAngle));
}
