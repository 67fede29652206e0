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

    /// <summary>The rings among the data and, since most of those are refused, among tamer ones.</summary>
    public static Gen<RingGear> Legal { get; } = Gen.Frequency((1, Data), (9, Tame)).Select(TryCreate).Where(ring => ring is not null).Select(ring => ring!);

    private static Gen<RingData> Tame => Data.Select(Gen.Int[0, 60], Gen.Double[-0.4, 0.4], Gen.Double[0, 1]).Select((data, more, shift, share) => data with
    {
        Teeth = Math.Min(1000, data.Teeth + more),
        RimDiameter = data.Module * (data.Teeth + more + 10),
        ProfileShift = shift,
        RootFilletRadius = share < 0.1 ? 0 : share * 0.3 * data.Module,
        TipDiameter = Tip(Math.Min(1000, data.Teeth + more), data.Module, data.Rack, shift) * (1 + (0.01 * share)),
    });

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
