using System.Globalization;
using System.Text.RegularExpressions;
using CsCheck;
using GearBlanks.Curves;
using GearBlanks.Curves.Fitting;
using GearBlanks.Teeth;
using GearBlanks.Tests.Properties;

namespace GearBlanks.Tests.Teeth;

/// <summary>What cannot exist is refused by its name, with advice that works.</summary>
public sealed partial class RefusalTests
{
    private static readonly BasicRack A = TestRacks.A;

    public static TheoryData<string, GearData> Cases() => new()
    {
        { "rack-pointed", new GearData(20, 1, A with { Dedendum = 2.5 }) },
        { "rack-round-too-wide", new GearData(20, 1, TestRacks.Iso('A', 25)) },
        { "no-root", new GearData(4, 1, A, -1) },
        { "no-tooth", new GearData(20, 1, A, -1, 1.57) },
        { "severed", new GearData(6, 3, TestRacks.Iso('D', 14.5), -0.5) },
        { "severed", new GearData(5, 1, A, -0.7) },
        { "tip-below-root", new GearData(20, 1, A, 0, 0, 17.4) },
        { "no-flank", new GearData(20, 1, A, 0, 0, 17.9) },
        { "out-of-range", new GearData(3, 1, A) },
        { "out-of-range", new GearData(1001, 1, A) },
        { "out-of-range", new GearData(20, 0.049, A) },
        { "out-of-range", new GearData(20, 50.1, A) },
        { "out-of-range", new GearData(20, double.NaN, A) },
        { "out-of-range", new GearData(20, 1, A, -1.01) },
        { "out-of-range", new GearData(20, 1, A, 1.51) },
        { "out-of-range", new GearData(20, 1, A with { PressureAngle = 0.05 }) },
        { "out-of-range", new GearData(20, 1, A with { PressureAngle = 0.9 }) },
        { "out-of-range", new GearData(20, 1, A with { Addendum = 0 }) },
        { "out-of-range", new GearData(20, 1, A with { Dedendum = -1 }) },
        { "out-of-range", new GearData(20, 1, A with { FilletRadius = -0.1 }) },
        { "out-of-range", new GearData(20, 1, A with { DedendumAllowance = -0.1 }) },
        { "out-of-range", new GearData(20, 1, A, 0, -0.1) },
        { "out-of-range", new GearData(20, 1, A, 0, 1.6) },
        { "out-of-range", new GearData(20, 1, A, 0, 0, double.NegativeInfinity) },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void Each_case_has_its_name(string name, GearData data)
    {
        var e = Assert.Throws<GearGeometryException>(() => ExternalGear.Create(data));
        Assert.Equal(name, e.ShapeCase);
        Assert.Contains(name, e.Message, StringComparison.Ordinal);
        Assert.Contains(e.What, e.Message, StringComparison.Ordinal);
        Follow(e, data);
    }

    [Fact]
    public void A_full_round_has_no_root_circle_and_stays_smooth()
    {
        double alpha = A.PressureAngle;
        double widest = ((Math.PI / 4) - (1.25 * Math.Tan(alpha))) * Math.Cos(alpha) / (1 - Math.Sin(alpha));
        var gear = ExternalGear.Create(new GearData(20, 2, A with { FilletRadius = widest }));
        Outline outline = gear.Outline();
        Assert.Equal(0, gear.RootHalfAngle);
        Assert.Equal(5, outline.Pattern.Length);
        Vector arriving = outline.Pattern[^1].TangentAt(outline.Pattern[^1].End);
        Vector leaving = Motion.TurnStep(1, 20).Apply(outline.Pattern[0].TangentAt(outline.Pattern[0].Start));
        Assert.Equal(0, arriving.Cross(leaving), 1e-12);
        Assert.Equal(gear.ReferenceRadius - 2.5, gear.RootRadius, 1e-12);
    }

    [Fact]
    public void A_tip_circle_beyond_the_point_is_flagged_and_the_outline_goes_to_the_point()
    {
        var gear = ExternalGear.Create(new GearData(8, 3, A, 0.8));
        Assert.True(gear.IsPointed);
        Assert.Equal(0, gear.TipThickness);
        Assert.Equal(12 + 5.4, gear.NominalTipRadius, 1e-12);
        Assert.True(gear.TipRadius < gear.NominalTipRadius);
        Assert.DoesNotContain(gear.Outline().Pattern, curve => curve is Arc { Radius: var radius } && radius > gear.RootRadius + 1);
        Assert.Equal(0, gear.Flank.EndPoint.Y, 1e-12);
        Assert.Equal(gear.TipRadius, gear.Flank.EndPoint.X, 1e-12);
        Assert.False(ExternalGear.Create(new GearData(8, 3, A, 0.8, 0, (2 * gear.TipRadius) - 0.01)).IsPointed);
    }

    [Fact]
    public void A_sharp_cornered_rack_leaves_a_fillet_too()
    {
        var gear = ExternalGear.Create(new GearData(20, 1, A with { FilletRadius = 0 }));
        Assert.Equal(6, gear.Outline().Pattern.Length);

        // Its corner on the pitch line: no fillet is left, only a corner.
        var corner = ExternalGear.Create(new GearData(20, 1, A with { FilletRadius = 0, Dedendum = 1 }, 1));
        Assert.Equal(4, corner.Outline().Pattern.Length);
    }

    // A corner that runs beside the pitch line by less and less: the fillet's length falls with the square.
    [Fact]
    public void A_vanishing_fillet_leaves_a_closed_outline()
    {
        for (double beside = 1; beside > 1e-12; beside /= 1.5)
        {
            BasicRack rack = new("sharp", TestRacks.Radians(35), 1, 1 + (0.1 * beside), 0);
            foreach (double module in (double[])[0.05, 0.93, 50])
            {
                Outline outline = ExternalGear.Create(new GearData(55, module, rack, 1)).Outline();
                ArcPath path = OutlineFit.Fit(outline, 0.001);
                Assert.All(path.Vertices, v => Assert.True(double.IsFinite(v.Point.X + v.Point.Y + v.Bulge)));
            }
        }
    }

    [Fact]
    public void Refusals_of_random_data_give_advice_that_works() => RandomGears.Data.Sample(
        data =>
        {
            try
            {
                _ = ExternalGear.Create(data);
            }
            catch (GearGeometryException e)
            {
                Follow(e, data);
            }
        },
        iter: Count.Of(5000));

    // Where the advice names a value, that value must work, and no nearer shift on the same grid may.
    private static void Follow(GearGeometryException e, GearData data)
    {
        if (Number(ShiftAdvice(), e.Message) is { } x)
        {
            _ = ExternalGear.Create(data with { ProfileShift = x });
            double away = Math.Abs(x - data.ProfileShift) - 1e-9;
            IEnumerable<double> nearer = Enumerable.Range(-100, 251).Select(i => i / 100.0).Where(other => Math.Abs(other - data.ProfileShift) < away);

            // A pointed gear exists, but nobody is sent to one while another is to be had.
            Assert.All(nearer, other => Assert.True(RandomGears.TryCreate(data with { ProfileShift = other }) is null or { IsPointed: true }));
        }

        if (Number(TipAdvice(), e.Message) is { } tip)
        {
            _ = ExternalGear.Create(data with { TipDiameter = tip });
        }

        if (Number(RoundAdvice(), e.Message) is { } round && e.Limit >= 0.001)
        {
            var e2 = Record.Exception(() => ExternalGear.Create(data with { Rack = data.Rack with { FilletRadius = round } }));
            Assert.NotEqual("rack-round-too-wide", (e2 as GearGeometryException)?.ShapeCase);
        }
    }

    private static double? Number(Regex pattern, string message) =>
        pattern.Match(message) is { Success: true } match ? double.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture) : null;

    [GeneratedRegex(@"profile shift that works is ([-+0-9.]+[0-9])")]
    private static partial Regex ShiftAdvice();

    [GeneratedRegex(@"tip diameter of at least ([0-9.]+) mm")]
    private static partial Regex TipAdvice();

    [GeneratedRegex(@"fillet radius of at most ([0-9.]+) modules")]
    private static partial Regex RoundAdvice();
}
