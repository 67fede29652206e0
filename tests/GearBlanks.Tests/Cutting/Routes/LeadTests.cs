using System.Collections.Immutable;
using GearBlanks.Blanks;
using GearBlanks.Curves;
using GearBlanks.Cutting;
using GearBlanks.Cutting.Routes;
using GearBlanks.Findings;

namespace GearBlanks.Tests.Cutting.Routes;

/// <summary>Leads of every kind and length against the part's polygon: a tool's centre keeps its radius, a contour's lead stays in the scrap.</summary>
public sealed class LeadTests
{
    private const double Slack = 0.002;
    private static readonly double[] Lengths = [0.1, 0.5, 3, 10, 50];

    /// <summary>The part, the tool whose centre runs on its contours, the tool that the shop moves off them; 0 for none.</summary>
    public static TheoryData<string, double, double> Grid
    {
        get
        {
            var grid = new TheoryData<string, double, double>();
            foreach (string part in (string[])["gear", "ring", "rack", "D bore", "windows"])
            {
                foreach ((double centre, double tool) in ((double, double)[])[(0, 0), (0, 1), (0.2, 0), (0.8, 0), (1, 0)])
                {
                    grid.Add(part, centre, tool);
                }
            }

            return grid;
        }
    }

    [Theory]
    [MemberData(nameof(Grid))]
    public void No_lead_cuts_the_part(string kind, double centre, double tool)
    {
        var part = new RoutedPart(RoutedPart.Of(kind), centre);
        foreach (StartPlace start in (StartPlace[])[StartPlace.Tip, StartPlace.Root])
        {
            foreach (LeadForm form in (LeadForm[])[LeadForm.Line, LeadForm.Arc])
            {
                foreach (double length in Lengths)
                {
                    var plan = new RoutePlan(start, form, length, start == StartPlace.Tip && form == LeadForm.Line ? 3 : 0, 0.3);
                    (Drawing drawing, _, _) = part.Routed(plan, tool);
                    (PathPiece Lead, Point Join)[] leads = [.. LeadsOf(drawing, part.Closed)];
                    Assert.NotEmpty(leads);
                    foreach ((PathPiece lead, Point join) in leads)
                    {
                        Point worst = RoutedPart.Dense(lead).MinBy(part.Room);
                        Assert.True(
                            part.Room(worst) >= (centre / 2) - Slack,
                            $"{plan}: the lead from {lead.From} to {join} comes to {part.Room(worst)} mm at {worst}");
                    }
                }
            }
        }
    }

    /// <summary>A hole of 4 mm in a gear: longer leads would come out in the scrap round the gear, or in the sheet beyond.</summary>
    [Theory]
    [InlineData(LeadForm.Line, 5)]
    [InlineData(LeadForm.Line, 10)]
    [InlineData(LeadForm.Line, 20)]
    [InlineData(LeadForm.Arc, 4)]
    [InlineData(LeadForm.Arc, 7)]
    [InlineData(LeadForm.Arc, 20)]
    [InlineData(LeadForm.Arc, 50)]
    public void A_lead_in_a_bore_ends_in_the_bore_and_the_shortening_is_told(LeadForm form, double length)
    {
        var part = new RoutedPart(RoutedPart.Of("gear"), 0);
        (Drawing drawing, ImmutableArray<string> remarks, string words) = part.Routed(new RoutePlan(StartPlace.Tip, form, length, 0, 0));
        ArcPath bore = Assert.Single(RoutedPart.Paths(drawing, Operation.CutHoles));
        Assert.Equal(6, PathPiece.CountIn(bore));
        Assert.All(Enumerable.Range(0, PathPiece.CountIn(bore)).SelectMany(i => RoutedPart.Dense(PathPiece.At(bore, i))), point => Assert.True(point.Radius < 2 + 1e-9));
        Assert.Contains(remarks, remark => remark.StartsWith("A lead in a hole is shortened to ", StringComparison.Ordinal));
        Assert.Contains($" to {Words.Mm(length)}", words, StringComparison.Ordinal);
    }

    /// <summary>The corners of a D have no room for a tool's arc; the middle of its round has, for the way in and the way out alike.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(0.8)]
    public void A_bore_with_a_flat_starts_on_its_round(double centre)
    {
        var part = new RoutedPart(RoutedPart.Of("D bore"), centre);
        (Drawing drawing, ImmutableArray<string> remarks, _) = part.Routed(new RoutePlan(StartPlace.Tip, LeadForm.Arc, 0.25, 0, 0));
        Assert.Empty(remarks);
        ArcPath bore = RoutedPart.Paths(drawing, Operation.CutHoles).MinBy(path => path.Vertices[1].Point.Radius)!;
        (PathPiece way, PathPiece back) = (PathPiece.At(bore, 0), PathPiece.At(bore, bore.Vertices.Length - 2));
        Assert.Equal(0.25, way.Radius, 1e-9);
        Assert.Equal(0.25, back.Radius, 1e-9);
        Assert.Equal(2.5 - (centre / 2), way.To.Radius, 2 * RoutedPart.Tolerance);
    }

    [Fact]
    public void What_is_left_out_is_told_with_its_reason()
    {
        var part = new RoutedPart(RoutedPart.Of("gear", new Cutouts { Holes = [new Circle(default, 0.2)] }), 0.3);
        (_, ImmutableArray<string> remarks, _) = part.Routed(new RoutePlan(StartPlace.Tip, LeadForm.Line, 1, 0, 0));
        Assert.Equal(["A lead in a hole is left out: even one of 0.125 mm would come closer than 0.05 mm to the tool's path round the part again."], remarks);
    }

    // A lead is a first or last piece whose far end is off the closed contours.
    private static IEnumerable<(PathPiece Lead, Point Join)> LeadsOf(Drawing drawing, Drawing closed)
    {
        foreach (Operation operation in (Operation[])[Operation.CutHoles, Operation.CutOutside])
        {
            DrawingLayer layer = closed.Layers.Single(one => one.Operation == operation);
            Curve[] contours = [.. layer.Paths.SelectMany(path => Enumerable.Range(0, PathPiece.CountIn(path)).Select(i => PathPiece.At(path, i).AsCurve())),
                .. layer.Circles.Select(circle => new Arc(circle.Centre, circle.Radius, 0, 2 * Math.PI))];
            foreach (ArcPath path in RoutedPart.Paths(drawing, operation).Where(path => !path.Closed))
            {
                (PathPiece first, PathPiece last) = (PathPiece.At(path, 0), PathPiece.At(path, path.Vertices.Length - 2));
                if (IsOff(first.From))
                {
                    yield return (first, first.To);
                }

                if (IsOff(last.To))
                {
                    yield return (last, last.From);
                }
            }

            bool IsOff(Point point) => contours.Min(curve => LineArcDistance.From(point, curve)) > 0.01;
        }
    }
}
