using System.Text;
using GearBlanks.Cutting;
using GearBlanks.Files.Svg;
using GearBlanks.Files.Tests.Readers;

namespace GearBlanks.Files.Tests.Svg;

/// <summary>Readers that were not written here find the shapes at true size, and the tests notice where they do not.</summary>
public class SvgReadersTests
{
    public static TheoryData<string> Cases { get; } = [.. Samples.All.Keys];

    [Theory, MemberData(nameof(Cases))]
    public void Librsvg_reads_what_was_drawn(string drawing) => Assert.Empty(Read(Librsvg.Compare, drawing));

    [Theory, MemberData(nameof(Cases))]
    public void Inkscape_reads_what_was_drawn(string drawing) => Assert.Empty(Read(Inkscape.Compare, drawing));

    [Fact]
    public void Arcs_turned_inside_out_are_noticed()
    {
        string spoiled = Plate().Replace(" 0 0 0 ", " 0 0 1 ", StringComparison.Ordinal);
        Assert.Contains(Spoiled(Librsvg.Compare, spoiled), d => d.StartsWith("path on outside, right", StringComparison.Ordinal));
        Assert.Contains(Spoiled(Inkscape.Compare, spoiled), d => d.StartsWith("outside, right", StringComparison.Ordinal));
    }

    [Fact]
    public void Pixels_in_place_of_millimetres_are_noticed()
    {
        string spoiled = Plate().Replace("mm\"", "\"", StringComparison.Ordinal);
        Assert.Contains(Spoiled(Librsvg.Compare, spoiled), d => d.StartsWith("page width", StringComparison.Ordinal));
        Assert.Contains(Spoiled(Inkscape.Compare, spoiled), d => d.StartsWith("outside, right", StringComparison.Ordinal));
    }

    [Fact]
    public void A_hundredth_of_a_millimetre_is_noticed()
    {
        string spoiled = Plate().Replace("A3 3 0 0 0 -20 -19L-20 9", "A3 3 0 0 0 -20.01 -19L-20.01 9", StringComparison.Ordinal);
        Assert.Contains(Spoiled(Librsvg.Compare, spoiled), d => d.StartsWith("path on outside, left", StringComparison.Ordinal));
        Assert.Contains(Spoiled(Inkscape.Compare, spoiled), d => d.StartsWith("outside, left", StringComparison.Ordinal));
    }

    [Fact]
    public void A_file_that_is_cut_off_is_noticed()
    {
        string spoiled = Plate()[..^60];
        Assert.NotEmpty(Spoiled(Librsvg.Compare, spoiled));
        Assert.NotEmpty(Spoiled(Inkscape.Compare, spoiled));
    }

    private static IReadOnlyList<string> Read(Func<string, Drawing, IReadOnlyList<string>> reader, string drawing)
    {
        using MadeFile file = new("drawn.svg", SvgWriter.Write(Samples.All[drawing]));
        return reader(file.FilePath, Samples.All[drawing]);
    }

    private static IReadOnlyList<string> Spoiled(Func<string, Drawing, IReadOnlyList<string>> reader, string content)
    {
        using MadeFile file = new("spoiled.svg", content);
        Assert.NotEqual(Plate(), content);
        return reader(file.FilePath, Samples.Plate);
    }

    private static string Plate() => Encoding.UTF8.GetString(SvgWriter.Write(Samples.Plate));
}
