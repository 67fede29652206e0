using CsCheck;
using GearBlanks.Teeth;

namespace GearBlanks.Tests.Teeth;

/// <summary>Random rack bars over the whole ranges, with tip forms on a part of them.</summary>
internal static class RandomBars
{
    public static Gen<RackBarData> Data { get; } = Gen.Select(
        Gen.Double[Math.Log(0.05), Math.Log(50)].Select(log => Math.Clamp(Math.Exp(log), 0.05, 50)),
        RandomGears.Racks,
        Gen.OneOf(Gen.Double[0.7, 30], Gen.Int[1, 20].Select(n => (double)n)),
        Gen.Double[0.5, 6],
        Gen.Double[-1, 1.5],
        Gen.OneOf(Gen.Const(0.0), Gen.Double[0, 0.2]),
        Gen.OneOf(Gen.Const(double.NaN), Gen.Double[-1.5, 1.5]))
        .Select((module, rack, pitches, back, shift, thinning, tip) => new RackBarData(
            module, rack, pitches * Math.PI * module, back * module, shift, thinning * module, double.IsNaN(tip) ? null : tip * module));

    public static Gen<RackBar> Legal { get; } = Data.Select(TryCreate).Where(bar => bar is not null).Select(bar => bar!);

    public static Gen<RackBarData> FormedData { get; } = Legal.SelectMany(
        bar => RandomTips.Forms(bar.Module, bar.FormHeight, bar.TipHeight).Select(form => bar.Data with { Tip = form }));

    public static Gen<RackBar> Formed { get; } = FormedData.Select(TryCreate).Where(bar => bar is not null).Select(bar => bar!);

    private static RackBar? TryCreate(RackBarData data)
    {
        try
        {
            return RackBar.Create(data);
        }
        catch (GearGeometryException)
        {
            return null;
        }
    }
}
