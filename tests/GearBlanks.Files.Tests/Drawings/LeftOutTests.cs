using GearBlanks.Files.Drawings;
using GearBlanks.Mechanisms;

namespace GearBlanks.Files.Tests.Drawings;

/// <summary>What a drawing holds beside the contour is left out, and it is said what and where.</summary>
public sealed class LeftOutTests
{
    public static TheoryData<string, string> Pointlike { get; } = new()
    {
        { Drawn.Line(4, 4, 4, 4), "LINE" },
        { Drawn.Line(10, 10, 10, 10), "LINE" },
        { Drawn.Line(4, 4, 4, 4, "NOTES"), "LINE" },
        { "0\nLINE\n8\n0\n10\n4\n20\n4\n30\n0\n11\n4\n21\n4\n31\n9\n", "LINE" },
        { Drawn.Polygon([(4, 4), (4, 4)]), "LWPOLYLINE" },
        { Drawn.Circle(4, 4, 1e-9), "CIRCLE" },
        { "0\nELLIPSE\n8\n0\n10\n4\n20\n4\n11\n0\n21\n0\n40\n0.5\n", "ELLIPSE" },
        { Drawn.Line(4, 4, 4.003, 4), "LINE" },
    };

    [Theory]
    [MemberData(nameof(Pointlike))]
    public void Entities_without_length(string entity, string type)
    {
        DrawnGear gear = Drawn.Read(Drawn.Dxf(Drawn.Plate() + entity));
        Assert.Equal(4, gear.Teeth.Vertices.Length);
        string remark = Assert.Single(gear.Remarks);
        Assert.Contains($"{type} (line 48, layer ", remark, StringComparison.Ordinal);
    }

    [Fact]
    public void On_the_contour_itself_too()
    {
        (double X, double Y)[] square = Drawn.Square(20);
        DrawnGear gear = Drawn.Read(Drawn.Dxf(Drawn.Lines(square) + Drawn.Circle(0, 0, 3) + Drawn.Line(square[0].X, square[0].Y, square[0].X, square[0].Y)));
        Assert.Equal(4, gear.Teeth.Vertices.Length);
    }

    [Fact]
    public void A_drawing_of_nothing_else_says_so()
    {
        Problem problem = Drawn.Refused(Drawn.Dxf(Drawn.Circle(0, 0, 1e-12) + Drawn.Circle(0, 0, 1e-13)));
        Assert.Contains("There is no closed contour", problem.Message, StringComparison.Ordinal);
        Assert.Contains("CIRCLE (2, the first in line 16, layer 0)", problem.Allowed, StringComparison.Ordinal);
    }

    [Fact]
    public void Kinds_that_are_no_contours_by_their_place()
    {
        DrawnGear gear = Drawn.Read(Drawn.Dxf(Drawn.Plate() + "0\nHATCH\n8\nFILL\n0\nHATCH\n8\nFILL\n0\nTEXT\n8\nWORDS\n"));
        Assert.Equal(["Left out, because they are no contours: HATCH (2, the first in line 48, layer FILL), TEXT (line 56, layer WORDS)."], gear.Remarks);
    }

    [Fact]
    public void A_contour_drawn_twice_is_read_once()
    {
        DrawnGear gear = Drawn.Read(Drawn.Dxf(Drawn.Plate() + Drawn.Circle(0, 0, 3)));
        Assert.Equal(1, gear.Holes);
        Assert.Contains("the contour in line 48, layer 0 lies upon the one in line 38, layer 0", Assert.Single(gear.Remarks), StringComparison.Ordinal);
    }

    [Fact]
    public void A_hole_in_a_hole_is_still_refused() =>
        Assert.Contains("two parts", Drawn.Refused(Drawn.Dxf(Drawn.Plate() + Drawn.Circle(0, 0, 2.99))).Message, StringComparison.Ordinal);

    [Fact]
    public void What_lies_too_far_out_is_refused_by_its_kind()
    {
        Problem problem = Drawn.Refused(Drawn.Dxf(Drawn.Plate(1e150)));
        Assert.Equal(("LWPOLYLINE", 16), (problem.Value, problem.Place.Line));
    }
}
