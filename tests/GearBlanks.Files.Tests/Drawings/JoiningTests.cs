using GearBlanks.Curves;
using GearBlanks.Files.Drawings;

namespace GearBlanks.Files.Tests.Drawings;

/// <summary>Ends are joined where they meet, exactly first, and within 0.005 mm only where they stay open.</summary>
public sealed class JoiningTests
{
    // A flower whose pieces may be shorter than the widest joint.
    private static (double X, double Y)[] Flower(int points, double radius) => [.. Enumerable.Range(0, points).Select(i => 2 * Math.PI * i / points)
        .Select(angle => Point.Polar(radius * (1 + (0.05 * Math.Cos(20 * angle))), angle)).Select(point => (point.X, point.Y))];

    [Fact]
    public void Pieces_shorter_than_the_joint()
    {
        (double X, double Y)[] flower = Flower(3000, 1.1);
        Assert.True(2 * Math.PI * 1.1 / 3000 < Chains.Joint);
        DrawnGear gear = Drawn.Read(Drawn.Dxf(Drawn.Lines(flower) + Drawn.Circle(0, 0, 0.5)));
        Assert.Equal(3000, gear.Teeth.Vertices.Length);
    }

    [Theory]
    [InlineData(0.004, true)]
    [InlineData(0.0009, true)]
    [InlineData(0.006, false)]
    public void Gaps_are_bridged_up_to_the_joint(double gap, bool isBridged)
    {
        (double X, double Y)[] square = Drawn.Square(20);
        string lines = Drawn.Line(-10, -10, 10 - gap, -10) + Drawn.Line(10, -10, 10, 10) + Drawn.Line(-10, 10, 10, 10) + Drawn.Line(-10, 10, -10, -10);
        string content = Drawn.Dxf(lines + Drawn.Circle(0, 0, 3));
        if (isBridged)
        {
            Assert.Equal(square.Length, Drawn.Read(content).Teeth.Vertices.Length);
        }
        else
        {
            Assert.Contains("This contour is open: it begins at (10, -10) and ends at (9.994, -10)", Drawn.Refused(content).Message, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Three_lines_that_meet_are_refused_only_on_the_contour_s_layer()
    {
        string lines = Drawn.Lines(Drawn.Square(20)) + Drawn.Circle(0, 0, 3);
        Assert.Contains("At (10, -10) mm three lines meet", Drawn.Refused(Drawn.Dxf(lines + Drawn.Line(10, -10, 20, -10))).Message, StringComparison.Ordinal);
        string letter = Drawn.Line(4, 4, 5, 4, "TEXT") + Drawn.Line(5, 4, 6, 4, "TEXT") + Drawn.Line(5, 4, 5, 6, "TEXT");
        Assert.Contains("lettering", Assert.Single(Drawn.Read(Drawn.Dxf(lines + letter)).Remarks), StringComparison.Ordinal);
    }

    // What was joined stroke by stroke with a look at all before took minutes.
    [Fact]
    public void A_hundred_thousand_lines()
    {
        (double X, double Y)[] flower = Flower(100_000, 200);
        Assert.Equal(100_000, Drawn.Read(Drawn.Dxf(Drawn.Lines(flower) + Drawn.Circle(0, 0, 3))).Teeth.Vertices.Length);
    }
}
