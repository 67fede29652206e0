using GearBlanks.Findings;
using GearBlanks.Teeth;

namespace GearBlanks.Tests.Teeth;

/// <summary>What a refusal tells is what was asked for and what stood against it, as sizes of the teeth; the advice, followed, is enough.</summary>
public sealed class RefusalFigureTests
{
    private static readonly GearData Gear = new(30, 2, TestRacks.A);
    private static readonly RingData Ring = new(60, 2, TestRacks.A, 150);
    private static readonly RackBarData Bar = new(2, TestRacks.A, 30, 8);

    private static readonly ExternalGear Made = ExternalGear.Create(Gear);
    private static readonly RingGear MadeRing = RingGear.Create(Ring with { TipDiameter = 117 });

    [Fact]
    public void Tips_of_external_gears()
    {
        Told("tip-below-root", Gear with { TipDiameter = 54 }, 54, 2 * Made.RootRadius);
        Told("no-flank", Gear with { TipDiameter = 56 }, 2 * Made.FormRadius, 56);
        Told("relief-out-of-range", Gear with { Tip = new TipForm(Relief: new TipRelief(0.05, 55.5)) }, 55.5, 2 * Made.FormRadius);
        Told("relief-out-of-range", Gear with { Tip = new TipForm(Relief: new TipRelief(0.05, 65)) }, 65, 64);
        Assert.Contains("below the flank", Refused(Gear with { Tip = new TipForm(Relief: new TipRelief(0.05, 55.5)) }).What, StringComparison.Ordinal);
        Assert.Contains("beyond the end", Refused(Gear with { Tip = new TipForm(Relief: new TipRelief(0.05, 65)) }).What, StringComparison.Ordinal);
        Told("tip-round-too-wide", Gear with { Tip = new TipForm(1.6) }, 1.6, null);
        Told("chamfer-too-wide", Gear with { Tip = new TipForm(Chamfer: 2) }, 2, null);
        Told("relief-too-deep", Gear with { Tip = new TipForm(Relief: new TipRelief(0.99, 63)) }, 0.99, null);

        // What is taken off a short tip reaches the fillet.
        GearGeometryException refused = Refused(Gear with { TipDiameter = 57.6, Tip = new TipForm(0.5) });
        Assert.Equal("tip-form-leaves-no-flank", refused.ShapeCase);
        Assert.Equal(2 * Made.FormRadius, refused.Limit, 1e-9);
        Assert.InRange(refused.Value, 2 * Made.RootRadius, refused.Limit);
    }

    [Fact]
    public void Tips_of_rings()
    {
        Told("tip-inside-base", Ring with { TipDiameter = 112 }, 112, 120 * Math.Cos(TestRacks.A.PressureAngle));
        Told("tip-below-root", Ring with { TipDiameter = 126 }, 126, 2 * MadeRing.RootRadius);
        Told("no-flank", Ring with { TipDiameter = 124.4 }, 2 * MadeRing.FormRadius, 124.4);
        Told("relief-out-of-range", Ring with { TipDiameter = 117, Tip = new TipForm(Relief: new TipRelief(0.05, 116)) }, 116, 117);
        Told("relief-out-of-range", Ring with { TipDiameter = 117, Tip = new TipForm(Relief: new TipRelief(0.05, 124.6)) }, 124.6, 2 * MadeRing.FormRadius);
        Told("rim-inside-root", Ring with { TipDiameter = 117, RimDiameter = 120 }, 120, 2 * MadeRing.RootRadius);
    }

    /// <summary>The limits that are found with the advice: at them teeth exist, a little beyond they do not.</summary>
    [Fact]
    public void Limits_of_tip_forms_are_the_greatest_that_work()
    {
        Greatest(size => Gear with { Tip = new TipForm(size) }, 1.6);
        Greatest(size => Gear with { Tip = new TipForm(Chamfer: size) }, 2);
        Greatest(size => Gear with { Tip = new TipForm(Relief: new TipRelief(size, 63)) }, 0.99);
        Greatest(size => Bar with { Tip = new TipForm(size) }, 1.9);
        Greatest(size => Bar with { Tip = new TipForm(Chamfer: size) }, 2.4);
        Greatest(size => Ring with { TipDiameter = 117, Tip = new TipForm(size) }, 2.4);

        static void Greatest(Func<double, ToothData> with, double tooMuch)
        {
            GearGeometryException refused = Refused(with(tooMuch));
            Assert.InRange(refused.Limit, 0.01, tooMuch);
            Assert.Equal(refused.Limit, Advice.NumbersIn(refused.Remedy!)[^1], 1e-9);
            Toothing.Of(with(refused.Limit));
            Refused(with(refused.Limit + 0.0011));
        }
    }

    [Fact]
    public void Advice_on_ring_tips_and_fillets_is_enough()
    {
        foreach (RingData bad in (RingData[])[Ring with { TipDiameter = 112 }, Ring with { TipDiameter = 124.4 }, Ring with { TipDiameter = 126 }])
        {
            string remedy = Refused(bad).Remedy!;
            double tip = Advice.Number(remedy, $"use a tip diameter of {(remedy.Contains("at least", StringComparison.Ordinal) ? "at least" : "at most")} # mm");
            RingGear.Create(bad with { TipDiameter = tip });
            double sense = Math.Sign(tip - bad.TipDiameter!.Value);
            Refused(bad with { TipDiameter = tip - (sense * 0.0011) });
        }

        RingData wide = Ring with { TipDiameter = 117, RootFilletRadius = 2.2 };
        double round = Advice.Number(Refused(wide).Remedy, "use a root fillet radius of at most # mm");
        RingGear.Create(wide with { RootFilletRadius = round });
        Refused(wide with { RootFilletRadius = round + 0.0011 });
    }

    /// <summary>ISO 21771:2007, clause 5, for a rounded rack: x = h - z sin^2(alpha) / 2 with h = hfP - rho (1 - sin alpha); from memory; worked out here by hand.</summary>
    [Theory]
    [InlineData(10, 1, 0, 0)]
    [InlineData(14, 2, 0.1, 0)]
    [InlineData(8, 2, 0, 0.05)]
    public void The_least_shift_without_undercut_is_the_formula(int teeth, double module, double thinning, double allowance)
    {
        BasicRack rack = TestRacks.A with { DedendumAllowance = allowance };
        var data = new GearData(teeth, module, rack, 0, thinning);
        double sine = Math.Sin(TestRacks.Radians(20));
        double forGenerating = 1.25 + (allowance / module) - (0.38 * (1 - sine)) - (teeth * sine * sine / 2);
        double least = ToothCheck.LeastShiftWithoutUndercut(data);
        Assert.Equal(forGenerating + (thinning / (2 * module * Math.Tan(TestRacks.Radians(20)))), least, 1e-12);
        Assert.Null(ExternalGear.Create(data with { ProfileShift = least + 1e-6 }).Undercut);
        Assert.NotNull(ExternalGear.Create(data with { ProfileShift = least - 1e-3 }).Undercut);

        // The advice, on the grid of hundredths, is the first that is enough.
        Finding finding = ToothCheck.Of(ExternalGear.Create(data with { ProfileShift = 0.01 }), "gear", TestLimits.Common).Single(one => one.Name == "undercut-depth");
        double to = Advice.Number(finding.Advice, " to #,");
        Assert.InRange(to, least, least + 0.01);
        Assert.InRange(0.01 + Advice.Number(finding.Advice, "Raise the profile shift by #"), least, least + 0.0101);
    }

    [Fact]
    public void Undercut_that_no_shift_avoids_asks_for_more_teeth()
    {
        var deep = new BasicRack("deep", TestRacks.Radians(14.5), 1, 1.9, 0);
        ExternalGear gear = ExternalGear.Create(new GearData(8, 1, deep, 0.9, TipDiameter: 11));
        Finding finding = ToothCheck.Of(gear, "gear", TestLimits.Common).Single(one => one.Name == "undercut-depth");
        Assert.StartsWith("No profile shift in the range avoids it", finding.Advice, StringComparison.Ordinal);
    }

    [Fact]
    public void A_pointed_tip_tells_where_the_flanks_meet_and_what_was_asked_for()
    {
        Finding gear = Pointed(new GearData(8, 2, TestRacks.A, 0.8));
        Assert.Equal(2 * (8 + 2 + 1.6), gear.Figure, 1e-9);
        ExternalGear made = ExternalGear.Create(new GearData(8, 2, TestRacks.A, 0.8));
        Assert.Equal(2 * made.TipRadius, gear.Limit!.Value, 1e-12);
        Assert.Equal(0, made.HalfAngleAt(made.TipRadius), 1e-9);

        Finding bar = Pointed(Bar with { TipHeight = 4.5 });
        Assert.Equal((4.5, Math.PI / 2 / Math.Tan(TestRacks.Radians(20))), (bar.Figure, Math.Round(bar.Limit!.Value, 12)), (a, b) => Math.Abs(a.Item1 - b.Item1) < 1e-9 && Math.Abs(a.Item2 - b.Item2) < 1e-9);

        RingData pointed = Ring with { Rack = TestRacks.A with { Dedendum = 0.8, FilletRadius = 0.2 }, Thinning = 2.2, TipDiameter = 113 };
        Finding ring = Pointed(pointed);
        Assert.Equal(113, ring.Figure, 1e-9);
        Assert.Equal(2 * RingGear.Create(pointed).TipRadius, ring.Limit!.Value, 1e-12);

        static Finding Pointed(ToothData data) => ToothCheck.Of(Toothing.Of(data), "gear", TestLimits.Common).Single(one => one.Name == "pointed-tip");
    }

    private static void Told(string name, ToothData data, double value, double? limit)
    {
        GearGeometryException refused = Refused(data);
        Assert.Equal(name, refused.ShapeCase);
        Assert.Equal(value, refused.Value, 1e-9);
        if (limit is { } bound)
        {
            Assert.Equal(bound, refused.Limit, 1e-9);
        }
    }

    private static GearGeometryException Refused(ToothData data) => Assert.Throws<GearGeometryException>(() => Toothing.Of(data));
}
