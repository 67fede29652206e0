using System.Globalization;
using System.Text.RegularExpressions;
using CsCheck;
using GearBlanks.Findings;
using GearBlanks.Teeth;

namespace GearBlanks.Tests.Teeth;

/// <summary>The findings on teeth of each kind, their advice followed.</summary>
public sealed partial class ToothCheckTests
{
    private static readonly RingData Ring = new(60, 2, TestRacks.A, 140);
    private static readonly RackBarData Bar = new(2, TestRacks.A, 30, 8);

    [Fact]
    public void Good_teeth_are_ok()
    {
        Assert.Equal(["undercut-depth", "tip-thickness"], Names(new GearData(30, 2, TestRacks.A)));
        Assert.Equal(["tip-thickness"], Names(Ring));
        Assert.Equal(["tip-thickness"], Names(Bar));
        Assert.All(Of(Ring).Concat(Of(Bar)), finding => Assert.Equal((Level.Ok, null), (finding.Level, finding.Advice)));

        static IEnumerable<string> Names(ToothData data) => Of(data).Select(finding => finding.Name);
    }

    [Fact]
    public void The_figure_is_the_land_that_is_left()
    {
        double plain = Of(Bar).Single().Figure;
        Assert.Equal(2 * ((Math.PI / 2) - (2 * Math.Tan(TestRacks.Radians(20)))), plain, 1e-12);
        Assert.Equal(plain - (2 * 0.3 * (1 - Math.Tan(TestRacks.Radians(20)))), Of(Bar with { Tip = new TipForm(Chamfer: 0.3) }).Single().Figure, 1e-12);
    }

    public static TheoryData<string, Level, ToothData, int> Cases() => new()
    {
        { "tip-thickness", Level.Tight, new GearData(30, 2, TestRacks.A) { Tip = new TipForm(0.9) }, 2 },
        { "tip-thickness", Level.Tight, new GearData(12, 2, TestRacks.A, 0.7), 1 },
        { "tip-thickness", Level.Fails, new GearData(12, 2, TestRacks.A, 0.8), 1 },
        { "pointed-tip", Level.Fails, new GearData(8, 3, TestRacks.A, 0.8), 1 },
        { "tip-thickness", Level.Fails, Ring with { Tip = new TipForm(Chamfer: 1.2) }, 2 },
        { "pointed-tip", Level.Fails, Ring with { Rack = TestRacks.A with { Dedendum = 0.8, FilletRadius = 0.2 }, Thinning = 2.2 }, 1 },
        { "tip-thickness", Level.Fails, Bar with { Tip = new TipForm(1.1) }, 2 },
        { "tip-thickness", Level.Tight, Bar with { TipHeight = 3.8 }, 1 },
        { "pointed-tip", Level.Fails, Bar with { TipHeight = 4.5 }, 1 },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void Advice_works(string name, Level level, ToothData data, int ways)
    {
        Finding finding = Of(data).Single(one => one.Name == name);
        Assert.Equal(level, finding.Level);
        Assert.Equal(ways, Follow(finding, data));
    }

    [Fact]
    public void Advice_on_random_teeth_works() => Gen.OneOf(
        RandomGears.Legal.Select(gear => (Toothing)gear), RandomRings.Legal.Select(ring => (Toothing)ring),
        RandomTips.Gears.Select(gear => (Toothing)gear), RandomBars.Legal.Select(bar => (Toothing)bar), RandomBars.Formed.Select(bar => (Toothing)bar))
        .Sample(
            teeth =>
            {
                foreach (Finding finding in ToothCheck.Of(teeth, "teeth", TestLimits.Common).Where(one => one.Advice is not null && one.Name != "undercut-depth"))
                {
                    _ = Follow(finding, teeth.Data);
                }
            },
            iter: 1000);

    private static Finding[] Of(ToothData data) => [.. ToothCheck.Of(Create(data), "teeth", TestLimits.Common)];

    private static Toothing Create(ToothData data) => data is RackBarData bar ? RackBar.Create(bar) : Gear.Of((GearData)data);

    private static int Follow(Finding finding, ToothData data)
    {
        int followed = 0;
        TipForm tip = data.Tip ?? new TipForm();
        Try(TipWords(), v => data switch
        {
            RackBarData bar => bar with { TipHeight = v },
            RingData ring => ring with { TipDiameter = v },
            _ => (GearData)data with { TipDiameter = v },
        });
        Try(RoundWords(), v => data with { Tip = tip with { Round = v } });
        Try(ChamferWords(), v => data with { Tip = tip with { Chamfer = v } });
        return followed;

        void Try(Regex words, Func<double, ToothData> with)
        {
            if (words.Match(finding.Advice!) is { Success: true } match)
            {
                followed++;
                Finding[] after = Of(with(double.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture)));
                Assert.DoesNotContain(after, one => one.Name == "pointed-tip");
                Assert.Equal(Level.Ok, after.Single(one => one.Name == "tip-thickness").Level);
            }
        }
    }

    [GeneratedRegex(@"(?:Lower|lower|Raise|raise) the tip (?:diameter|height) to ([-0-9.]+) mm")]
    private static partial Regex TipWords();

    [GeneratedRegex(@"se a tip round radius of at most ([0-9.]+) mm")]
    private static partial Regex RoundWords();

    [GeneratedRegex(@"se a tip chamfer of at most ([0-9.]+) mm")]
    private static partial Regex ChamferWords();
}
