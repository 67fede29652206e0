using GearBlanks.Files.Drawings;
using GearBlanks.Files.Tests.Cli;
using GearBlanks.Files.Tests.Rolls;
using GearBlanks.Mechanisms;

namespace GearBlanks.Files.Tests.Drawings;

/// <summary>Layers: those that are not shown are not read, those that are named are read alone, and faults name theirs.</summary>
public sealed class LayerTests
{
    private const int Off = -3;
    private const int Frozen = 1;

    private static readonly string PitchCircle = Drawn.Circle(0, 0, 11, "PITCH");

    [Theory]
    [InlineData(0, Off)]
    [InlineData(Frozen, 7)]
    public void Layers_off_or_frozen_are_left_out(int flags, int colour)
    {
        DrawnGear gear = Drawn.Read(Drawn.Dxf(Drawn.Plate() + PitchCircle, Drawn.Layers(("0", 0, 7), ("pitch", flags, colour))));
        Assert.Contains("off or frozen: CIRCLE (line ", Assert.Single(gear.Remarks), StringComparison.Ordinal);
    }

    [Fact]
    public void A_layer_that_is_shown_is_read() =>
        Assert.Contains("Contours cross", Drawn.Refused(Drawn.Dxf(Drawn.Plate() + PitchCircle, Drawn.Layers(("PITCH", 0, 3)))).Message, StringComparison.Ordinal);

    [Fact]
    public void An_entity_that_is_not_shown_is_left_out() =>
        Assert.Contains("not shown", Assert.Single(Drawn.Read(Drawn.Dxf(Drawn.Plate() + PitchCircle + "60\n1\n")).Remarks), StringComparison.Ordinal);

    // A block on a layer that is off keeps what stands on other layers; on a frozen one nothing of it is shown.
    [Theory]
    [InlineData(0, Off, 2)]
    [InlineData(Frozen, 7, 1)]
    public void Blocks_follow_their_own_layers(int flags, int colour, int holes)
    {
        string block = "0\nSECTION\n2\nBLOCKS\n0\nBLOCK\n2\nHOLE\n10\n0\n20\n0\n" + Drawn.Circle(6, 6, 1, "DRILL") + "0\nENDBLK\n0\nENDSEC\n";
        string insert = "0\nINSERT\n8\nHIDDEN\n2\nHOLE\n10\n0\n20\n0\n";
        Assert.Equal(holes, Drawn.Read(Drawn.Dxf(Drawn.Plate() + insert, Drawn.Layers(("HIDDEN", flags, colour)) + block)).Holes);
    }

    [Fact]
    public void Crossing_contours_are_named_by_line_and_layer()
    {
        Problem problem = Drawn.Refused(Drawn.Dxf(Drawn.Plate() + PitchCircle));
        Assert.Contains("the one in line 16, layer 0 and the one in line 48, layer PITCH", problem.Message, StringComparison.Ordinal);
        Assert.Contains("--layer NAME reads the layer of the contour alone, layers: 0, PITCH", problem.Allowed, StringComparison.Ordinal);
    }

    [Fact]
    public void A_pitch_circle_among_open_lines_is_no_outside()
    {
        DrawnGear gear = Drawn.Read(Drawn.Dxf(Drawn.Plate() + Drawn.Circle(0, 0, 11.5, "PITCH") + Drawn.Line(0, 0, 3, 0, "PITCH")));
        Assert.Equal(4, gear.Teeth.Vertices.Length);
    }

    [Theory]
    [InlineData("0")]
    [InlineData("contour")]
    public void Named_layers_are_read_alone(string layer)
    {
        string plate = Drawn.Polygon(Drawn.Square(20), layer.ToUpperInvariant()) + Drawn.Circle(0, 0, 3, layer);
        Assert.Equal(1, Drawn.Read(Drawn.Dxf(plate + PitchCircle), layer).Holes);
    }

    [Fact]
    public void Groups_of_svg_are_read_alone_by_id_or_label()
    {
        string content = Drawn.Svg(
            "<g id='g1' xmlns:i='http://www.inkscape.org/namespaces/inkscape' i:label='Outline'><g id='g2'><rect x='-9' y='-9' width='18' height='18'/><circle r='2'/></g></g><g id='help'><rect x='-1' width='30' height='4'/></g>");
        Assert.All((string[])["g1", "g2", "outline"], name => Assert.Equal(1, Drawn.Read(content, name).Holes));
        Assert.Equal("g1", Drawn.Refused(content, "g11").Nearest);
    }

    [Fact]
    public void A_layer_that_is_not_there_is_told_with_those_that_are()
    {
        Problem problem = Drawn.Refused(Drawn.Dxf(Drawn.Plate() + PitchCircle), "pich");
        Assert.Equal(("--layer", "pich", "PITCH"), (problem.Key, problem.Value, problem.Nearest));
        Assert.Contains("0, PITCH", problem.Allowed, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{a} {b} --distance 30 --layer nowhere", "--layer = nowhere: Nothing stands on this layer")]
    [InlineData("{a} {b} --distance 30 --layer", "--layer")]
    [InlineData("--job {job} --layer 0", "A job has no layers")]
    public void Bad_layers_on_the_command_line(string words, string told)
    {
        using var pair = new DrawnPair();
        Ran ran = Ran.Of(["roll", .. words.Split(' ').Select(word => word.Replace("{a}", pair.First, StringComparison.Ordinal).Replace("{b}", pair.Second, StringComparison.Ordinal)
            .Replace("{job}", pair["pair.toml"], StringComparison.Ordinal))]);
        Assert.Equal(2, ran.Exit);
        Assert.Contains(told, ran.Errors, StringComparison.Ordinal);
    }
}
