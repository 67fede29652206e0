using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using GearBlanks.Curves;
using GearBlanks.Cutting;
using GearBlanks.Files.Dxf;
using GearBlanks.Files.Tests.Readers;

namespace GearBlanks.Files.Tests.Dxf;

/// <summary>What lenient readers forgive and strict ones do not. Source: the DXF references of AutoCAD R12 and 2000 (Autodesk), from memory.</summary>
public partial class DxfWriterTests
{
    [Theory]
    [InlineData(DxfVersion.R2000)]
    [InlineData(DxfVersion.R12)]
    public void Lines_are_ascii_and_end_in_carriage_return_and_line_feed(DxfVersion version)
    {
        byte[] bytes = DxfWriter.Write(Samples.Plate, version);
        Assert.All(bytes, b => Assert.True(b is (byte)'\r' or (byte)'\n' or (>= 32 and < 127)));
        string text = Encoding.ASCII.GetString(bytes);
        Assert.Equal(text.Count(c => c == '\n'), text.Split("\r\n").Length - 1);
        Assert.Equal(text.Count(c => c == '\r'), text.Count(c => c == '\n'));
        Assert.EndsWith("  0\r\nEOF\r\n", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(DxfVersion.R2000)]
    [InlineData(DxfVersion.R12)]
    public void Reals_are_fixed_point_and_never_negative_zero(DxfVersion version)
    {
        (int Code, string Value)[] reals = [.. Tags(Samples.Wheel, version).Where(tag => tag.Code is >= 10 and < 60 or >= 140 and < 150)];
        Assert.True(reals.Length > 300);
        Assert.All(reals, tag => Assert.Matches(@"^-?\d+\.\d{1,12}$", tag.Value));
        Assert.All(reals, tag => Assert.DoesNotMatch(@"^-0\.0+$", tag.Value));
    }

    [Fact]
    public void R2000_has_its_sections_and_tables_in_order()
    {
        (int Code, string Value)[] tags = Tags(Samples.Plate, DxfVersion.R2000);
        Assert.Equal("HEADER CLASSES TABLES BLOCKS ENTITIES OBJECTS", Named(tags, "SECTION"));
        Assert.Equal("VPORT LTYPE LAYER STYLE VIEW UCS APPID DIMSTYLE BLOCK_RECORD", Named(tags, "TABLE"));
        int objects = Array.IndexOf(tags, (2, "OBJECTS"));
        Assert.Equal((0, "DICTIONARY"), tags[objects + 1]);
        Assert.Equal((330, "0"), tags[objects + 3]);
        Assert.Equal(["ACAD_GROUP", "ACAD_LAYOUT"], tags[objects..].Where(tag => tag.Code == 3).Take(2).Select(tag => tag.Value));
    }

    [Fact]
    public void R12_has_its_sections_and_tables_and_nothing_later()
    {
        (int Code, string Value)[] tags = Tags(Samples.Plate, DxfVersion.R12);
        Assert.Equal("HEADER TABLES BLOCKS ENTITIES", Named(tags, "SECTION"));
        Assert.Equal("VPORT LTYPE LAYER STYLE VIEW UCS APPID DIMSTYLE", Named(tags, "TABLE"));
        Assert.All(tags, tag => Assert.InRange(tag.Code, 0, 79));
        Assert.Equal(["$ACADVER", "$EXTMIN", "$EXTMAX"], tags.Where(tag => tag.Code == 9).Select(tag => tag.Value));
        Assert.DoesNotContain("LWPOLYLINE", tags.Select(tag => tag.Value));
    }

    [Fact]
    public void Each_R12_polyline_announces_its_vertices_and_ends_them()
    {
        (int Code, string Value)[] tags = Tags(Samples.Plate, DxfVersion.R12);
        string types = string.Concat(tags.Where(tag => tag.Code == 0).Select(tag => tag.Value switch { "POLYLINE" => "P", "VERTEX" => "v", "SEQEND" => "s", _ => " " }));
        Assert.Equal(["Pvvvvvvs", "PvvvvvvvvvvsPvvvvsPvvvvvvs"], types.Split(' ', StringSplitOptions.RemoveEmptyEntries));
        Assert.Equal(4, tags.Count(tag => tag == (66, "1")));
    }

    [Theory]
    [InlineData("plate")]
    [InlineData("washer")]
    public void Handles_are_unique_and_below_the_seed_and_owners_exist(string drawing)
    {
        (int Code, string Value)[] tags = Tags(drawing == "plate" ? Samples.Plate : Samples.Washer, DxfVersion.R2000);
        int seedAt = Array.IndexOf(tags, (9, "$HANDSEED")) + 1;
        int[] own = [.. tags[(seedAt + 1)..].Where(tag => tag.Code is 5 or 105).Select(tag => Hex(tag.Value))];
        Assert.Equal(own.Length, own.Distinct().Count());
        Assert.DoesNotContain(0, own);
        Assert.Equal(own.Max() + 1, Hex(tags[seedAt].Value));
        int[] pointers = [.. tags.Where(tag => tag.Code is 330 or 340 or 350).Select(tag => Hex(tag.Value))];
        Assert.All(pointers, pointer => Assert.True(pointer == 0 || own.Contains(pointer)));
        Assert.Equal(10, pointers.Count(pointer => pointer == 0));
    }

    [Theory]
    [InlineData(DxfVersion.R2000)]
    [InlineData(DxfVersion.R12)]
    public void Table_counts_are_true(DxfVersion version)
    {
        string text = Encoding.ASCII.GetString(DxfWriter.Write(Samples.Plate, version));
        foreach (Match table in TableText().Matches(text))
        {
            int rows = Regex.Count(table.Value, $"\r\n  0\r\n{table.Groups[1].Value}\r\n");
            Assert.Equal(rows, int.Parse(table.Groups[2].Value, CultureInfo.InvariantCulture));
        }
    }

    [Theory]
    [InlineData(DxfVersion.R2000)]
    [InlineData(DxfVersion.R12)]
    public void Layers_come_in_the_drawing_s_order(DxfVersion version)
    {
        (int Code, string Value)[] tags = Tags(Samples.Plate, version);
        int entities = Array.IndexOf(tags, (2, "ENTITIES"));
        string[] layers = [.. tags[entities..].Where(tag => tag.Code == 8).Select(tag => tag.Value).Distinct()];
        Assert.Equal("holes outside engrave note", string.Join(' ', layers));
    }

    public static TheoryData<string, Drawing> BrokenDrawings { get; } = new()
    {
        { "letters, digits", Of(new DrawingLayer("out side", Operation.Note, [Line(0, 1)], [])) },
        { "occurs twice", Of(new DrawingLayer("note", Operation.Note, [Line(0, 1)], []), new DrawingLayer("NOTE", Operation.Note, [], [])) },
        { "is open", Of(new DrawingLayer("outside", Operation.CutOutside, [Line(0, 1)], [])) },
        { "fewer than two", Of(new DrawingLayer("note", Operation.Note, [new ArcPath([new PathVertex(default, 0)], false)], [])) },
        { "no length", Of(new DrawingLayer("note", Operation.Note, [Line(1, 1)], [])) },
        { "not finite", Of(new DrawingLayer("note", Operation.Note, [Line(0, double.NaN)], [])) },
        { "90 degrees", Of(new DrawingLayer("note", Operation.Note, [new ArcPath([new(default, 0.42), new(new Point(1, 0), 0)], false)], [])) },
        { "no size", Of(new DrawingLayer("holes", Operation.CutHoles, [], [new Circle(default, 0)])) },
        { "no shapes", Of(new DrawingLayer("holes", Operation.CutHoles, [], [])) },
    };

    [Theory, MemberData(nameof(BrokenDrawings), DisableDiscoveryEnumeration = true)]
    public void Drawings_that_break_a_rule_are_not_written(string breach, Drawing drawing)
    {
        Assert.Contains(breach, Assert.Throws<ArgumentException>(() => DxfWriter.Write(drawing, DxfVersion.R12)).Message, StringComparison.Ordinal);
        Assert.Contains(breach, Assert.Throws<ArgumentException>(() => Files.Svg.SvgWriter.Write(drawing)).Message, StringComparison.Ordinal);
        Assert.Contains(breach, Assert.Throws<ArgumentException>(() => Files.Png.PngWriter.Write(drawing)).Message, StringComparison.Ordinal);
    }

    private static Drawing Of(params DrawingLayer[] layers) => new("Broken", [.. layers]);

    private static ArcPath Line(double from, double to) => ArcPath.Strokes([new Point(from, 0), new Point(to, 0)]);

    private static int Hex(string text) => int.Parse(text, NumberStyles.HexNumber, CultureInfo.InvariantCulture);

    private static string Named((int Code, string Value)[] tags, string type) =>
        string.Join(' ', tags.Zip(tags.Skip(1)).Where(pair => pair.First == (0, type)).Select(pair => pair.Second.Value));

    private static (int Code, string Value)[] Tags(Drawing drawing, DxfVersion version) =>
    [
        .. Encoding.ASCII.GetString(DxfWriter.Write(drawing, version)).Split("\r\n").Chunk(2).Where(pair => pair.Length == 2)
            .Select(pair => (int.Parse(pair[0], CultureInfo.InvariantCulture), pair[1])),
    ];

    [GeneratedRegex(@"\n  0\r\nTABLE\r\n  2\r\n(\w+)\r\n(?:[^\n]*\n[^\n]*\n){0,3}? 70\r\n(\d+)\r\n.*?ENDTAB", RegexOptions.Singleline)]
    private static partial Regex TableText();
}
