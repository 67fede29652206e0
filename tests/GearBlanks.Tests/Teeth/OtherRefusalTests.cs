using System.Globalization;
using System.Text.RegularExpressions;
using CsCheck;
using GearBlanks.Teeth;

namespace GearBlanks.Tests.Teeth;

/// <summary>Rings, rack bars and tip forms that cannot exist are refused by name, with advice that works.</summary>
public sealed partial class OtherRefusalTests
{
    private static readonly BasicRack A = TestRacks.A;
    private static readonly GearData External = new(20, 2, A);
    private static readonly RingData Ring = new(60, 2, A, 140);
    private static readonly RackBarData Bar = new(2, A, 30, 8);

    public static TheoryData<string, ToothData> Cases() => new()
    {
        { "tip-inside-base", new RingData(33, 1, A, 50) },
        { "tip-inside-base", new RingData(60, 1, A, 80, null, 1.5) },
        { "tip-below-root", new RingData(60, 1, A, 80, null, 0, 0, 63) },
        { "rim-inside-root", new RingData(60, 1, A, 62.5) },
        { "rim-inside-root", new RingData(60, 1, A, 0) },
        { "no-root", new RingData(40, 1, A with { PressureAngle = TestRacks.Radians(30), Dedendum = 2 }, 60) },
        { "root-round-too-wide", new RingData(60, 1, A, 80, 1) },
        { "root-round-too-wide", new RingData(60, 1, A with { PressureAngle = TestRacks.Radians(28) }, 80) },
        { "no-flank", new RingData(60, 1, A, 80, 0.3, 0, 0, 62.3) },
        { "out-of-range", new RingData(60, 1, A, double.NaN) },
        { "out-of-range", new RingData(60, 1, A, 80, -0.1) },
        { "out-of-range", new RingData(60, 1, A, 80, 6) },
        { "rack-pointed", Bar with { Rack = A with { Dedendum = 2.5 } } },
        { "rack-round-too-wide", Bar with { Rack = TestRacks.Iso('A', 25) } },
        { "no-tooth", Bar with { Length = 6.28 } },
        { "no-tooth", Bar with { Length = 6284 } },
        { "no-back", Bar with { BackHeight = 2.5 } },
        { "no-back", Bar with { ProfileShift = -0.3, BackHeight = 3 } },
        { "no-flank", Bar with { TipHeight = -2.3 } },
        { "out-of-range", Bar with { Length = double.NaN } },
        { "out-of-range", Bar with { BackHeight = -1 } },
        { "out-of-range", Bar with { TipHeight = 11 } },
        { "tip-round-too-wide", External with { Tip = new TipForm(1.4) } },
        { "tip-round-too-wide", Ring with { Tip = new TipForm(2) } },
        { "tip-round-too-wide", Bar with { Tip = new TipForm(1.5) } },
        { "tip-round-too-wide", External with { Teeth = 8, ProfileShift = 0.8, Tip = new TipForm(0.1) } },
        { "chamfer-too-wide", External with { Tip = new TipForm(Chamfer: 2.2) } },
        { "chamfer-too-wide", Ring with { Tip = new TipForm(Chamfer: 1.5) } },
        { "chamfer-too-wide", Bar with { Tip = new TipForm(Chamfer: 1.5) } },
        { "chamfer-too-steep", External with { Rack = new BasicRack("steep", TestRacks.Radians(42), 0.8, 0.8, 0.1), Tip = new TipForm(Chamfer: 0.1) } },
        { "chamfer-too-steep", Bar with { Rack = new BasicRack("steep", TestRacks.Radians(45), 0.6, 0.6, 0.1), Tip = new TipForm(Chamfer: 0.1) } },
        { "relief-too-deep", External with { Tip = new TipForm(Relief: new TipRelief(0.8, 42)) } },
        { "relief-too-deep", Bar with { Tip = new TipForm(Relief: new TipRelief(0.9, 1)) } },
        { "relief-too-deep", External with { Tip = new TipForm(Relief: new TipRelief(0.3, 43.99)) } },
        { "relief-out-of-range", External with { Tip = new TipForm(Relief: new TipRelief(0.02, 37)) } },
        { "relief-out-of-range", External with { Tip = new TipForm(Relief: new TipRelief(0.02, 44)) } },
        { "relief-out-of-range", Ring with { Tip = new TipForm(Relief: new TipRelief(0.02, 125)) } },
        { "relief-out-of-range", Ring with { Tip = new TipForm(Relief: new TipRelief(0.02, 115)) } },
        { "relief-out-of-range", Bar with { Tip = new TipForm(Relief: new TipRelief(0.02, -2.3)) } },
        { "relief-out-of-range", Bar with { Tip = new TipForm(Relief: new TipRelief(0.02, 2.1)) } },
        { "relief-out-of-range", Bar with { Tip = new TipForm(0.5, 0, new TipRelief(0.02, 1.9)) } },
        { "relief-out-of-range", External with { Tip = new TipForm(0.3, 0, new TipRelief(0.02, 43.8)) } },
        { "tip-form-leaves-no-flank", External with { Tip = new TipForm(Chamfer: 4.4) } },
        { "tip-form-leaves-no-flank", External with { ProfileShift = 0.5, TipDiameter = 40, Tip = new TipForm(1) } },
        { "tip-form-leaves-no-flank", Bar with { Tip = new TipForm(Chamfer: 4.2) } },
        { "tip-form-leaves-no-flank", Ring with { TipDiameter = 123, Tip = new TipForm(Chamfer: 1) } },
        { "tip-round-and-chamfer", External with { Tip = new TipForm(0.1, 0.1) } },
        { "out-of-range", External with { Tip = new TipForm(-0.1) } },
        { "out-of-range", External with { Tip = new TipForm(Chamfer: double.NaN) } },
        { "out-of-range", External with { Tip = new TipForm(Relief: new TipRelief(1.1, 42)) } },
        { "out-of-range", External with { Tip = new TipForm(Relief: new TipRelief(0.1, double.PositiveInfinity)) } },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void Each_case_has_its_name_and_advice_that_works(string name, ToothData data)
    {
        var e = Assert.Throws<GearGeometryException>(() => Create(data));
        Assert.Equal(name, e.ShapeCase);
        Assert.True(double.IsFinite(e.Limit));
        Assert.NotNull(e.Remedy);
        Assert.True(name is "out-of-range" or "rack-pointed" or "chamfer-too-steep" or "tip-round-and-chamfer" || Follow(e, data) > 0, e.Message);
    }

    [Fact]
    public void Refusals_of_random_rings_give_advice_that_works() => RandomRings.Data.Sample(FollowIfRefused, iter: 1000);

    [Fact]
    public void Refusals_of_random_bars_give_advice_that_works() => RandomBars.Data.Sample(FollowIfRefused, iter: 1000);

    [Fact]
    public void Refusals_of_random_tips_give_advice_that_works() => RandomTips.Data.Sample(FollowIfRefused, iter: 1000);

    [Fact]
    public void Refusals_of_random_tips_of_bars_give_advice_that_works() => RandomBars.FormedData.Sample(FollowIfRefused, iter: 1000);

    [Fact]
    public void Legal_numbers_with_one_extreme_give_teeth_or_a_named_refusal()
    {
        Gen<double> extreme = Gen.OneOf(
            double.NaN, double.PositiveInfinity, double.NegativeInfinity, 0.0, -0.0, double.Epsilon, double.MaxValue, 1e-300, 1e-10, 0.05, 0.1, 0.5, 1.0, 1.5, 5.0, -1.0, 50.0);
        Gen<ToothData> any = Gen.OneOf(
            RandomRings.Legal.Select(ring => (ToothData)ring.Data), RandomBars.FormedData.Select(bar => (ToothData)bar), RandomTips.Data.Select(gear => (ToothData)gear));
        Gen.Select(any, extreme, Gen.Int[0, 11]).Select((data, v, which) => Spoilt(data, v, which)).Sample(
            data =>
            {
                try
                {
                    Toothing teeth = Create(data);
                    Assert.All(teeth.Outline().Pattern, curve => Assert.True(double.IsFinite(curve.Length) && double.IsFinite(curve.EndPoint.Radius)));
                    Assert.True(double.IsFinite(teeth.TipThickness) && teeth.TipThickness >= 0);
                }
                catch (GearGeometryException e)
                {
                    Assert.NotEmpty(e.ShapeCase);
                }
            },
            iter: 2000);
    }

    // A user's own rack at any angle: a gear, a ring and a bar, or a refusal whose number works.
    [Theory]
    [InlineData(14.5, 1, 1.157, 0.209, null)]
    [InlineData(17.5, 1, 1.25, 0.3, null)]
    [InlineData(22.5, 0.9, 1.15, 0.3, null)]
    [InlineData(25, 1, 1.25, 0.318, "rack-round-too-wide")]
    [InlineData(25, 1, 1.25, 0.317, null)]
    [InlineData(28, 1, 1.25, 0.25, "rack-round-too-wide")]
    [InlineData(30, 0.8, 1, 0.35, null)]
    [InlineData(30, 1, 1.25, 0.38, "rack-round-too-wide")]
    [InlineData(33.3, 0.7, 0.85, 0.4, null)]
    [InlineData(45, 0.5, 0.6, 0.4, null)]
    [InlineData(45, 0.5, 0.6, 0.5, "rack-round-too-wide")]
    [InlineData(5, 1, 1.25, 0.3, null)]
    public void Racks_at_any_angle(double degrees, double addendum, double dedendum, double round, string? refusal)
    {
        var rack = new BasicRack("own", TestRacks.Radians(degrees), addendum, dedendum, round);
        ToothData[] all = [new GearData(60, 1, rack), new RackBarData(1, rack, 20, 4)];
        foreach (ToothData data in all)
        {
            if (refusal is null)
            {
                _ = Create(data);
                continue;
            }

            var e = Assert.Throws<GearGeometryException>(() => Create(data));
            Assert.Equal(refusal, e.ShapeCase);
            Assert.Equal(1, Follow(e, data));
        }

        // A ring's round lies in a gap that is narrower than the rack's tooth by the ring's curvature: it has a limit of its own.
        var ring = new RingData(200, 1, rack, 220);
        Exception? ofRing = Record.Exception(() => Create(ring));
        Assert.True(ofRing is null or GearGeometryException { ShapeCase: "root-round-too-wide" or "tip-inside-base" });
        Assert.True(ofRing is not GearGeometryException e2 || Follow(e2, ring) > 0);
    }

    private static Toothing Create(ToothData data) => data is RackBarData bar ? RackBar.Create(bar) : Gear.Of((GearData)data);

    private static ToothData Spoilt(ToothData data, double v, int which)
    {
        TipForm tip = data.Tip ?? new TipForm();
        return which switch
        {
            0 => data with { Module = v },
            1 => data with { ProfileShift = v },
            2 => data with { Thinning = v },
            3 => data with { Rack = data.Rack with { PressureAngle = v } },
            4 => data with { Rack = data.Rack with { Dedendum = v } },
            5 => data with { Rack = data.Rack with { FilletRadius = v } },
            6 => data with { Tip = tip with { Round = v } },
            7 => data with { Tip = tip with { Chamfer = v } },
            8 => data with { Tip = tip with { Relief = new TipRelief(v, tip.Relief?.Start ?? 1) } },
            9 => data with { Tip = tip with { Relief = new TipRelief(0.01 * data.Module, v) } },
            10 => data switch { RingData ring => ring with { RimDiameter = v }, RackBarData bar => bar with { Length = v }, _ => data },
            _ => data switch { RingData ring => ring with { RootFilletRadius = v }, RackBarData bar => bar with { BackHeight = v }, _ => data },
        };
    }

    private static void FollowIfRefused(ToothData data)
    {
        try
        {
            _ = Create(data);
        }
        catch (GearGeometryException e)
        {
            _ = Follow(e, data);
        }
    }

    // Follows each number of the advice; how many there were. What remains may be another thing that was wrong from the start, under another name.
    private static int Follow(GearGeometryException e, ToothData data)
    {
        int followed = 0;
        foreach ((Regex words, Func<double, ToothData> with) in Ways(data))
        {
            if (words.Match(e.Message) is { Success: true } match)
            {
                followed++;
                ToothData changed = with(double.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture));
                var left = Record.Exception(() => Create(changed)) as GearGeometryException;
                Assert.True(left is null || (left.ShapeCase != e.ShapeCase && left.ShapeCase is "rim-inside-root" or "no-tooth" or "no-back" || e.ShapeCase is "rack-round-too-wide"), $"{e.Message} -> {left?.Message}");
                Assert.NotEqual(e.ShapeCase, left?.ShapeCase);
            }
        }

        return followed;
    }

    private static IEnumerable<(Regex Words, Func<double, ToothData> With)> Ways(ToothData data)
    {
        TipForm tip = data.Tip ?? new TipForm();
        yield return (ShiftWords(), v => data with { ProfileShift = v });
        yield return (DedendumWords(), v => data with { Rack = data.Rack with { Dedendum = v } });
        yield return (RackFilletWords(), v => data with { Rack = data.Rack with { FilletRadius = v } });
        yield return (TipRoundWords(), v => data with { Tip = tip with { Round = v } });
        yield return (ChamferWords(), v => data with { Tip = tip with { Chamfer = v } });
        yield return (ReliefWords(), v => data with { Tip = tip with { Relief = tip.Relief! with { Amount = v } } });
        yield return (ReliefStartWords(), v => data with { Tip = tip with { Relief = tip.Relief! with { Start = v } } });
        if (data is GearData gear)
        {
            yield return (TipDiameterWords(), v => gear with { TipDiameter = v });
        }

        if (data is RingData ring)
        {
            yield return (RimWords(), v => ring with { RimDiameter = v });
            yield return (RootFilletWords(), v => ring with { RootFilletRadius = v });
        }

        if (data is RackBarData bar)
        {
            yield return (TipHeightWords(), v => bar with { TipHeight = v });
            yield return (BackWords(), v => bar with { BackHeight = v });
            yield return (LengthWords(), v => bar with { Length = v });
            yield return (GreatestLengthWords(), v => bar with { Length = v });
        }
    }

    [GeneratedRegex(@"profile shift that works is ([-+]?[0-9.]+[0-9])")]
    private static partial Regex ShiftWords();

    [GeneratedRegex(@"dedendum of at most ([0-9.]+) modules")]
    private static partial Regex DedendumWords();

    [GeneratedRegex(@"fillet radius of at most ([0-9.]+) modules")]
    private static partial Regex RackFilletWords();

    [GeneratedRegex(@"tip round radius of at most ([0-9.]+) mm")]
    private static partial Regex TipRoundWords();

    [GeneratedRegex(@"tip chamfer of at most ([0-9.]+) mm")]
    private static partial Regex ChamferWords();

    [GeneratedRegex(@"tip relief of at most ([0-9.]+) mm")]
    private static partial Regex ReliefWords();

    [GeneratedRegex(@"start the relief at a (?:diameter|height) of ([-0-9.]+) mm")]
    private static partial Regex ReliefStartWords();

    [GeneratedRegex(@"tip diameter of at (?:least|most) ([0-9.]+) mm")]
    private static partial Regex TipDiameterWords();

    [GeneratedRegex(@"rim diameter of at least ([0-9.]+) mm")]
    private static partial Regex RimWords();

    [GeneratedRegex(@"root fillet radius of (?:at most )?([0-9.]+) mm")]
    private static partial Regex RootFilletWords();

    [GeneratedRegex(@"tip height of at (?:least|most) ([-0-9.]+) mm")]
    private static partial Regex TipHeightWords();

    [GeneratedRegex(@"distance of at least ([-0-9.]+) mm")]
    private static partial Regex BackWords();

    [GeneratedRegex(@"a length from ([0-9.]+) to")]
    private static partial Regex LengthWords();

    [GeneratedRegex(@"a length from [0-9.]+ to ([0-9.]+) mm")]
    private static partial Regex GreatestLengthWords();
}
