using CsCheck;
using GearBlanks.Teeth;

namespace GearBlanks.Tests.Teeth;

/// <summary>Random tip forms for gears that exist without one: rounds or chamfers with and without relief, some of them too large.</summary>
internal static class RandomTips
{
    /// <summary>External gears and rings whose tip has a form.</summary>
    public static Gen<Gear> Gears { get; } = Data.Select(TryCreate).Where(gear => gear is not null).Select(gear => gear!);

    public static Gen<GearData> Data => Gen.OneOf(
        RandomGears.Legal.Select(gear => (Gear)gear), RandomRings.Legal.Select(ring => (Gear)ring))
        .SelectMany(gear => Forms(gear.Module, 2 * gear.FormRadius, 2 * gear.TipRadius).Select(form => gear.Data with { Tip = form }));

    /// <summary>Forms for a flank between two diameters, or heights.</summary>
    public static Gen<TipForm> Forms(double module, double from, double to) =>
        Gen.Select(Gen.Int[0, 2], Gen.Double[0, 0.4], Gen.OneOf(Gen.Const(0.0), Gen.Double[0, 0.06]), Gen.Double[-0.1, 1.1])
            .Select((kind, size, amount, start) => new TipForm(
                kind == 1 ? size * module : 0, kind == 2 ? size * module : 0,
                amount == 0 ? null : new TipRelief(amount * module, from + (start * (to - from)))));

    private static Gear? TryCreate(GearData data)
    {
        try
        {
            return (Gear)Toothing.Of(data);
        }
        catch (GearGeometryException)
        {
            return null;
        }
    }
}
