using System.Text;
using GearBlanks.Files.Drawings;
using GearBlanks.Files.Tests.Cli;
using GearBlanks.Mechanisms;

namespace GearBlanks.Files.Tests.Rolls;

/// <summary>Drawings that hold no gear, or hold what is refused: told in words, with the place, never a crash.</summary>
public sealed class BadDrawingTests
{
    private const string Head = "0\nSECTION\n2\nENTITIES\n";
    private const string Tail = "0\nENDSEC\n0\nEOF\n";

    public static TheoryData<string, string[]> Dxf { get; } = new()
    {
        { "", ["This file is empty"] },
        { "The tide turns at noon.\n", ["This is not a DXF drawing: here a group code should stand"] },
        { "0\nTIDE\n", ["This is not a DXF drawing: it does not begin with a section"] },
        { "0\nSECTION\n2\n", ["The file ends in the middle of a tag"] },
        { Head + "0\nLINE\n10\n0\n", ["The file is cut off in its section ENTITIES"] },
        { Head + "0\nLINE\n10\n0\n20\n0\n11\nfar\n21\n0\n" + Tail, ["This is not a number (group 11)", "far"] },
        { Head + "0\nLINE\n10\n0\n20\n0\n11\n1,5\n21\n0\n" + Tail, ["This is not a number (group 11)"] },
        { Head + "0\nLINE\n10\n0\n20\n0\n11\n5\n" + Tail, ["This entity lacks its number of group 21"] },
        { Head + Tail, ["There is no closed contour in this drawing"] },
        { Head + Line(0, 0, 5, 0) + Line(5, 0, 5, 5) + Tail, ["This contour is open: it begins at (", ")"] },
        { Head + "0\nMLINE\n8\n0\n" + Tail, ["MLINE", "Entities of this type are not read", ":6"] },
        { Head + "0\n3DSOLID\n8\n0\n" + Tail, ["3DSOLID"] },
        { Head + "0\nINSERT\n2\nNOWHERE\n10\n0\n20\n0\n" + Tail, ["There is no block of this name in the file", "NOWHERE"] },
        { Block("A", "0\nINSERT\n2\nA\n10\n0\n20\n0\n") + Head + "0\nINSERT\n2\nA\n10\n0\n20\n0\n" + Tail, ["Blocks stand in blocks without end"] },
        { Block("A", "", 4) + Head + "0\nINSERT\n2\nA\n10\n0\n20\n0\n" + Tail, ["This block stands in another file, which is not looked for"] },
        { Block("A", Circle(0, 0, 5)) + Head + "0\nINSERT\n2\nA\n10\n0\n20\n0\n41\n0\n" + Tail, ["inserted with a scale of 0"] },
        { Block("A", Circle(0, 0, 5)) + Head + "0\nINSERT\n2\nA\n10\n0\n20\n0\n70\n30000\n71\n30000\n44\n1\n45\n1\n" + Tail, ["With all its blocks this drawing is too large"] },
        { Head + "0\nCIRCLE\n10\n0\n20\n0\n40\n-3\n" + Tail, ["Its radius is not greater than 0"] },
        { Head + "0\nSPLINE\n71\n3\n11\n2\n21\n1\n11\n2\n21\n1\n" + Tail, ["This spline passes too few points"] },
        { Head + "0\nSPLINE\n71\n3\n40\n0\n40\n1\n10\n0\n20\n0\n10\n1\n20\n1\n" + Tail, ["do not belong together"] },
        { Head + "0\nLWPOLYLINE\n70\n1\n10\n0\n20\n0\n" + Tail, ["fewer than two vertices"] },
        { Head + "0\nPOLYLINE\n66\n1\n70\n64\n0\nVERTEX\n10\n0\n20\n0\n0\nSEQEND\n" + Tail, ["This polyline is a mesh in space"] },
        { Head + "0\nPOLYLINE\n66\n1\n70\n1\n0\nVERTEX\n10\n0\n20\n0\n" + Tail, ["The vertices of this entity have no end"] },
        { Head + "0\nCIRCLE\n10\n0\n20\n0\n40\n3\n210\n1\n220\n0\n230\n0\n" + Tail, ["does not lie in the plane"] },
        { "0\nSECTION\n2\nHEADER\n9\n$INSUNITS\n70\n3\n0\nENDSEC\n" + Head + Circle(0, 0, 5) + Tail, ["$INSUNITS"] },
        { Head + Circle(0, 0, 5) + Circle(40, 0, 5) + Tail, ["There are two parts in this drawing, about (", "a file for each part"] },
        { Head + Circle(0, 0, 20) + Circle(0, 0, 10) + Circle(0, 0, 5) + Tail, ["There are two parts in this drawing: one at (0, 0) lies in a hole"] },
        { Head + Square(0, 0, 20) + Circle(10, 0, 3) + Tail, ["Contours cross at (10,"] },
        { Head + "0\nLWPOLYLINE\n70\n1\n10\n0\n20\n0\n10\n10\n20\n10\n10\n10\n20\n0\n10\n0\n20\n12\n" + Tail, ["Contours cross at ("] },
        { Head + Square(0, 0, 20) + Tail, ["The part has no bore in its middle", "--centre-a X Y"] },
        { Head + Square(0, 0, 20) + Circle(0, 0, 3) + Tail, ["The pitches do not match", "(4 teeth)"] },
        { Head + Line(0, 0, 9, 0) + Line(9, 0, 9, 9) + Line(9, 9, 0, 0) + Line(9, 0, 20, 0) + Tail, ["three lines meet"] },
        { "AutoCAD Binary DXF\r\n\u001a\0", ["This is a binary DXF file", "ASCII DXF"] },
        { "AC1032\0\0\0", ["This is a DWG file"] },
        { "\u007fELF\u0001\0\0", ["This is a binary file, not a drawing"] },
    };

    public static TheoryData<string, string[]> Svg { get; } = new()
    {
        { "<html><body/></html>", ["This is not an SVG drawing: its first element is another one", "html"] },
        { "<svg xmlns='http://www.w3.org/2000/svg'><path d='M0 0", ["its XML is broken"] },
        { "<!DOCTYPE svg [<!ENTITY a 'x'><!ENTITY b '&a;&a;&a;&a;'>]><svg>&b;</svg>", ["This file has a document type, which may hold entities without end"] },
        { "<!DOCTYPE svg SYSTEM 'http://example.com/svg.dtd'><svg/>", ["document type"] },
        { Page("<script>alert(1)</script>"), ["script", "not read"] },
        { Page("<g onload='run()'/>"), ["holds a script", "onload"] },
        { Page("<a href='javascript:run()'/>"), ["holds a script"] },
        { Page("<image href='http://example.com/gear.png'/>"), ["refers to another file, which is not looked for", "http://example.com/gear.png"] },
        { Page("<use href='other.svg#gear'/>"), ["refers to another file"] },
        { Page("<use href='#gear'/>"), ["href = #gear: There is no element of this name in the file"] },
        { Page("<mesh/>"), ["mesh", "Elements of this kind are not read"] },
        { Page("<defs><script/></defs>"), ["script"] },
        { Page("<style>@import url(http://example.com/a.css);</style>"), ["refers to another file"] },
        { Page("<path style=\"fill:url('http://example.com/a.svg#b')\" d='M0 0L5 0L5 5Z'/>"), ["refers to another file"] },
        { "<?xml-stylesheet href='a.css'?><svg/>", ["refers to another one, which is not looked for"] },
        { Page("<foreignObject/>"), ["foreignObject"] },
        { Page("<path d='M0 0L5 x'/>"), ["A number is missing or wrong here"] },
        { Page("<path d='M0 0B5 5'/>"), ["A number is missing or wrong here"] },
        { Page("<path d='5 5L3 3'/>"), ["A number is missing or wrong here"] },
        { Page("<path d='M0 0A5 5 0 2 0 3 3'/>"), ["A number is missing or wrong here"] },
        { Page("<path d='M0 0L5 0L5 5'/>"), ["This contour is open"] },
        { Page("<g transform='spin(3)'><circle r='5'/></g>"), ["This transform cannot be read", "spin(3)"] },
        { Page("<g transform='scale(0)'><circle r='5'/></g>"), ["This transform cannot be read"] },
        { Page("<circle r='five'/>"), ["The r of this circle cannot be read"] },
        { "<svg viewBox='0 0 0 10'/>", ["This viewBox cannot be read"] },
        { "<svg viewBox='0 0 10 10' width='0mm'/>", ["The drawing has no size"] },
        { Page("<circle r='20'/><circle cx='60' r='9'/>"), ["There are two parts in this drawing"] },
        { Page(string.Concat(Enumerable.Repeat("<g>", 200)) + string.Concat(Enumerable.Repeat("</g>", 200))), ["Groups stand in groups without end"] },
        { Page(""), ["There is no closed contour in this drawing"] },
    };

    [Theory]
    [MemberData(nameof(Dxf))]
    public void A_bad_dxf_is_refused(string content, string[] told) => AssertRefused("bad.dxf", content, told);

    [Theory]
    [MemberData(nameof(Svg))]
    public void A_bad_svg_is_refused(string content, string[] told) => AssertRefused("bad.svg", content, told);

    [Fact]
    public void Two_hundred_megabytes_are_refused_unread()
    {
        using var pair = new DrawnPair();
        using (FileStream large = File.Create(pair["large.dxf"]))
        {
            large.SetLength(200 << 20);
        }

        long before = GC.GetTotalAllocatedBytes();
        Ran ran = Ran.Of("roll", pair["large.dxf"], pair.Second, "--distance", "30");
        Assert.InRange(GC.GetTotalAllocatedBytes() - before, 0, 64 << 20);
        Assert.Equal(2, ran.Exit);
        Assert.Contains("large.dxf: This file is too large to be one gear's drawing", ran.Errors, StringComparison.Ordinal);
        Assert.Contains("at most 64 MiB", ran.Errors, StringComparison.Ordinal);
    }

    // Whatever is cut off, doubled or garbled is read or refused; it never fails.
    [Fact]
    public void Spoilt_files_never_crash()
    {
        using var dxf = new DrawnPair();
        using var svg = new DrawnPair("svg");
        var random = new Random(7);
        foreach (string file in (string[])[dxf.First, svg.First])
        {
            byte[] good = File.ReadAllBytes(file);
            for (int i = 0; i < 300; i++)
            {
                byte[] bad = [.. good];
                int at = random.Next(bad.Length);
                switch (i % 3)
                {
                    case 0:
                        bad = bad[..at];
                        break;
                    case 1:
                        bad[at] = (byte)random.Next(256);
                        break;
                    default:
                        int length = Math.Min(random.Next(1, 200), bad.Length - at);
                        random.NextBytes(bad.AsSpan(at, length));
                        break;
                }

                Outcome<DrawnGear> read = DrawingReader.Parse(bad, "bad", DrawingChoice.All);
                Assert.True(read.Value is not null || read.Problems.Length > 0);
            }
        }
    }

    private static void AssertRefused(string name, string content, string[] told)
    {
        using var pair = new DrawnPair();
        File.WriteAllBytes(pair[name], Encoding.UTF8.GetBytes(content));
        Ran ran = Ran.Of("roll", pair[name], pair.Second, "--distance", "30");
        Assert.True(ran.Exit == 2, ran.Told);
        Assert.All(told, words => Assert.Contains(words, ran.Errors, StringComparison.Ordinal));
    }

    private static string Page(string content) => $"<svg xmlns='http://www.w3.org/2000/svg' width='100mm' height='100mm' viewBox='-50 -50 100 100'>{content}</svg>";

    private static string Line(int x, int y, int toX, int toY) => $"0\nLINE\n8\n0\n10\n{x}\n20\n{y}\n11\n{toX}\n21\n{toY}\n";

    private static string Circle(int x, int y, int radius) => $"0\nCIRCLE\n8\n0\n10\n{x}\n20\n{y}\n40\n{radius}\n";

    private static string Square(int x, int y, int side) =>
        $"0\nLWPOLYLINE\n8\n0\n70\n1\n10\n{x - (side / 2)}\n20\n{y - (side / 2)}\n10\n{x + (side / 2)}\n20\n{y - (side / 2)}\n10\n{x + (side / 2)}\n20\n{y + (side / 2)}\n10\n{x - (side / 2)}\n20\n{y + (side / 2)}\n";

    private static string Block(string name, string content, int flags = 0) =>
        $"0\nSECTION\n2\nBLOCKS\n0\nBLOCK\n2\n{name}\n70\n{flags}\n10\n0\n20\n0\n{content}0\nENDBLK\n0\nENDSEC\n";
}
