using GearBlanks.Curves;
using GearBlanks.Files.Drawings;
using GearBlanks.Mechanisms;

namespace GearBlanks.Files.Tests.Drawings;

/// <summary>SVG as other programs write it: parts used again, drawings in drawings, round corners, what is not displayed.</summary>
public sealed class SvgDrawingTests
{
    private const string Disc = "<rect x='-9' y='-9' width='18' height='18'/><circle r='2'/>";

    [Theory]
    [InlineData("<defs><g id='a'>" + Disc + "</g></defs><use href='#a' x='5' y='6'/>", 5, -6)]
    [InlineData("<use href='#a' x='5' y='6'/><symbol id='a'>" + Disc + "</symbol>", 5, -6)]
    [InlineData("<defs><g id='a'>" + Disc + "</g><g id='b'><use href='#a' x='1'/></g></defs><use xmlns:x='http://www.w3.org/1999/xlink' x:href='#b' transform='rotate(90)' x='4'/>", 0, -5)]
    [InlineData("<symbol id='a' viewBox='-18 -18 36 36'><rect x='-18' y='-18' width='36' height='36'/><circle r='4'/></symbol><use href='#a' x='3' width='18' height='18'/>", 12, -9)]
    [InlineData("<svg x='5' y='1' width='18' height='18' viewBox='-9 -9 18 18'>" + Disc + "</svg>", 14, -10)]
    [InlineData("<svg x='5' y='1' width='28' height='18' viewBox='-9 -9 18 18' preserveAspectRatio='xMaxYMid'>" + Disc + "</svg>", 24, -10)]
    [InlineData("<svg x='5'>" + Disc + "</svg>", 5, 0)]
    public void Parts_stand_where_they_are_used(string content, double x, double y)
    {
        DrawnGear gear = Drawn.Read(Drawn.Svg(content));
        Assert.Equal(0, gear.Centre.DistanceTo(new Point(x, y)), 1e-9);
        Assert.All(gear.Teeth.Vertices, vertex => Assert.Equal(9 * Math.Sqrt(2), vertex.Point.Radius, 1e-9));
    }

    [Theory]
    [InlineData("<circle r='5' display='none'/>")]
    [InlineData("<circle r='5' style='fill:red; display : none'/>")]
    [InlineData("<g style='display:none'><g><circle r='5'/></g></g>")]
    [InlineData("<g visibility='hidden'><circle r='5'/></g>")]
    [InlineData("<style>/* {} */ .away, .gone { fill:none; display: none !important }</style><circle class='x gone' r='5'/>")]
    [InlineData("<style>#far{display:none}</style><circle id='far' r='5'/>")]
    public void What_is_not_displayed_is_left_out(string content)
    {
        DrawnGear gear = Drawn.Read(Drawn.Svg(Disc + content));
        Assert.Equal(1, gear.Holes);
        Assert.Contains("not displayed", Assert.Single(gear.Remarks), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("<style>.x{display:none}</style><circle class='x' r='2' style='display:inline'/>")]
    [InlineData("<g visibility='hidden'><circle r='2' visibility='visible'/></g>")]
    [InlineData("<style>.y{display:none}</style><circle class='x' r='2'/>")]
    public void What_is_displayed_after_all_is_read(string content) => Assert.Equal(1, Drawn.Read(Drawn.Svg("<rect x='-9' y='-9' width='18' height='18'/>" + content)).Holes);

    [Fact]
    public void A_style_sheet_that_is_not_followed_is_told() => Assert.Contains(
        "hides something by more than a class", Assert.Single(Drawn.Read(Drawn.Svg("<style>g > .x{display:none}</style>" + Disc)).Remarks), StringComparison.Ordinal);

    // Area of a rectangle less what its corners lack: (4 - pi) rx ry.
    [Theory]
    [InlineData("rx='2'", 2, 2)]
    [InlineData("ry='2'", 2, 2)]
    [InlineData("rx='3' ry='1'", 3, 1)]
    [InlineData("rx='30' ry='1'", 6, 1)]
    [InlineData("", 0, 0)]
    [InlineData("rx='0' ry='2'", 0, 0)]
    public void Rectangles_with_round_corners(string corners, double width, double height)
    {
        DrawnGear gear = Drawn.Read(Drawn.Svg($"<rect x='-6' y='-5' width='12' height='10' {corners}/><circle r='2'/>"));
        double area = Enumerable.Range(0, gear.Teeth.Vertices.Length).Sum(i => AreaOf(PathPiece.At(gear.Teeth, i)));
        Assert.Equal(120 - ((4 - Math.PI) * width * height), area, 0.01);
    }

    [Fact]
    public void Lengths_may_have_units() =>
        Assert.Equal(9, Drawn.Read("<svg xmlns='http://www.w3.org/2000/svg' width='100'><rect x='-9mm' y='-0.9cm' width='18mm' height='68.0314960629921px'/><circle r='0.2cm'/></svg>").Teeth.Vertices.Max(vertex => vertex.Point.Y), 1e-9);

    [Fact]
    public void A_picture_in_the_file_is_no_other_file() => Assert.Contains(
        "image (line 2)", Assert.Single(Drawn.Read(Drawn.Svg(Disc + "<image href='data:image/png;base64,AAAA' width='3' height='3'/>")).Remarks), StringComparison.Ordinal);

    [Theory]
    [InlineData("<circle r='-3'/>", "r", "-3", "below 0")]
    [InlineData("<rect width='-3' height='2'/>", "width", "-3", "below 0")]
    [InlineData("<circle r='3furlong'/>", "r", "3furlong", "cannot be read")]
    [InlineData("<circle r='1e308'/>", "", "circle", "farther out")]
    [InlineData("<circle r='1e200' cx='-1e200'/>", "", "circle", "farther out")]
    [InlineData("<path d='M0 0L1 1X 4'/>", "d", "M0 0L1 1X <here>  4", "A number is missing or wrong here")]
    [InlineData("<path d='M0 0 L1'/>", "d", "M0 0 L1 <here> ", "A number is missing or wrong here")]
    [InlineData("<polygon points='0 0 4 x'/>", "points", "0 0 4  <here> x", "A number is missing or wrong here")]
    [InlineData("<use href='#disk'/><g id='disc'/>", "href", "#disk", "There is no element of this name")]
    [InlineData("<g id='a'><use href='#a'/></g>", "href", "#a", "Uses of elements stand in uses without end")]
    [InlineData("<use href='data:image/png,x'/>", "href", "data:image/png,x", "There is no element of this name")]
    [InlineData("<image href='data:text/html,x'/>", "", "data:text/html,x", "refers to another file")]
    public void Faults_are_told_by_key_and_value(string content, string key, string value, string message)
    {
        Problem problem = Drawn.Refused(Drawn.Svg(Disc + content));
        Assert.Equal((key, value, 2), (problem.Key, problem.Value, problem.Place.Line));
        Assert.Contains(message, problem.Message, StringComparison.Ordinal);
        Assert.NotNull(problem.Allowed);
    }

    [Fact]
    public void The_page_s_size_must_be_read()
    {
        Problem problem = Drawn.Refused("<svg xmlns='http://www.w3.org/2000/svg' width='60furlong' height='60mm' viewBox='0 0 9 9'/>");
        Assert.Equal(("width", "60furlong"), (problem.Key, problem.Value));
    }

    // Ten uses of ten uses of ... : ten thousand are read, not ten to the tenth.
    [Fact]
    public void Uses_that_multiply_end()
    {
        string levels = string.Concat(Enumerable.Range(1, 10).Select(level => $"<g id='u{level}'>{string.Concat(Enumerable.Repeat($"<use href='#u{level - 1}'/>", 10))}</g>"));
        Problem problem = Drawn.Refused(Drawn.Svg($"<defs><g id='u0'/>{levels}</defs><use href='#u10'/>"));
        Assert.Contains("Uses of elements stand in uses without end", problem.Message, StringComparison.Ordinal);
    }

    private static double AreaOf(PathPiece piece)
    {
        double sweep = 4 * Math.Atan(piece.Bulge);
        double chord = ((piece.From.X * piece.To.Y) - (piece.From.Y * piece.To.X)) / 2;
        return piece.IsLine ? chord : chord + (piece.Radius * piece.Radius * (sweep - Math.Sin(sweep)) / 2);
    }
}
