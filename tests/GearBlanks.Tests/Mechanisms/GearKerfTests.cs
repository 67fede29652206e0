using System.Collections.Immutable;
using GearBlanks.Cutting;
using GearBlanks.Findings;
using GearBlanks.Mechanisms;
using GearBlanks.Teeth;
using static GearBlanks.Tests.Mechanisms.TestJobs;

namespace GearBlanks.Tests.Mechanisms;

/// <summary>Which kerf a file carries, and the machine's least feature.</summary>
public sealed class GearKerfTests
{
    private static readonly Machine Laser = new("laser", "Laser", new LayerPlan(ImmutableDictionary<Operation, string>.Empty, false), [])
    {
        Kerfs = [new SheetKerf("acrylic", 2.9, 3.1, Kerf.Of(0.2), "test"), new SheetKerf("acrylic", 5, 6, new Kerf(0.25, 0.3), "test")],
        LeastFeature = new LeastFeature(0.7, 1.2, "test"),
    };

    private static readonly Job Good = Pair(Gear("a", 20), Gear("b", 40), 30.05);

    [Theory]
    [InlineData("acrylic", 3, "compensated, kerf 0.20 mm")]
    [InlineData("acrylic", 6, "compensated, kerf 0.25 x 0.30 mm")]
    public void A_known_kerf_is_compensated(string material, double thickness, string words)
    {
        var kerf = GearKerf.Of(Laser, material, thickness, null);
        Assert.Equal((words, null), (kerf.Words, kerf.Remark));
    }

    [Theory]
    [InlineData("acrylic", 3.2)]
    [InlineData("brass", 3)]
    [InlineData(null, 3)]
    [InlineData("acrylic", 0)]
    public void A_kerf_that_is_not_known_is_never_guessed(string? material, double thickness)
    {
        var kerf = GearKerf.Of(Laser, material, thickness, null);
        Assert.Equal((null, false, "nominal, kerf not compensated"), (kerf.Kerf, kerf.IsCompensated, kerf.Words));
        Assert.Contains("is not known", kerf.Remark, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_asked_for_goes_before_the_profile()
    {
        var asked = GearKerf.Of(Laser, "acrylic", 3, new AskedKerf(Kerf.Of(0.17)));
        Assert.Equal((Kerf.Of(0.17), true), (asked.Kerf, asked.IsCompensated));

        // A nominal file is cut by the machine's own kerf all the same.
        var nominal = GearKerf.Of(Laser, "acrylic", 3, new AskedKerf(null));
        Assert.Equal((Kerf.Of(0.2), false), (nominal.Kerf, nominal.IsCompensated));
    }

    [Fact]
    public void A_shop_that_compensates_stays_nominal_and_nothing_is_taken_off_twice()
    {
        Machine shop = Laser with { Kerfs = [], Compensates = true };
        var kerf = GearKerf.Of(shop, "acrylic", 3, null);
        Assert.Equal((null, false, true, null), (kerf.Kerf, kerf.IsCompensated, kerf.IsShops, kerf.Remark));
        Assert.True(GearKerf.Of(shop, "acrylic", 3, new AskedKerf(null)).IsShops);
        GearGeometryException twice = Assert.Throws<GearGeometryException>(() => GearKerf.Of(shop, "acrylic", 3, new AskedKerf(Kerf.Of(0.2))));
        Assert.Equal("kerf-twice", twice.ShapeCase);
    }

    [Fact]
    public void A_path_of_the_tool_s_centre_is_never_nominal()
    {
        Machine mill = Laser with { Kerfs = [], ToolDiameter = 1, FollowsToolCentre = true };
        Assert.Equal((Kerf.Of(1), true), (GearKerf.Of(mill, "brass", 2, null).Kerf, GearKerf.Of(mill, "brass", 2, null).IsCompensated));
        Assert.Equal(Kerf.Of(0.98), GearKerf.Of(mill, "brass", 2, new AskedKerf(Kerf.Of(0.98))).Kerf);
        Assert.Equal("kerf-contradicts-path", Assert.Throws<GearGeometryException>(() => GearKerf.Of(mill, "brass", 2, new AskedKerf(null))).ShapeCase);
    }

    // Sheets of 2 mm: 0.7 thicknesses are 1.4 mm, more than the length.
    [Theory]
    [InlineData(1.3, Level.Fails)]
    [InlineData(1.5, Level.Ok)]
    public void The_least_feature_is_held_against_the_machine_s_rule(double bore, Level level)
    {
        Mechanism mechanism = Good.WithGear("a", gear => gear with { Bore = bore, Thickness = 2 }).Resolved() with { Machine = Laser };
        Finding finding = MechanismCheck.Of(mechanism).Findings.Single(one => one.Name == "least-feature" && one.Place == "gear a");
        Assert.Equal((level, bore, 1.4), (finding.Level, finding.Figure, Math.Round(finding.Limit!.Value, 12)));
        Assert.Equal(level == Level.Ok, finding.Advice is null);
    }

    [Fact]
    public void Without_a_rule_there_is_no_finding() =>
        Assert.DoesNotContain(Good.WithGear("a", gear => gear with { Bore = 0.2 }).Report().Findings, finding => finding.Name == "least-feature");
}
