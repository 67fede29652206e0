using GearBlanks.Curves;
using GearBlanks.Cutting.Reach;
using GearBlanks.Teeth;

namespace GearBlanks.Tests.Cutting.Reach;

/// <summary>Random gears, rings and racks, legal ones with rounds, chamfers and sharp fillets, cut by tools from a fiftieth of a module to seven.</summary>
public sealed class RandomReachTests
{
    private const int Tried = 3000;

    // Of the radius: what the walk may be nudged by, and a little.
    private const double Nudge = 2e-7;

    [Fact]
    public void The_cutter_never_strikes_the_teeth_and_the_figures_agree()
    {
        var random = new Random(5);
        int made = 0;
        for (int i = 0; i < Tried; i++)
        {
            if (Made(random) is { } teeth)
            {
                made++;
                double radius = Math.Exp((random.NextDouble() * 6) - 4) * teeth.Module / 2;
                if (teeth is not RingGear ring || radius < ring.TipRadius)
                {
                    Require(teeth, radius);
                }
            }
        }

        Assert.InRange(made, Tried / 2, Tried);
    }

    private static void Require(Toothing teeth, double radius)
    {
        var gap = HalfGap.Of(teeth);
        CutHalf half = CutterReach.Half(teeth, gap, radius);
        var rest = UncutRest.Of(gap, half);
        double root = LargestTools.RootTouching(gap);
        double whole = LargestTools.WholeFillet(gap, root);
        string what = $"{teeth.Data}, radius {radius}";
        Assert.True(half.Stands.All(stand => Nearest(gap, stand.Cutter.Centre) >= radius * (1 - Nudge)), what);
        Assert.True(rest.Depth >= 0 && rest.Area >= 0 && whole <= root * (1 + 1e-9), what);

        // What follows everything leaves nothing, and the other way round, but for tools at the very limit.
        bool isAtLimit = Math.Abs(radius - whole) <= 1e-6 * whole || rest.Depth <= 1e-7 * teeth.Module;
        Assert.True(half.IsWhole == (radius <= whole) || isAtLimit, what);

        // The outline closes, which its constructor requires, and every contour of what is left does.
        Assert.NotEmpty(CutterReach.Outline(teeth, radius).Pattern);
        _ = UncutContours.InGap(gap, half);
    }

    private static double Nearest(HalfGap gap, Point centre) => gap.Curves
        .SelectMany(curve => Enumerable.Range(0, 41).Select(i => curve.PointAt(curve.Start + ((curve.End - curve.Start) * i / 40))))
        .Min(point => point.DistanceTo(centre));

    private static Toothing? Made(Random random)
    {
        double module = Math.Exp((random.NextDouble() * 4) - 2);
        double shift = (random.NextDouble() * 2.2) - 0.9;
        BasicRack rack = RackOf(random);
        TipForm? tip = random.Next(3) switch
        {
            0 => new TipForm(Round: random.NextDouble() * 0.3 * module),
            1 => new TipForm(Chamfer: random.NextDouble() * 0.3 * module),
            _ => null,
        };
        int teeth = random.Next(2) == 0 ? random.Next(4, 20) : random.Next(4, 300);
        double share = random.NextDouble();
        ToothData data = random.Next(10) switch
        {
            < 6 => new GearData(teeth, module, rack, shift, share * 0.1 * module),
            < 8 => new RingData(teeth, module, rack, (teeth + 12) * module, share * 0.5 * module, shift),
            _ => new RackBarData(module, rack, (1 + (share * 6)) * Math.PI * module, 5 * module, shift),
        };
        try
        {
            return Toothing.Of(data with { Tip = tip });
        }
        catch (GearGeometryException)
        {
            return null;
        }
    }

    private static BasicRack RackOf(Random random)
    {
        double degrees = random.Next(3) switch { 0 => 14.5, 1 => 20, _ => 15 + (random.NextDouble() * 15) };
        BasicRack rack = TestRacks.Iso(TestRacks.Types[random.Next(4)], degrees);
        return random.Next(5) switch
        {
            0 => rack with { FilletRadius = 0 },
            1 => rack with { FilletRadius = random.NextDouble() * 0.5 },
            _ => rack,
        };
    }
}
