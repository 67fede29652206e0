using GearBlanks.Curves;
using GearBlanks.Cutting.Reach;
using GearBlanks.Teeth;

namespace GearBlanks.Tests.Cutting.Reach;

/// <summary>The outline as a cutter leaves it against an independent closing on fine polygons.</summary>
public sealed class CutterReachTests
{
    // mm: the requirement.
    private const double Near = 0.002;

    private static readonly int[] Counts = [6, 7, 8, 9, 10, 12, 14, 17, 20, 25, 33, 40, 57, 80, 100, 150, 200];
    private static readonly double[] Modules = [0.3, 0.5, 1, 2, 3];
    private static readonly double[] Shifts = [-0.5, -0.25, 0, 0.2, 0.4, 0.6, 0.8];
    private static readonly double[] Angles = [14.5, 20, 25];
    private static readonly double[] Tools = [0.1, 0.25, 0.5, 0.76, 0.9, 1, 1.15, 1.3, 1.6, 2];

    [Theory]
    [InlineData(14.5)]
    [InlineData(20)]
    [InlineData(25)]
    public void Gears_come_out_as_a_polygon_closed_by_the_cutter_does(double degrees)
    {
        int tried = 0;
        foreach ((GearData data, double tool) in Gears(degrees))
        {
            if (Made(data) is { } gear)
            {
                tried++;
                AssertSame(gear, tool);
            }
        }

        Assert.InRange(tried, 140, int.MaxValue);
    }

    [Theory]
    [InlineData(40, 3, 'A', 0, 0)]
    [InlineData(24, 1, 'B', -0.3, 0.02)]
    [InlineData(36, 0.5, 'C', -0.4, 0)]
    [InlineData(48, 2, 'D', 0.2, 0)]
    [InlineData(80, 1, 'A', 0.5, 0.05)]
    [InlineData(150, 0.3, 'B', 0, 0)]
    public void Rings_come_out_as_a_polygon_closed_by_the_cutter_does(int teeth, double module, char type, double shift, double thinning)
    {
        foreach (double fillet in (double[])[0, 0.1, 0.25])
        {
            var ring = RingGear.Create(new RingData(teeth, module, TestRacks.Iso(type), (teeth + 10) * module, fillet * module, shift, thinning * module));
            foreach (double tool in Tools)
            {
                AssertSame(ring, tool * module);
            }
        }
    }

    [Theory]
    [InlineData('A', 1, 20, 5)]
    [InlineData('B', 2, 20, 4)]
    [InlineData('C', 0.5, 25, 4.6)]
    [InlineData('D', 3, 20, 4)]
    [InlineData('A', 0.3, 14.5, 4.3)]
    public void Racks_come_out_as_a_polygon_closed_by_the_cutter_does(char type, double module, double degrees, double pitches)
    {
        foreach (double shift in (double[])[-0.3, 0, 0.4])
        {
            var rack = RackBar.Create(new RackBarData(module, TestRacks.Iso(type, degrees), pitches * Math.PI * module, 5 * module, shift));
            foreach (double tool in Tools)
            {
                AssertSame(rack, tool * module);
            }
        }
    }

    [Theory]
    [InlineData(12, 0, 0.1, 0, 0)]
    [InlineData(12, 0.3, 0, 0.1, 0)]
    [InlineData(25, 0, 0, 0, 0.03)]
    [InlineData(25, 0.4, 0.15, 0, 0.02)]
    [InlineData(60, -0.3, 0, 0.2, 0.05)]
    public void Gears_with_tips_taken_off_come_out_as_a_polygon_does(int teeth, double shift, double round, double chamfer, double relief)
    {
        double start = teeth + (2 * shift) + 0.8;
        var gear = ExternalGear.Create(new GearData(teeth, 1, TestRacks.A, shift)
        {
            Tip = new TipForm(round, chamfer, relief > 0 ? new TipRelief(relief, start) : null),
        });
        foreach (double tool in Tools)
        {
            AssertSame(gear, tool);
        }
    }

    [Fact]
    public void A_cutter_that_reaches_everything_leaves_the_outline_itself()
    {
        var gear = ExternalGear.Create(new GearData(20, 1, TestRacks.A));
        Assert.Equal(gear.Outline().Pattern, CutterReach.Outline(gear, 0.3).Pattern);
    }

    [Fact]
    public void The_round_of_a_large_cutter_stands_in_the_middle_of_the_gap()
    {
        var gear = ExternalGear.Create(new GearData(20, 1, TestRacks.A));
        Outline cut = CutterReach.Outline(gear, 0.7);
        Arc root = Assert.Single(cut.Pattern.OfType<Arc>(), arc => arc.Centre != default);
        Assert.Equal(0.7, root.Radius, 1e-6);
        Assert.Equal(Math.PI / 20, root.Centre.Angle, 1e-12);
        Assert.True(root.Sweep < 0);
        Assert.True(root.Centre.Radius - root.Radius > gear.RootRadius + 0.01);
    }

    [Fact]
    public void A_cutter_wider_than_a_ring_is_refused()
    {
        var ring = RingGear.Create(new RingData(40, 1, TestRacks.A, 50, 0.2));
        GearGeometryException e = Assert.Throws<GearGeometryException>(() => CutterReach.Outline(ring, 19.5));
        Assert.Equal("cutter-wider-than-ring", e.ShapeCase);
        Assert.Throws<ArgumentOutOfRangeException>(() => CutterReach.Outline(ring, 0));
    }

    private static void AssertSame(Toothing teeth, double tool)
    {
        double apart = ClosedTeeth.Of(teeth, tool / 2).FurthestFrom(CutterReach.Outline(teeth, tool / 2));
        Assert.True(apart <= Near, $"{teeth.Data} cut by {tool}: {apart} mm apart");
    }

    // Every combination of rack, shift and tool at least once, the rest in turn.
    private static IEnumerable<(GearData Data, double Tool)> Gears(double degrees)
    {
        int index = Array.IndexOf(Angles, degrees);
        foreach (char type in TestRacks.Types)
        {
            foreach (double shift in Shifts)
            {
                foreach (double tool in Tools)
                {
                    index++;
                    double module = Modules[index % Modules.Length];
                    yield return (new GearData(Counts[index % Counts.Length], module, TestRacks.Iso(type, degrees), shift), tool * module);
                }
            }
        }
    }

    private static Gear? Made(GearData data)
    {
        try
        {
            return Gear.Of(data);
        }
        catch (GearGeometryException)
        {
            return null;
        }
    }
}
