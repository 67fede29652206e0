using CsCheck;
using GearBlanks.Teeth;

namespace GearBlanks.Tests.Properties;

/// <summary>Whatever the numbers are, a gear or a refusal by a known name comes of them: no other exception, and no gear of numbers that are none.</summary>
public sealed class IllegalGearTests
{
    private static readonly string[] Names =
        ["no-flank", "no-root", "no-tooth", "out-of-range", "rack-pointed", "rack-round-too-wide", "severed", "tip-below-root"];

    // Every bound of GearRanges, its neighbours, and what no length can be.
    private static readonly double[] Extremes =
    [
        double.NaN, double.PositiveInfinity, double.NegativeInfinity, 0.0, -0.0, double.Epsilon, double.MaxValue, -double.MaxValue, 1e308, 1e-308, 1e-300,
        0.05, 50.0, -1.0, 1.5, 0.5, 1.0, 1.25, 0.1, 5.0, Math.PI / 4, Math.PI / 2, 5 * Math.PI / 180, Math.BitDecrement(0.05), Math.BitIncrement(50),
    ];

    [Fact]
    public void Any_numbers_at_all_give_a_gear_or_a_named_refusal()
    {
        Gen<double> any = Gen.OneOf(
            Gen.Double,
            Gen.Double[-2, 2],
            Gen.Double[0, 50],
            Gen.OneOf(Extremes));
        Gen<int> teeth = Gen.OneOf(Gen.Int, Gen.Int[-5, 1005], Gen.Int[4, 30], Gen.OneOf(0, 4, 1000, int.MinValue, int.MaxValue));
        Gen<double?> tip = Gen.OneOf(any.Select(_ => (double?)null), any.Select(d => (double?)d));
        Gen.Select(teeth, any, Gen.Select(any, any, any, any, any), any, any, tip).Select((z, m, rack, x, s, da) => new GearData(
                z, m, new BasicRack("any", rack.Item1, rack.Item2, rack.Item3, rack.Item4, rack.Item5), x, s, da))
            .Sample(MustAnswer, iter: Count.Gears);
    }

    // One or two legal values spoilt: reaches deeper than all at random.
    [Fact]
    public void Legal_numbers_with_one_extreme_give_a_gear_or_a_named_refusal()
    {
        Gen.Select(RandomGears.Data, Gen.OneOf(Extremes), Gen.Int[0, 8]).Select((d, v, which) => which switch
        {
            0 => d with { Module = v },
            1 => d with { ProfileShift = v },
            2 => d with { Thinning = v },
            3 => d with { TipDiameter = v },
            4 => d with { Rack = d.Rack with { PressureAngle = v } },
            5 => d with { Rack = d.Rack with { Addendum = v } },
            6 => d with { Rack = d.Rack with { Dedendum = v } },
            7 => d with { Rack = d.Rack with { FilletRadius = v } },
            _ => d with { Rack = d.Rack with { DedendumAllowance = v } },
        }).Sample(MustAnswer, iter: Count.Gears);
    }

    private static void MustAnswer(GearData data)
    {
        try
        {
            var gear = ExternalGear.Create(data);
            Assert.All(gear.Outline().Pattern, curve => Assert.True(double.IsFinite(curve.Length) && double.IsFinite(curve.EndPoint.Radius)));
            Assert.True(double.IsFinite(gear.NeckThickness + gear.TipThickness + gear.FormRadius));
        }
        catch (GearGeometryException e)
        {
            Assert.Contains(e.ShapeCase, Names);
            Assert.NotEmpty(e.What);
        }
    }
}
