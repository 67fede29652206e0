using CsCheck;
using GearBlanks.Curves;
using GearBlanks.Curves.Fitting;
using GearBlanks.Teeth;

namespace GearBlanks.Tests.Curves.Fitting;

/// <summary>The written path against the exact curves, by dense points and by geometry rebuilt here from vertices and bulges.</summary>
public sealed class OutlineFitTests
{
    private static readonly double[] Tolerances = [1e-6, 1e-5, 1e-4, 0.001, 0.01, 0.1];

    private static readonly Dictionary<string, GearData> Gears = new()
    {
        ["usual"] = new GearData(24, 0.8, TestRacks.A, -0.1, 0.016),
        ["undercut"] = new GearData(8, 2, TestRacks.A),
        ["pointed"] = new GearData(9, 3, TestRacks.A, 0.8),
        ["four teeth"] = new GearData(4, 1, TestRacks.A, 0.6),
        ["thousand teeth"] = new GearData(1000, 0.3, TestRacks.Iso('D')),
        ["least module"] = new GearData(17, 0.05, TestRacks.Iso('C')),
        ["greatest module"] = new GearData(30, 50, TestRacks.Iso('B', 14.5), 0.5),
        ["centre on the rolling line"] = new GearData(20, 1, TestRacks.A, 0.87),
        ["centre above the rolling line"] = new GearData(5, 2, TestRacks.A, 1.4),
        ["sharp corner"] = new GearData(20, 1, TestRacks.A with { FilletRadius = 0 }, 1.2),
        ["flank from the base circle"] = new GearData(10, 1, TestRacks.A, 0.42),
    };

    public static TheoryData<string, double> Rows()
    {
        var rows = new TheoryData<string, double>();
        foreach (string name in Gears.Keys)
        {
            foreach (double tolerance in Tolerances)
            {
                rows.Add(name, tolerance);
            }
        }

        return rows;
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void Arcs_keep_to_the_exact_outline(string name, double tolerance) => Check(ExternalGear.Create(Gears[name]), tolerance, Pieces.Arcs);

    [Theory]
    [MemberData(nameof(Rows))]
    public void Chords_keep_to_the_exact_outline(string name, double tolerance)
    {
        // A nanometre of sag takes thousands of chords a tooth and minutes to check: the finest are tried on one small gear.
        if (tolerance > 2e-6 || name == "usual")
        {
            Check(ExternalGear.Create(Gears[name]), tolerance, Pieces.Chords);
        }
    }

    [Fact]
    public void Random_gears_keep_to_the_exact_outline() =>
        Gen.Select(RandomGears.Legal, Gen.Double[-5.9, -1], Gen.Bool).Sample(
            (gear, log, arcs) => Check(gear, Math.Pow(10, arcs ? log : Math.Max(-4, log)), arcs ? Pieces.Arcs : Pieces.Chords), iter: 300);

    [Theory]
    [InlineData(0)]
    [InlineData(1e-7)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    public void Too_small_a_tolerance_is_refused(double tolerance) => Assert.Throws<ArgumentOutOfRangeException>(() =>
        OutlineFit.Fit(ExternalGear.Create(Gears["usual"]).Outline(), tolerance));

    [Fact]
    public void A_circle_becomes_four_quarters()
    {
        ArcPath path = OutlineFit.Fit(Outline.Of(new Circle(new Point(3, 4), 2.5)), 0.001);
        Assert.Equal(4, path.Vertices.Length);
        Assert.All(path.Vertices, v => Assert.Equal(Math.Tan(Math.PI / 8), v.Bulge, 1e-15));
        Assert.All(path.Vertices, v => Assert.Equal(2.5, v.Point.DistanceTo(new Point(3, 4)), 1e-14));
    }

    private static void Check(ExternalGear gear, double tolerance, Pieces kind)
    {
        Outline outline = gear.Outline();
        ArcPath path = OutlineFit.Fit(outline, tolerance, kind);
        Assert.True(path.Closed);
        Assert.Equal(0, path.Vertices.Length % gear.Teeth);
        int perTooth = path.Vertices.Length / gear.Teeth;
        RequireEqualTeeth(path, perTooth);

        List<Rebuilt> pieces = FitChecks.PatternOf(outline, path);
        double rounding = 1e-12 * gear.TipRadius;
        FitChecks.RequireWithin(outline, path, tolerance + rounding);
        Assert.All(pieces, piece => Assert.True(Math.Abs(piece.Bulge) <= Math.Tan(Math.PI / 8) * (1 + 1e-9)));
        if (kind == Pieces.Arcs)
        {
            FitChecks.RequireSmooth(outline, path, gear.TipRadius);
        }
        else
        {
            Assert.All(pieces, piece => Assert.Equal(0, piece.Bulge));
            FitChecks.RequirePointsNearCurves(outline, pieces.Select(piece => piece.From), rounding + 1e-9);
        }
    }

    private static void RequireEqualTeeth(ArcPath path, int perTooth)
    {
        for (int i = perTooth; i < path.Vertices.Length; i++)
        {
            Assert.Equal(BitConverter.DoubleToInt64Bits(path.Vertices[i % perTooth].Bulge), BitConverter.DoubleToInt64Bits(path.Vertices[i].Bulge));
            Assert.Equal(path.Vertices[i % perTooth].Point.Radius, path.Vertices[i].Point.Radius, 1e-13 * (1 + path.Vertices[i].Point.Radius));
        }
    }
}
