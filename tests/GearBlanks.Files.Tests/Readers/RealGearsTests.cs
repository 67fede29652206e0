using GearBlanks.Cutting;
using GearBlanks.Files.Dxf;
using GearBlanks.Files.Svg;

namespace GearBlanks.Files.Tests.Readers;

/// <summary>Readers that were not written here find real gears at true size.</summary>
public class RealGearsTests
{
    public static TheoryData<string, DxfVersion> DxfCases { get; } =
    [
        .. RealGears.All.Keys.Select(name => (name, DxfVersion.R2000)),
        ("tide pinion", DxfVersion.R12), ("moon wheel", DxfVersion.R12), ("undercut", DxfVersion.R12), ("small", DxfVersion.R12), ("tabbed", DxfVersion.R12),
    ];

    public static TheoryData<string> SvgCases { get; } = [.. RealGears.All.Keys];

    [Fact]
    public void All_eight_gears_of_the_dial_are_among_them() => Assert.Equal(14, RealGears.All.Count);

    [Theory, MemberData(nameof(DxfCases))]
    public void Dxf_readers_read_the_gear(string gear, DxfVersion version)
    {
        Drawing drawing = RealGears.All[gear];
        using MadeFile file = new("drawn.dxf", DxfWriter.Write(drawing, version));
        Assert.Empty(Ezdxf.Compare(file.FilePath, drawing, version));
        Assert.Empty(Dxflib.Compare(file.FilePath, drawing, version));
        Assert.Empty(Gdal.Compare(file.FilePath, drawing, version));
        Assert.Empty(LibreCad.Compare(file.FilePath, drawing, version));
    }

    [Theory, MemberData(nameof(SvgCases))]
    public void Svg_readers_read_the_gear(string gear)
    {
        Drawing drawing = RealGears.All[gear];
        using MadeFile file = new("drawn.svg", SvgWriter.Write(drawing));
        Assert.Empty(Librsvg.Compare(file.FilePath, drawing));
        Assert.Empty(Inkscape.Compare(file.FilePath, drawing));
    }
}
