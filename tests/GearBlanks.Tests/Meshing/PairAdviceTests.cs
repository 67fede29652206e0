using GearBlanks.Findings;
using GearBlanks.Meshing;
using GearBlanks.Teeth;

namespace GearBlanks.Tests.Meshing;

/// <summary>Findings on pinions in rings and gears over racks: their levels, and their advice followed.</summary>
public sealed class PairAdviceTests
{
    private const double Wanted = 0.04;
    private static readonly GearData Gear = new(20, 1, TestRacks.A);
    private static readonly GearData Pinion = new(30, 1, TestRacks.A);
    private static readonly RingData Standard = new(60, 1, TestRacks.A, 80);

    // A standard ring's tips reach 0.006 mm into the fillets of the pinion.
    private static readonly RingData Ring = Standard with { TipDiameter = 58.4 };
    private static readonly RackBarData Bar = new(1, TestRacks.A, 20, 5);

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_good_pair_is_ok_throughout(bool withRack)
    {
        GearPair pair = withRack ? GearPair.At(ExternalGear.Create(Gear), RackBar.Create(Bar), 10.05) : InRing(14.95);
        Finding[] findings = Of(pair);
        Assert.All(findings, finding => Assert.Equal((Level.Ok, null), (finding.Level, finding.Advice)));
        string[] always = ["backlash", "contact-ratio", "fillet-clearance", "tip-clearance"];
        Assert.Equal(
            withRack ? always : [.. always, "involute-interference", "trimming-interference", "trochoid-interference"],
            findings.Select(finding => finding.Name).Distinct().OrderBy(name => name.EndsWith("interference", StringComparison.Ordinal)).ThenBy(name => name));
    }

    [Theory]
    [InlineData(15.1, Level.Fails, "close")]
    [InlineData(14.99, Level.Tight, "close")]
    [InlineData(14.8, Level.Tight, "open")]
    [InlineData(14.4, Level.Fails, "open")]
    public void Backlash_in_a_ring(double distance, Level level, string word)
    {
        GearPair pair = InRing(distance);
        Finding finding = Find(pair, "backlash", level);
        Assert.Equal(pair.CircumferentialBacklash, finding.Figure);
        double by = Advice.Number(finding.Advice, $"For 0.04 mm of backlash {word} the centre distance by # mm");
        Assert.Equal(Wanted, InRing(distance + (word == "open" ? by : -by)).CircumferentialBacklash, 0.001);
        double shift = Advice.Number(finding.Advice, "shift a by #");
        Assert.Equal(Wanted, InRing(distance, Pinion with { ProfileShift = shift }).CircumferentialBacklash, 0.001);

        Finding ringFirst = Find(GearPair.At(pair.Second, pair.First, distance), "backlash", level);
        Assert.Equal(shift, Advice.Number(ringFirst.Advice, "shift a by #"));
        Assert.Equal(Wanted, InRing(distance, null, Ring with { ProfileShift = shift }).CircumferentialBacklash, 0.001);
    }

    [Theory]
    [InlineData(9.9, Level.Fails, "raise")]
    [InlineData(10.01, Level.Tight, "raise")]
    [InlineData(10.2, Level.Tight, "lower")]
    [InlineData(10.6, Level.Fails, "lower")]
    public void Backlash_over_a_rack(double height, Level level, string word)
    {
        Finding finding = Find(OverRack(height), "backlash", level);
        double by = Advice.Number(finding.Advice, $"For 0.04 mm of backlash {word} the gear by # mm");
        Assert.Equal(Wanted, OverRack(height + (word == "raise" ? by : -by)).CircumferentialBacklash, 0.001);
        double shift = Advice.Number(finding.Advice, "shift a by #");
        Assert.Equal(Wanted, OverRack(height, Gear with { ProfileShift = shift }).CircumferentialBacklash, 0.001);
        Finding rackFirst = Find(GearPair.At(RackBar.Create(Bar), ExternalGear.Create(Gear), height), "backlash", level);
        Assert.Equal(shift, Advice.Number(rackFirst.Advice, "shift a by #"));
    }

    [Fact]
    public void Backlash_of_no_distance()
    {
        var gear = new GearData(40, 1, TestRacks.A, 0.5);
        var ring = new RingData(44, 1, TestRacks.A, 60, null, 0.1, 0, 42);
        Finding finding = Find(InRing(2.2, gear, ring), "backlash", Level.Fails);
        double shift = Advice.Number(finding.Advice, "No distance gives 0.04 mm of backlash: shift a by #");
        Assert.Equal(Wanted, InRing(2.2, gear with { ProfileShift = 0.5 + shift }, ring).CircumferentialBacklash, 0.002);
        Assert.Contains("Thin the teeth more, or", Find(InRing(2.2, gear with { TipDiameter = 40.2 }, ring), "contact-ratio", Level.Fails).Advice, StringComparison.Ordinal);

        // More than the ring has at any distance.
        Assert.StartsWith(
            "No distance gives 1 mm of backlash: shift a by -",
            Find(InRing(14.4), "backlash", 1, TestLimits.Common with { Backlash = TestLimits.Between(0, 0.9, 1.1, 2) }).Advice, StringComparison.Ordinal);
        Assert.StartsWith(
            "No distance gives 9 mm of backlash: thin the teeth more. No single change ",
            Find(InRing(14.4), "backlash", 9, TestLimits.Common with { Backlash = TestLimits.Between(0, 8, 10, 20) }).Advice, StringComparison.Ordinal);
    }

    [Fact]
    public void Backlash_that_no_distance_closes()
    {
        ExternalGear thin = ExternalGear.Create(new GearData(40, 1, TestRacks.A with { Dedendum = 1.1 }, -0.9, 0.5, 39.4));
        var pair = GearPair.At(thin, thin, 39);
        Assert.Null(pair.RadialBacklash);
        Assert.StartsWith("No distance gives 0.04 mm of backlash: shift a by +", Find(pair, "backlash", Level.Fails).Advice, StringComparison.Ordinal);
        Assert.StartsWith("Thin the teeth less, or use more teeth", Find(pair, "contact-ratio", Level.Fails).Advice, StringComparison.Ordinal);
        Assert.StartsWith("No distance gives 0.04 mm of backlash: thin the teeth less.", Find(GearPair.At(thin, thin, 43), "backlash", Level.Fails).Advice, StringComparison.Ordinal);
    }

    [Fact]
    public void Contact_ratio_of_a_ring_too_near()
    {
        Finding finding = Find(InRing(14.15), "contact-ratio", Level.Tight, Level.Fails);
        double by = Advice.Number(finding.Advice, "Open the centre distance by # mm");
        Finding after = Find(InRing(14.15 + by), "contact-ratio", Level.Ok);
        Assert.Equal(after.Figure, Advice.Number(finding.Advice, "the contact ratio becomes #"), 0.001);
    }

    [Fact]
    public void Contact_ratio_of_a_gear_too_high_over_a_rack()
    {
        Finding finding = Find(OverRack(10.9), "contact-ratio", Level.Tight, Level.Fails);
        double by = Advice.Number(finding.Advice, "Lower the gear by # mm");
        Finding after = Find(OverRack(10.9 - by), "contact-ratio", Level.Ok);
        Assert.Equal(after.Figure, Advice.Number(finding.Advice, "the contact ratio becomes #"), 0.001);
    }

    [Fact]
    public void Contact_ratio_of_tips_too_short()
    {
        Finding finding = Find(InRing(14.95, Pinion with { TipDiameter = 30.6 }, Ring with { TipDiameter = 59.5 }), "contact-ratio", Level.Fails);
        Assert.StartsWith("At the distance for 0.04 mm of backlash it is ", finding.Advice, StringComparison.Ordinal);
        Assert.Contains("longer tips", finding.Advice, StringComparison.Ordinal);
    }

    [Fact]
    public void Tip_clearance()
    {
        Finding finding = Find(InRing(14.95, null, Ring with { TipDiameter = 57.5 }), "tip-clearance", Level.Tight);
        double by = Advice.Number(finding.Advice, "Raise the tip diameter of b by # mm.");
        Gone(InRing(14.95, null, Ring with { TipDiameter = 57.5 + by }), "tip-clearance");

        finding = Find(InRing(14.95, Pinion with { TipDiameter = 32.6 }), "tip-clearance", Level.Tight);
        by = Advice.Number(finding.Advice, "Lower the tip diameter of a by # mm.");
        Gone(InRing(14.95, Pinion with { TipDiameter = 32.6 - by }), "tip-clearance");

        finding = Find(OverRack(10.05, null, Bar with { TipHeight = 1.35 }), "tip-clearance", Level.Fails);
        by = Advice.Number(finding.Advice, "Lower the tip height of b by # mm.");
        Gone(OverRack(10.05, null, Bar with { TipHeight = 1.35 - by }), "tip-clearance");

        finding = Find(OverRack(10.05, Gear with { TipDiameter = 22.8 }), "tip-clearance", Level.Fails);
        by = Advice.Number(finding.Advice, "Lower the tip diameter of a by # mm.");
        Gone(OverRack(10.05, Gear with { TipDiameter = 22.8 - by }), "tip-clearance");
    }

    [Fact]
    public void Fillet_clearance()
    {
        // The ring's corner at the pinion's fillet.
        Finding finding = Find(InRing(14.95, null, Ring with { TipDiameter = 57.3 }), "fillet-clearance", Level.Fails);
        Assert.Equal("Room between the tip corner of b and the fillet of a", finding.Message[..finding.Message.IndexOf(" is ", StringComparison.Ordinal)]);
        double tip = Advice.Number(finding.Advice, "Raise the tip diameter of b to # mm, or raise the profile shift of a.");
        Assert.InRange(tip, 57.3, 58.2);
        Gone(InRing(14.95, null, Ring with { TipDiameter = tip }), "fillet-clearance");

        // The pinion's at the ring's round.
        RingData rounded = Ring with { RootFilletRadius = 0.4 };
        finding = Find(InRing(14.95, Pinion with { TipDiameter = 32.4 }, rounded), "fillet-clearance", Level.Fails);
        tip = Advice.Number(finding.Advice, "Lower the tip diameter of a to # mm, or lower the profile shift of b.");
        Assert.InRange(tip, 31.5, 32.4);
        Gone(InRing(14.95, Pinion with { TipDiameter = tip }, rounded), "fillet-clearance");

        // The rack's at the gear's fillet, and the gear's at the rack's.
        finding = Find(OverRack(10.05, null, Bar with { TipHeight = 1.25 }), "fillet-clearance", Level.Fails);
        tip = Advice.Number(finding.Advice, "Lower the tip height of b to # mm, or raise the profile shift of a.");
        Assert.InRange(tip, 0.9, 1.25);
        Gone(OverRack(10.05, null, Bar with { TipHeight = tip }), "fillet-clearance");
        finding = Find(OverRack(10.05, Gear with { TipDiameter = 22.7 }), "fillet-clearance", Level.Fails);
        tip = Advice.Number(finding.Advice, "Lower the tip diameter of a to # mm, or lower the profile shift of b.");
        Assert.InRange(tip, 21.8, 22.7);
        Gone(OverRack(10.05, Gear with { TipDiameter = tip }), "fillet-clearance");
    }

    [Fact]
    public void Fillet_clearance_that_no_tip_gives()
    {
        Limits never = TestLimits.Common with { FilletClearance = TestLimits.Between(50, null, null, null) };
        RingData rounded = Ring with { RootFilletRadius = 0.4, TipDiameter = 57.3 };
        GearData longer = Gear with { TipDiameter = 22.4 };
        Assert.Equal(
            ["Raise the profile shift of a, or close the centre distance.", "Lower the profile shift of b, or close the centre distance."],
            Fillets(InRing(14.95, Pinion with { TipDiameter = 32.4 }, rounded)));
        Assert.Equal(
            ["Raise the profile shift of a, or raise the gear.", "Lower the profile shift of b, or raise the gear."],
            Fillets(OverRack(10.05, longer, Bar with { TipHeight = 1.2 })));
        ExternalGear gear = ExternalGear.Create(longer);
        Assert.Equal(
            ["Raise the profile shift of a, or open the centre distance.", "Raise the profile shift of b, or open the centre distance."],
            Fillets(GearPair.At(gear, gear, 20.05)));

        string?[] Fillets(GearPair pair) => [.. Of(pair, Wanted, never).Where(finding => finding.Name == "fillet-clearance").Select(finding => finding.Advice!.Split(" No single change ")[0].Split(" Least that mends ")[0])];
    }

    [Fact]
    public void Involute_interference()
    {
        RingPair pair = InRing(9.95, Pinion with { Teeth = 15 }, Standard with { Teeth = 35 });
        Finding finding = Find(pair, "involute-interference", Level.Fails);
        Assert.Equal(pair.InvoluteClearance, finding.Figure);
        Assert.Contains("from the base circle of a to the first contact with b", finding.Message, StringComparison.Ordinal);
        double tip = Advice.Number(finding.Advice, "Raise the tip diameter of b to # mm, or use more teeth or a greater profile shift for a.");
        Assert.InRange(tip, 33, 35);
        Gone(InRing(9.95, Pinion with { Teeth = 15 }, Standard with { Teeth = 35, TipDiameter = tip }), "involute-interference");
        Gone(InRing(9.95, Pinion with { Teeth = 15 }, Standard with { Teeth = 35, TipDiameter = tip }), "fillet-clearance");
        finding = Find(GearPair.At(pair.Second, pair.First, 9.95), "involute-interference", Level.Fails);
        Assert.Contains("tip diameter of a to", finding.Advice, StringComparison.Ordinal);
        Assert.Contains("profile shift for b", finding.Advice, StringComparison.Ordinal);
    }

    [Fact]
    public void Involute_interference_that_an_undercut_lets_pass_is_tight()
    {
        // A deep, sharp rack undercuts the pinion by more than the ring's tip takes up.
        var deep = new BasicRack("deep", TestRacks.Radians(20), 1, 1.4, 0);
        RingPair pair = InRing(14.95, new GearData(10, 1, deep), new RingData(40, 1, deep, 60));
        Assert.True(pair.InvoluteClearance < 0);
        Assert.NotNull(pair.Pinion.Undercut);
        Assert.True(pair.FirstFilletClearance >= 0);
        Find(pair, "involute-interference", Level.Tight);
        Find(GearPair.At(pair.Second, pair.First, 14.95), "involute-interference", Level.Tight);
    }

    [Fact]
    public void Trochoid_interference()
    {
        RingPair pair = InRing(2.95, Pinion with { Teeth = 40 }, Standard with { Teeth = 46 });
        Finding finding = Find(pair, "trochoid-interference", Level.Fails);
        Assert.Equal(pair.TrochoidClearance, finding.Figure);
        double ring = Advice.Number(finding.Advice, "Raise the tip diameter of b to # mm, or lower the tip diameter of a");
        Gone(InRing(2.95, Pinion with { Teeth = 40 }, Standard with { Teeth = 46, TipDiameter = ring }), "trochoid-interference");
        double pinion = Advice.Number(finding.Advice, "lower the tip diameter of a to # mm, or use a ring with more teeth, or fewer teeth for a.");
        Gone(InRing(2.95, Pinion with { Teeth = 40, TipDiameter = pinion }, Standard with { Teeth = 46 }), "trochoid-interference");
        Gone(InRing(4.95, Pinion with { Teeth = 40 }, Standard with { Teeth = 50 }), "trochoid-interference");
        Gone(InRing(4.95, Pinion with { Teeth = 36 }, Standard with { Teeth = 46 }), "trochoid-interference");
        Assert.Contains("of a to", Find(GearPair.At(pair.Second, pair.First, 2.95), "trochoid-interference", Level.Fails).Advice![..35], StringComparison.Ordinal);
    }

    [Fact]
    public void Trimming_interference_is_tight_and_asks_for_the_axis()
    {
        RingPair pair = InRing(4.95, Pinion with { Teeth = 40 }, Standard with { Teeth = 50 });
        Finding finding = Find(pair, "trimming-interference", Level.Tight);
        Assert.Equal(pair.TrimmingClearance, finding.Figure);
        Assert.StartsWith("Put a into b along the axis", finding.Advice, StringComparison.Ordinal);
        Assert.StartsWith("Put b into a along the axis", Find(GearPair.At(pair.Second, pair.First, 4.95), "trimming-interference", Level.Tight).Advice, StringComparison.Ordinal);
    }

    private static RingPair InRing(double distance, GearData? pinion = null, RingData? ring = null) =>
        (RingPair)GearPair.At(ExternalGear.Create(pinion ?? Pinion), RingGear.Create(ring ?? Ring), distance);

    private static RackPair OverRack(double height, GearData? gear = null, RackBarData? rack = null) =>
        (RackPair)GearPair.At(ExternalGear.Create(gear ?? Gear), RackBar.Create(rack ?? Bar), height);

    private static Finding[] Of(GearPair pair, double wanted = Wanted, Limits? limits = null) =>
        [.. PairCheck.Of(pair, "a", "b", "mesh", limits ?? TestLimits.Common, wanted)];

    private static Finding Find(GearPair pair, string name, double wanted, Limits limits) => Of(pair, wanted, limits).Single(finding => finding.Name == name);

    // The worst of that name.
    private static Finding Find(GearPair pair, string name, params Level[] levels)
    {
        Finding finding = Of(pair).Where(one => one.Name == name).MaxBy(one => one.Level)!;
        Assert.Contains(finding.Level, levels);
        Assert.Equal(finding.Level == Level.Ok, finding.Advice is null);
        return finding;
    }

    private static void Gone(GearPair pair, string name) => Assert.All(
        Of(pair).Where(one => one.Name == name), finding => Assert.True(finding.Level == Level.Ok, finding.Message));
}
