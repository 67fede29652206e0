using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using GearBlanks.Cutting;
using GearBlanks.Files.Dxf;
using GearBlanks.Files.Tests.Readers;

namespace GearBlanks.Files.Tests.Dxf;

/// <summary>Readers that were not written here understand what was drawn, and the tests notice where they do not.</summary>
public partial class DxfReadersTests
{
    public static MatrixTheoryData<string, DxfVersion> Cases { get; } = new(Samples.All.Keys, [DxfVersion.R2000, DxfVersion.R12]);

    [Theory, MemberData(nameof(Cases))]
    public void Ezdxf_reads_what_was_drawn(string drawing, DxfVersion version) => Assert.Empty(Read(Ezdxf.Compare, drawing, version));

    [Theory, MemberData(nameof(Cases))]
    public void Dxflib_reads_what_was_drawn(string drawing, DxfVersion version) => Assert.Empty(Read(Dxflib.Compare, drawing, version));

    [Theory, MemberData(nameof(Cases))]
    public void Gdal_reads_what_was_drawn(string drawing, DxfVersion version) => Assert.Empty(Read(Gdal.Compare, drawing, version));

    [Theory, MemberData(nameof(Cases))]
    public void LibreCad_draws_what_was_drawn(string drawing, DxfVersion version) => Assert.Empty(Read(LibreCad.Compare, drawing, version));

    [Theory]
    [InlineData(DxfVersion.R2000)]
    [InlineData(DxfVersion.R12)]
    public void Turned_bulges_are_noticed(DxfVersion version)
    {
        string spoiled = BulgeTag().Replace(Plate(version), "$1-$2").Replace("--", "", StringComparison.Ordinal);
        Assert.Contains(Spoiled(Ezdxf.Compare, spoiled, version), d => d.Contains("on outside, area", StringComparison.Ordinal));
        Assert.Contains(Spoiled(Dxflib.Compare, spoiled, version), d => d.StartsWith("bulge", StringComparison.Ordinal));
        Assert.Contains(Spoiled(Gdal.Compare, spoiled, version), d => d.StartsWith("outside, right", StringComparison.Ordinal));
        Assert.Contains(Spoiled(LibreCad.Compare, spoiled, version), d => d.StartsWith("drawn width", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(DxfVersion.R2000)]
    [InlineData(DxfVersion.R12)]
    public void Another_size_is_noticed(DxfVersion version)
    {
        string spoiled = CoordinateTag().Replace(Plate(version), Larger);
        Assert.Contains(Spoiled(Ezdxf.Compare, spoiled, version), d => d.Contains("on outside, right", StringComparison.Ordinal));
        Assert.Contains(Spoiled(Dxflib.Compare, spoiled, version), d => d.Contains("on outside, right", StringComparison.Ordinal));
        Assert.Contains(Spoiled(Gdal.Compare, spoiled, version), d => d.StartsWith("outside, right", StringComparison.Ordinal));
        Assert.Contains(Spoiled(LibreCad.Compare, spoiled, version), d => d.StartsWith("drawn width", StringComparison.Ordinal));
    }

    [Fact]
    public void Another_unit_is_noticed()
    {
        string spoiled = Plate(DxfVersion.R2000).Replace("$INSUNITS\r\n 70\r\n4\r\n", "$INSUNITS\r\n 70\r\n1\r\n", StringComparison.Ordinal);
        Assert.Contains("unit: drawn 4, read 1", Spoiled(Ezdxf.Compare, spoiled, DxfVersion.R2000));
        Assert.Contains("unit: drawn 4, read 1", Spoiled(Dxflib.Compare, spoiled, DxfVersion.R2000));
        Assert.Contains(Spoiled(LibreCad.Compare, spoiled, DxfVersion.R2000), d => d.StartsWith("drawn width", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(DxfVersion.R2000)]
    [InlineData(DxfVersion.R12)]
    public void An_open_outline_is_noticed(DxfVersion version)
    {
        string spoiled = Plate(version).Replace(" 70\r\n1\r\n", " 70\r\n0\r\n", StringComparison.Ordinal);
        Assert.Contains("shape 4 on outside, closed: drawn True, read False", Spoiled(Ezdxf.Compare, spoiled, version));
        Assert.Contains("shape 4 on outside, closed: drawn True, read False", Spoiled(Dxflib.Compare, spoiled, version));
    }

    [Theory]
    [InlineData(DxfVersion.R2000)]
    [InlineData(DxfVersion.R12)]
    public void A_layer_that_is_not_declared_is_noticed(DxfVersion version)
    {
        string spoiled = Plate(version).Replace("  2\r\noutside\r\n", "  2\r\ninside\r\n", StringComparison.Ordinal);
        Assert.Contains("undeclared layer: outside", Spoiled(Ezdxf.Compare, spoiled, version));
        Assert.Contains(Spoiled(Dxflib.Compare, spoiled, version), d => d.StartsWith("layers", StringComparison.Ordinal));
    }

    [Fact]
    public void A_file_that_is_cut_off_is_noticed()
    {
        string spoiled = Plate(DxfVersion.R2000);
        spoiled = spoiled[..spoiled.IndexOf("AcDbPolyline", StringComparison.Ordinal)];
        Assert.NotEmpty(Spoiled(Ezdxf.Compare, spoiled, DxfVersion.R2000));
        Assert.NotEmpty(Spoiled(Dxflib.Compare, spoiled, DxfVersion.R2000));
        Assert.NotEmpty(Spoiled(Gdal.Compare, spoiled, DxfVersion.R2000));
        Assert.NotEmpty(Spoiled((file, drawing, _) => LibreCad.Compare(file, drawing, secondsAllowed: 3), spoiled, DxfVersion.R2000));
    }

    [Fact]
    public void Rubbish_is_noticed()
    {
        const string Rubbish = "The tide turns at noon.\r\n";
        Assert.NotEmpty(Spoiled(Ezdxf.Compare, Rubbish, DxfVersion.R2000));
        Assert.NotEmpty(Spoiled(Gdal.Compare, Rubbish, DxfVersion.R2000));
        Assert.NotEmpty(Spoiled((file, drawing, _) => LibreCad.Compare(file, drawing, secondsAllowed: 3), Rubbish, DxfVersion.R2000));
    }

    [Fact]
    public void A_missing_reader_is_an_error() =>
        Assert.Throws<InvalidOperationException>(() => ReaderProcess.Run("no-reader-of-this-name"));

    private static IReadOnlyList<string> Read(Func<string, Drawing, DxfVersion, IReadOnlyList<string>> reader, string drawing, DxfVersion version)
    {
        using MadeFile file = new("drawn.dxf", DxfWriter.Write(Samples.All[drawing], version));
        return reader(file.FilePath, Samples.All[drawing], version);
    }

    private static IReadOnlyList<string> Spoiled(Func<string, Drawing, DxfVersion, IReadOnlyList<string>> reader, string content, DxfVersion version)
    {
        using MadeFile file = new("spoiled.dxf", content);
        Assert.NotEqual(Plate(version), content);
        return reader(file.FilePath, Samples.Plate, version);
    }

    private static string Plate(DxfVersion version) => Encoding.ASCII.GetString(DxfWriter.Write(Samples.Plate, version));

    private static string Larger(Match tag) =>
        tag.Groups[1].Value + (1.01 * double.Parse(tag.Groups[2].Value, CultureInfo.InvariantCulture)).ToString("F9", CultureInfo.InvariantCulture);

    [GeneratedRegex(@"(\n 42\r\n)(-?[\d.]+)(?=\r\n (?:10|\s0)|\r\n  0)")]
    private static partial Regex BulgeTag();

    [GeneratedRegex(@"(\n (?:10|20|40)\r\n)(-?[\d.]+)")]
    private static partial Regex CoordinateTag();
}
