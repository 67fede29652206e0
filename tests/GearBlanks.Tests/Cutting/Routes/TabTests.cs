using System.Collections.Immutable;
using GearBlanks.Blanks;
using GearBlanks.Cutting;
using GearBlanks.Cutting.Routes;
using GearBlanks.Findings;
using GearBlanks.Teeth;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Distance;
using Point = GearBlanks.Curves.Point;

namespace GearBlanks.Tests.Cutting.Routes;

/// <summary>What tabs leave standing, measured between the pieces of the tool's path, and what holds a rack.</summary>
public sealed class TabTests
{
    /// <summary>Between two pieces of its path a tool leaves their distance less its own diameter, whatever way round a tip's corner its centre goes.</summary>
    [Theory]
    [InlineData("gear", 0, 0.6)]
    [InlineData("gear", 0, 0.3)]
    [InlineData("gear", 0.2, 0.6)]
    [InlineData("gear", 0.8, 0.6)]
    [InlineData("gear", 1, 0.6)]
    [InlineData("gear", 1, 0.4)]
    [InlineData("D bore", 1, 0.6)]
    [InlineData("ring", 1, 1.5)]
    [InlineData("rack", 0.8, 0.6)]
    [InlineData("rack", 1, 5)]
    public void A_tab_is_as_wide_as_told(string kind, double centre, double asked)
    {
        var part = new RoutedPart(RoutedPart.Of(kind, Cutouts.None), centre);
        (Drawing drawing, ImmutableArray<string> remarks, string words) = part.Routed(new RoutePlan(StartPlace.Tip, null, 0, 4, asked));
        LineString[] pieces = RoutedPart.Lines(drawing, Operation.CutOutside);
        Assert.Equal(4, pieces.Length);
        double[] widths = [.. pieces.Select((piece, i) => piece.EndPoint.Distance(pieces[(i + 1) % pieces.Length].StartPoint) - centre)];
        Assert.All(widths, width => Assert.InRange(width, 0.2, asked + 1e-6));
        string told = Math.Abs(widths.Min() - widths.Max()) < 5e-4 ? Told(widths.Min()) : $"{Told(widths.Min())} to {Told(widths.Max())}";

        // Of a part's own contour the gap is an arc; on these lands it is as long as its chord but for a micrometre.
        Assert.Contains(centre == 0 ? "tabs " : $"4 tabs {told}", words, StringComparison.Ordinal);
        Assert.Equal(widths.Min() < asked - 0.002, remarks.Any(remark => remark.Contains(" wide: ", StringComparison.Ordinal)));

        // Nothing of the path comes nearer to another piece than its end.
        Assert.All(pieces.Index(), piece => Assert.True(IndexedFacetDistance.Distance(piece.Item, pieces[(piece.Index + 1) % pieces.Length]) - centre > widths.Min() - 0.002));

        static string Told(double width) => Words.Mm(Math.Floor((width * 1000) + 0.01) / 1000);
    }

    /// <summary>A tool that the shop moves off the part's own contour takes its diameter from the gap, too.</summary>
    [Theory]
    [InlineData("ring", 1, 1.5)]
    [InlineData("rack", 1, 2)]
    public void A_gap_in_the_parts_contour_is_wider_by_the_tool(string kind, double tool, double asked)
    {
        var part = new RoutedPart(RoutedPart.Of(kind, Cutouts.None), 0);
        Drawing drawing = Router.Of(part.Closed, part.Teeth, new RoutePlan(StartPlace.Tip, null, 0, 4, asked), 0, tool).Drawing;
        LineString[] pieces = RoutedPart.Lines(drawing, Operation.CutOutside);
        double widest = pieces.Select((piece, i) => piece.EndPoint.Distance(pieces[(i + 1) % pieces.Length].StartPoint) - tool).Max();
        Assert.Equal(asked, widest, 0.002);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void A_rack_is_held_on_every_side(double centre)
    {
        var part = new RoutedPart(RoutedPart.Of("rack"), centre);
        var rack = (RackBar)part.Teeth;
        Point[] ends = Ends(part, 4);
        double off = centre / 2;
        Assert.Contains(ends, point => Math.Abs(point.Y + rack.Data.BackHeight + off) < 1e-3 && Math.Abs(point.X) < 2);
        Assert.Contains(ends, point => Math.Abs(point.X - (rack.Length / 2) - off) < 1e-3);
        Assert.Contains(ends, point => Math.Abs(point.X + (rack.Length / 2) + off) < 1e-3);
        Assert.Contains(ends, point => point.Y > rack.TipHeight - 1e-3);

        // Three of them stand on the back and near both ends of the teeth, twelve all round, one each.
        ends = Ends(part, 3);
        Assert.Contains(ends, point => point.Y < -rack.Data.BackHeight + 1e-3);
        Assert.Contains(ends, point => point.Y > rack.TipHeight - 1e-3 && point.X > rack.Length / 4);
        Assert.Contains(ends, point => point.Y > rack.TipHeight - 1e-3 && point.X < -rack.Length / 4);
        Assert.Equal(24, Ends(part, 12).Length);
    }

    /// <summary>Tips too narrow for the tool: the back and the ends hold all the same.</summary>
    [Fact]
    public void A_rack_of_narrow_tips_is_held_by_its_sides()
    {
        var part = new RoutedPart(new Blank("part", RackBar.Create(new RackBarData(0.5, TestRacks.A, 40, 8)), 2, Cutouts.None, []), 0.2);
        (Drawing drawing, _, string words) = part.Routed(new RoutePlan(StartPlace.Tip, null, 0, 4, 3));
        Assert.All(RoutedPart.Lines(drawing, Operation.CutOutside), piece => Assert.True(piece.Length > 0.2));
        Assert.Contains("tabs ", words, StringComparison.Ordinal);
        Assert.Contains("3 mm", words, StringComparison.Ordinal);
    }

    private static Point[] Ends(RoutedPart part, int tabs) => [.. RoutedPart.Paths(part.Routed(new RoutePlan(StartPlace.Tip, null, 0, tabs, 0.4)).Drawing, Operation.CutOutside)
        .SelectMany(path => (Point[])[path.Vertices[0].Point, path.Vertices[^1].Point])];
}
