using CsCheck;
using GearBlanks.Meshing;
using GearBlanks.Teeth;

namespace GearBlanks.Tests.Meshing;

/// <summary>Random pairs of gears that mesh with some backlash.</summary>
internal static class RandomPairs
{
    private static readonly Gen<BasicRack> Racks =
        Gen.Select(Gen.OneOf('A', 'B', 'C', 'D'), Gen.OneOf(14.5, 20.0, 20.0, 25.0)).Select((type, degrees) => TestRacks.Iso(type, degrees));

    /// <summary>Pairs of any legal gears of one rack, at a distance with backlash.</summary>
    public static Gen<ExternalPair> Any { get; } = Of(Gen.Int[6, 40], Gen.Int[6, 90], Gen.Double[0.01, 0.15], Gen.Double[-0.1, 0.1]);

    /// <summary>Pairs that run well: flanks always in touch, nothing else does.</summary>
    public static Gen<ExternalPair> Sound { get; } = Any.Where(pair =>
        pair.ContactRatio > 1.05 && pair.FirstFilletClearance is null or > 0.005 && pair.SecondFilletClearance is null or > 0.005
        && pair.FirstTipClearance > 0.01 && pair.SecondTipClearance > 0.01);

    /// <summary>Pairs whose second gear has tips of any length, so that some dig into the first gear's fillets.</summary>
    public static Gen<ExternalPair> LongTipped { get; } = Of(Gen.Int[7, 30], Gen.Int[10, 90], Gen.Double[0.002, 0.04], Gen.Double[0, 0.24])
        .Where(pair => pair.FirstTipClearance > 0.01 && pair.SecondTipClearance > 0.01
            && pair.FirstWorkingRadius > pair.First.FormRadius + (0.1 * pair.First.Module)
            && pair.SecondWorkingRadius > pair.Second.FormRadius + (0.1 * pair.First.Module));

    /// <summary>Many of them are said to dig in: what is said of all is then put to the test.</summary>
    public static Gen<ExternalPair> LongTippedOftenDigging { get; } = Gen.Select(LongTipped.Array[30], Gen.Bool)
        .Select((pairs, digging) => pairs.FirstOrDefault(pair => digging && pair.FirstFilletClearance < -0.001) ?? pairs[0]);

    private static Gen<ExternalPair> Of(Gen<int> z1, Gen<int> z2, Gen<double> apart, Gen<double> tip) => Gen.Select(
        Gen.Select(z1, z2, Gen.Double[0.4, 3], Racks),
        Gen.Select(Gen.Double[-0.4, 0.7], Gen.Double[-0.4, 0.7], Gen.Double[0, 0.08], Gen.Double[0, 0.08]),
        apart, tip).Select(TryPair)
        .Where(pair => pair is not null).Select(pair => pair!);

    private static ExternalPair? TryPair((int Z1, int Z2, double Module, BasicRack Rack) g, (double X1, double X2, double S1, double S2) s, double apart, double longer)
    {
        var second = new GearData(g.Z2, g.Module, g.Rack, s.X2, s.S2 * g.Module, g.Module * (g.Z2 + (2 * (g.Rack.Addendum + s.X2 + longer))));
        return RandomGears.TryCreate(new GearData(g.Z1, g.Module, g.Rack, s.X1, s.S1 * g.Module)) is { IsPointed: false } one
            && RandomGears.TryCreate(second) is { IsPointed: false } two
            && GearPair.ZeroBacklashDistance(one, two) is { } closed
            ? (ExternalPair)GearPair.At(one, two, closed + (apart * g.Module))
            : null;
    }
}
