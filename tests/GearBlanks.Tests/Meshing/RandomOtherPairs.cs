using CsCheck;
using GearBlanks.Meshing;
using GearBlanks.Teeth;

namespace GearBlanks.Tests.Meshing;

/// <summary>Random pinions in rings and gears over racks, the gear first, with some backlash.</summary>
internal static class RandomOtherPairs
{
    private static readonly Gen<BasicRack> Racks =
        Gen.Select(Gen.OneOf('A', 'B', 'C', 'D'), Gen.OneOf(14.5, 20.0, 20.0, 25.0)).Select((type, degrees) => TestRacks.Iso(type, degrees));

    /// <summary>Rings with tips of any length, so that some interfere; round, sharp and narrow root fillets.</summary>
    public static Gen<RingPair> Rings { get; } = Gen.Select(
        Gen.Select(Gen.Int[8, 40], Gen.Int[3, 40], Gen.Double[0.4, 3], Racks),
        Gen.Select(Gen.Double[-0.3, 0.6], Gen.Double[-0.6, 0.3], Gen.Double[0, 0.08], Gen.Double[0, 0.08]),
        Gen.Double[0.005, 0.08], Gen.Double[0.5, 1.2], Gen.Double[-0.1, 0.3])
        .Select(TryRing).Where(pair => pair is not null).Select(pair => pair!);

    /// <summary>Racks with tips of any length.</summary>
    public static Gen<RackPair> Bars { get; } = Gen.Select(
        Gen.Select(Gen.Int[8, 60], Gen.Double[0.4, 3], Racks),
        Gen.Select(Gen.Double[-0.3, 0.6], Gen.Double[-0.4, 0.4], Gen.Double[0, 0.08], Gen.Double[0, 0.08]),
        Gen.Double[0.005, 0.08], Gen.Double[-0.2, 0.2], Gen.Double[-0.2, 0.2])
        .Select(TryBar).Where(pair => pair is not null).Select(pair => pair!);

    private static RingPair? TryRing(
        (int Z1, int Apart, double Module, BasicRack Rack) g, (double X1, double X2, double S1, double S2) s, double apart, double tip, double round)
    {
        int teeth = g.Z1 + g.Apart;
        double m = g.Module;
        double? tipDiameter = tip > 1 ? null : m * (teeth - (2 * (tip + s.X2)));
        return Try(() =>
        {
            var pinion = ExternalGear.Create(new GearData(g.Z1, m, g.Rack, s.X1, s.S1 * m));
            var ring = RingGear.Create(new RingData(teeth, m, g.Rack, m * (teeth + 8), round < 0 ? null : round * m, s.X2, s.S2 * m, tipDiameter));
            return pinion.IsPointed || ring.IsPointed || GearPair.ZeroBacklashDistance(pinion, ring) is not { } closed
                ? null
                : (RingPair)GearPair.At(pinion, ring, closed - (apart * m));
        });
    }

    private static RackPair? TryBar(
        (int Z, double Module, BasicRack Rack) g, (double X1, double X2, double S1, double S2) s, double apart, double gearTip, double rackTip)
    {
        double m = g.Module;
        return Try(() =>
        {
            var gear = ExternalGear.Create(new GearData(g.Z, m, g.Rack, s.X1, s.S1 * m, m * (g.Z + (2 * (1 + s.X1 + gearTip)))));
            var rack = RackBar.Create(new RackBarData(m, g.Rack, 8 * Math.PI * m, 4 * m, s.X2, s.S2 * m, m * (1 + s.X2 + rackTip)));
            return gear.IsPointed || rack.IsPointed ? null : (RackPair)GearPair.At(gear, rack, GearPair.ZeroBacklashDistance(gear, rack)!.Value + (apart * m));
        });
    }

    private static T? Try<T>(Func<T?> make)
        where T : class
    {
        try
        {
            return make();
        }
        catch (GearGeometryException)
        {
            return null;
        }
    }
}
