using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using GearBlanks.Blanks;
using GearBlanks.Blanks.Bores;
using GearBlanks.Curves;
using GearBlanks.Cutting.Reach;
using GearBlanks.Findings;
using GearBlanks.Mechanisms.Reach;
using GearBlanks.Meshing;
using GearBlanks.Teeth;
using GearBlanks.Tests.Cutting;
using GearBlanks.Tests.Cutting.Reach;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Overlay;
using NetTopologySuite.Operation.OverlayNG;

namespace GearBlanks.Tests.Mechanisms.Reach;

/// <summary>What is said of a tool's reach, and that what is advised is enough.</summary>
public sealed partial class ReachCheckTests
{
    private static readonly ImmutableArray<BasicRack> Racks = [.. TestRacks.Types.Select(type => TestRacks.Iso(type))];

    // Teeth, profile shift, type of the rack, tool.
    [Theory]
    [InlineData(20, 0, 'A', 1.0)]
    [InlineData(20, 0, 'C', 1.3)]
    [InlineData(8, 0, 'A', 1.5)]
    [InlineData(60, -0.4, 'B', 0.9)]
    [InlineData(33, 0.5, 'D', 1.1)]
    public void The_uncut_area_and_depth_are_those_of_a_closed_polygon(int teeth, double shift, char type, double tool)
    {
        var gear = ExternalGear.Create(new GearData(teeth, 1, TestRacks.Iso(type), shift));
        AssertRest(Of(new Blank("wheel", gear, 2, new Cutouts(), []), tool), gear);
    }

    [Fact]
    public void Of_a_ring_and_a_rack_too()
    {
        var ring = RingGear.Create(new RingData(48, 1, TestRacks.A, 60, 0.2));
        AssertRest(Of(new Blank("dial ring", ring, 2, new Cutouts(), []), 0.9), ring);
        RackBar rack = RackBar.Create(new RackBarData(1, TestRacks.A, 20, 5));
        AssertRest(Of(new Blank("sled rack", rack, 2, new Cutouts(), []), 1.1), rack);
    }

    [Fact]
    public void A_tool_that_reaches_everything_leaves_nothing()
    {
        GearReach reach = Of(new Blank("wheel", ExternalGear.Create(new GearData(20, 1, TestRacks.A)), 2, new Cutouts(), []), 0.89);
        Assert.Equal((0, 0, 0), (reach.UncutDepth, reach.UncutAreaPerGap, reach.UncutArea));
        Assert.Empty(reach.Uncut);
        Assert.Empty(reach.Gap.Cutters);
        Assert.Equal(Level.Ok, reach.Verdict);
    }

    // Teeth, type of the rack, shift of the pinion; how much larger than the largest tool that runs free the wheel's is, mm.
    [Theory]
    [InlineData(20, 40, 'A', 0.30, 0.04)]
    [InlineData(20, 40, 'C', 0.10, 0.03)]
    [InlineData(12, 60, 'A', 0.05, 0.05)]
    [InlineData(17, 34, 'B', 0.20, 0.06)]
    public void Every_remedy_that_is_told_is_enough(int pinion, int wheel, char type, double shift, double larger)
    {
        var cut = ExternalGear.Create(new GearData(wheel, 1, TestRacks.Iso(type), -shift));
        var mate = ExternalGear.Create(new GearData(pinion, 1, TestRacks.Iso(type), shift));
        GearPair pair = GearPair.At(cut, mate, GearPair.ZeroBacklashDistance(cut, mate)!.Value + 0.05);
        var mesh = new ToothMesh("mesh pinion - wheel", pair, true, "pinion");
        double? free = ReachOf(cut, pair);
        double tool = free!.Value + larger;
        Assert.True(mesh.RoomAsCut(tool / 2) < 0, "the tool runs free anyway");
        string advice = new ReachRemedies(mesh, "wheel", tool, Racks).Sentence(0, free);

        Assert.True(mesh.RoomAsCut(Number(advice, ToolPattern()) / 2) >= 0, advice);
        Match round = RoundPattern().Match(advice);
        if (round.Success)
        {
            var tip = new TipForm(Round: Number(advice, RoundPattern()));
            Assert.True(mesh.With(cut.Data, mate.Data with { Tip = tip })!.RoomAsCut(tool / 2) >= 0, advice);
            Assert.True(mesh.With(cut.Data, mate.Data with { Tip = tip with { Round = tip.Round - 0.01 } })!.RoomAsCut(tool / 2) < 0, advice);
        }

        if (DedendumPattern().IsMatch(advice))
        {
            BasicRack deeper = cut.Data.Rack with { Dedendum = Number(advice, DedendumPattern()) };
            Assert.True(mesh.With(cut.Data with { Rack = deeper }, mate.Data)!.RoomAsCut(tool / 2) >= 0, advice);
        }

        if (RackPattern().Match(advice) is { Success: true } rack)
        {
            BasicRack other = Racks.Single(one => one.Name == rack.Groups[1].Value);
            Assert.True(mesh.With(cut.Data with { Rack = other }, mate.Data)!.RoomAsCut(tool / 2) >= 0, advice);
        }
    }

    /// <summary>A rack whose tips are long leaves no bottom clearance: there a deeper dedendum, or the rack of type D, is what helps.</summary>
    [Fact]
    public void A_deeper_dedendum_is_told_where_the_root_stands_in_the_way()
    {
        var shallow = new BasicRack("shallow", Math.PI / 9, 1, 1.05, 0.2);
        var cut = ExternalGear.Create(new GearData(60, 1, shallow));
        var mate = ExternalGear.Create(new GearData(20, 1, TestRacks.A));
        GearPair pair = GearPair.At(cut, mate, 40.05);
        var mesh = new ToothMesh("mesh", pair, true, "pinion");
        const double tool = 1.1;
        Assert.True(mesh.RoomAsCut(tool / 2) < 0);
        string advice = new ReachRemedies(mesh, "wheel", tool, Racks).Sentence(0, ReachOf(cut, pair));
        BasicRack deeper = shallow with { Dedendum = Number(advice, DedendumPattern()) };
        Assert.True(mesh.With(cut.Data with { Rack = deeper }, mate.Data)!.RoomAsCut(tool / 2) >= 0, advice);
        Match rack = RackPattern().Match(advice);
        Assert.True(rack.Success, advice);
        Assert.True(mesh.With(cut.Data with { Rack = Racks.Single(one => one.Name == rack.Groups[1].Value) }, mate.Data)!.RoomAsCut(tool / 2) >= 0, advice);
    }

    [Fact]
    public void Holes_and_slots_that_the_tool_does_not_go_through_are_named()
    {
        var gear = ExternalGear.Create(new GearData(60, 1, TestRacks.A));
        var blank = new Blank("wheel", gear, 2, new Cutouts { Bore = new KeywayBore(8, 1.5, 1), Holes = [new Circle(new GearBlanks.Curves.Point(15, 0), 0.8)] }, []);
        GearReach reach = Of(blank, 2);
        Finding[] holes = [.. reach.Findings.Where(finding => finding.Name == "hole-reach")];
        Assert.Equal(2, holes.Length);
        Assert.All(holes, finding => Assert.Equal((Level.Fails, 2.0), (finding.Level, finding.Limit)));
        Assert.Contains(holes, finding => finding.Message.Contains("keyway", StringComparison.Ordinal) && Math.Abs(finding.Figure - 1.5) < 0.001);
        Assert.Contains(holes, finding => finding.Message.Contains("hole of wheel", StringComparison.Ordinal) && Math.Abs(finding.Figure - 1.6) < 1e-9);

        // Doing what is told is enough.
        double told = holes.Min(finding => Number(finding.Advice!, ToolPattern()));
        Assert.DoesNotContain(Of(blank, told).Findings, finding => finding.Name == "hole-reach");
    }

    [Fact]
    public void A_gear_without_a_mate_is_held_against_its_racks_own_clearance()
    {
        var blank = new Blank("wheel", ExternalGear.Create(new GearData(40, 1, TestRacks.A)), 2, new Cutouts(), []);
        Finding finding = Of(blank, 1.3).Findings.Single(one => one.Name == "root-reach");
        Assert.Equal(Level.Tight, finding.Level);
        Assert.DoesNotContain(Of(blank, Number(finding.Advice!, ToolPattern())).Findings, one => one.Level != Level.Ok);
    }

    private static GearReach Of(Blank blank, double tool) => ReachCheck.Of(blank, tool, TestLimits.Common);

    private static double? ReachOf(Toothing teeth, GearPair pair)
    {
        var gap = HalfGap.Of(teeth);
        double root = LargestTools.RootTouching(gap);
        return 2 * RunningFree.Radius(teeth, gap, root, LargestTools.WholeFillet(gap, root), pair, true);
    }

    private static void AssertRest(GearReach reach, Toothing teeth)
    {
        Geometry nominal = ClosedTeeth.OneGap(teeth, 1e-4, false).Shape;
        Geometry closed = ClosedTeeth.OneGap(teeth, reach.Tool / 2, false).Shape;
        Assert.Equal(AreaInGap(OverlayNGRobust.Overlay(closed, nominal, SpatialFunction.Difference), teeth), reach.UncutAreaPerGap, 2e-4);
        int gaps = teeth is RackBar ? teeth.Teeth - 1 : teeth.Teeth;
        Assert.Equal(gaps * reach.UncutAreaPerGap, reach.UncutArea, 1e-9);
        Assert.Equal(gaps * reach.Gap.Uncut.Length, reach.Uncut.Length);
        if (reach.UncutDepth < 0.01)
        {
            Assert.Empty(reach.Uncut);
            return;
        }

        // Only the ends that are narrower than 0.005 mm are left out.
        double contours = reach.Uncut.Sum(contour => SampledOutline.Polygon(contour).Area) / gaps;
        Assert.InRange(contours, reach.UncutAreaPerGap - 0.003, reach.UncutAreaPerGap + 1e-4);
        Assert.All(reach.Uncut, contour => Assert.True(SampledOutline.Polygon(contour).IsValid));
        Assert.Equal(reach.Gap.Uncut[0].Curves().Sum(curve => curve.Length), reach.Uncut[0].Curves().Sum(curve => curve.Length), 1e-9);
        var edge = new NetTopologySuite.Operation.Distance.IndexedFacetDistance(closed.Boundary);
        double depth = reach.Uncut[0].Moved(Placed(teeth)).Curves().SelectMany(curve => Enumerable.Range(0, 200).Select(i => curve.PointAt(curve.Start + ((curve.End - curve.Start) * i / 200))))
            .Max(point => edge.Distance(SampledOutline.Factory.CreatePoint(new Coordinate(point.X, point.Y))));
        Assert.Equal(depth, reach.UncutDepth, 2e-3);
    }

    private static double AreaInGap(Geometry shape, Toothing teeth)
    {
        double half = teeth is RackBar rack ? rack.Pitch / 2 : 0;
        Coordinate[] corners = teeth is RackBar
            ? [new(-half, -4), new(half, -4), new(half, 9), new(-half, 9), new(-half, -4)]
            : [new(0, 0), Far(-1), Far(1), new(0, 0)];
        return OverlayNGRobust.Overlay(shape, SampledOutline.Factory.CreatePolygon(corners), SpatialFunction.Intersection).Area;

        Coordinate Far(int sense)
        {
            var far = GearBlanks.Curves.Point.Polar(3 * ((Gear)teeth).ReferenceRadius, sense * Math.PI / teeth.Teeth);
            return new Coordinate(far.X, far.Y);
        }
    }

    // The first gap's contour into the gap that the polygons show: on +X, of a rack on +Y.
    private static Motion Placed(Toothing teeth) => teeth is RackBar rack
        ? Motion.Shift(new Vector(-rack.FirstTooth - (rack.Pitch / 2), 0))
        : Motion.Turn(Math.PI / teeth.Teeth);

    private static double Number(string text, Regex pattern) => double.Parse(pattern.Match(text).Groups[1].Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"tool of at most ([\d.]+) mm")]
    private static partial Regex ToolPattern();

    [GeneratedRegex(@"round the tips of \w+ by ([\d.]+) mm")]
    private static partial Regex RoundPattern();

    [GeneratedRegex(@"rack of dedendum ([\d.]+) modules")]
    private static partial Regex DedendumPattern();

    [GeneratedRegex(@"with rack (type \w)")]
    private static partial Regex RackPattern();
}
