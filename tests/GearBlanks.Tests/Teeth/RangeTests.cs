using GearBlanks.Teeth;

namespace GearBlanks.Tests.Teeth;

/// <summary>Each number's range: its bounds belong to it, and what lies beyond is refused with the bound.</summary>
public sealed class RangeTests
{
    private const double M = 2;
    private static readonly GearData Gear = new(30, M, TestRacks.A);
    private static readonly RingData Ring = new(60, M, TestRacks.A, 150);
    private static readonly RackBarData Bar = new(M, TestRacks.A, 30, 8);

    /// <summary>Name, least, greatest, and how a value is put in.</summary>
    public static TheoryData<string, double, double> Ranges() => new()
    {
        { "Tooth count", 4, 1000 },
        { "Module", 0.05, 50 },
        { "Profile shift", -1, 1.5 },
        { "Pressure angle", 5, 45 },
        { "Addendum", 0.1, 5 },
        { "Dedendum of", 0.1, 5 },
        { "Fillet radius of", 0, 5 },
        { "Dedendum allowance", 0, 2 },
        { "Thinning", 0, Math.PI },
        { "Tip diameter", 0, 140 },
        { "Rim diameter", 0, 1400 },
        { "Root fillet radius", 0, 10 },
        { "Length of the rack", 0, 20_000 },
        { "Distance of the back", 0, 20_000 },
        { "Tip height", -10, 10 },
        { "Tip round", 0, 10 },
        { "Tip chamfer", 0, 10 },
        { "Tip relief", 0, 1 },
        { "Start of the tip relief", -10, 4020 },
    };

    [Theory]
    [MemberData(nameof(Ranges))]
    public void Bounds_belong_to_their_range_and_what_is_beyond_names_them(string what, double least, double greatest)
    {
        double beyond = what == "Tooth count" ? 1 : 1e-6 * (1 + greatest);
        Assert.NotEqual("out-of-range", Refusal(what, least)?.ShapeCase);
        Assert.NotEqual("out-of-range", Refusal(what, greatest)?.ShapeCase);
        foreach ((double value, double bound) in ((double, double)[])[(least - beyond, least), (greatest + beyond, greatest)])
        {
            GearGeometryException refused = Refusal(what, value)!;
            Assert.Equal("out-of-range", refused.ShapeCase);
            Assert.StartsWith(what, refused.What, StringComparison.Ordinal);
            Assert.Equal(value, refused.Value, 1e-9);
            Assert.Equal(bound, refused.Limit, 1e-9);
            Assert.StartsWith("use ", refused.Remedy, StringComparison.Ordinal);
            double[] told = [.. refused.Remedy!.Replace("use ", "", StringComparison.Ordinal).Split(" to ").Select(word => double.Parse(word, System.Globalization.CultureInfo.InvariantCulture))];
            Assert.Equal(least, told[0], 1e-4);
            Assert.Equal(greatest, told[1], 1e-4);
            Assert.True(told[0] >= least - 1e-12 && told[1] <= greatest + 1e-12);
        }
    }

    [Fact]
    public void A_tip_is_rounded_or_chamfered()
    {
        GearGeometryException refused = Assert.Throws<GearGeometryException>(() => Toothing.Of(Gear with { Tip = new TipForm(0.2, 0.3) }));
        Assert.Equal(("tip-round-and-chamfer", 0.3, 0), (refused.ShapeCase, refused.Value, refused.Limit));
        Toothing.Of(Gear with { Tip = new TipForm(0.2) });
        Toothing.Of(Gear with { Tip = new TipForm(Chamfer: 0.3) });
    }

    private static GearGeometryException? Refusal(string what, double value)
    {
        try
        {
            Toothing.Of(With(what, value));
            return null;
        }
        catch (GearGeometryException e)
        {
            return e;
        }
    }

    private static ToothData With(string what, double value) => what switch
    {
        "Tooth count" => Gear with { Teeth = (int)value },
        "Module" => Gear with { Module = value },
        "Profile shift" => Gear with { ProfileShift = value },
        "Pressure angle" => Gear with { Rack = TestRacks.A with { PressureAngle = TestRacks.Radians(value) } },
        "Addendum" => Gear with { Rack = TestRacks.A with { Addendum = value } },
        "Dedendum of" => Gear with { Rack = TestRacks.A with { Dedendum = value } },
        "Fillet radius of" => Gear with { Rack = TestRacks.A with { FilletRadius = value } },
        "Dedendum allowance" => Gear with { Rack = TestRacks.A with { DedendumAllowance = value } },
        "Thinning" => Bar with { Thinning = value },
        "Tip diameter" => Gear with { TipDiameter = value },
        "Rim diameter" => Ring with { RimDiameter = value },
        "Root fillet radius" => Ring with { RootFilletRadius = value },
        "Length of the rack" => Bar with { Length = value },
        "Distance of the back" => Bar with { BackHeight = value },
        "Tip height" => Bar with { TipHeight = value },
        "Tip round" => Bar with { Tip = new TipForm(value) },
        "Tip chamfer" => Gear with { Tip = new TipForm(Chamfer: value) },
        "Tip relief" => Ring with { Tip = new TipForm(Relief: new TipRelief(value, 117)) },
        _ => Gear with { Tip = new TipForm(Relief: new TipRelief(0.01, value)) },
    };
}
