using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using GearBlanks.Files.Folders;

namespace GearBlanks.Files.Tests.Folders;

public class ManifestTests
{
    private static readonly ManifestData Data = new("GearBlanks 0.1.0", [new("job", "Größe \"1\".toml")], ["tight: a"], "tight");

    [Fact]
    public void The_manifest_is_this_text()
    {
        ManifestFile[] files = [ManifestFile.Of(Workplace.File("b.svg", "abc")), new("a.dxf", 7, new string('0', 64))];
        const string Expected = """
            {
              "schema": "gearblanks-manifest",
              "schemaVersion": 1,
              "program": "GearBlanks 0.1.0",
              "verdict": "tight",
              "inputs": [
                {
                  "name": "job",
                  "value": "Größe \"1\".toml"
                }
              ],
              "warnings": [
                "tight: a"
              ],
              "files": [
                {
                  "name": "a.dxf",
                  "size": 7,
                  "sha256": "0000000000000000000000000000000000000000000000000000000000000000"
                },
                {
                  "name": "b.svg",
                  "size": 3,
                  "sha256": "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"
                }
              ]
            }

            """;
        Assert.Equal(Expected.ReplaceLineEndings("\n"), Encoding.UTF8.GetString(Manifest.Write(files, Data)));
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    public void The_culture_changes_no_byte(string culture)
    {
        ManifestFile[] files = [new("I.dxf", 1234567, new string('a', 64)), new("i.dxf", 0, new string('b', 64)), new("ä.dxf", 1, new string('c', 64))];
        var expected = Manifest.Write(files, Data);
        var (before, beforeUi) = (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture);
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = new CultureInfo(culture);
            Assert.NotEqual("1.5", 1.5.ToString("R", CultureInfo.CurrentCulture));
            Assert.Equal(expected, Manifest.Write(files.Reverse(), Data));
        }
        finally
        {
            (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = (before, beforeUi);
        }
    }

    [Fact]
    public void What_was_written_reads_back()
    {
        ImmutableArray<ManifestFile> files = [ManifestFile.Of(Workplace.File("a.dxf", "a")), ManifestFile.Of(Workplace.File("b c ü.svg", ""))];
        Assert.Equal(files, Manifest.Read(Manifest.Write(files, Data))!.Files.AsEnumerable());
    }

    [Fact]
    public void Half_a_character_stops_nothing() =>
        Assert.NotNull(Manifest.Read(Manifest.Write([new("a\ud800.dxf", 1, new string('a', 64))], Data with { Verdict = "\udc00" })));

    [Theory]
    [InlineData("")]
    [InlineData("{")]
    [InlineData("[]")]
    [InlineData("null")]
    [InlineData("{}")]
    [InlineData("""{"schema":"another","schemaVersion":1,"files":[]}""")]
    [InlineData("""{"schema":"gearblanks-manifest","schemaVersion":2,"files":[]}""")]
    [InlineData("""{"schema":"gearblanks-manifest","schemaVersion":"1","files":[]}""")]
    [InlineData("""{"schema":"gearblanks-manifest","schemaVersion":1.5,"files":[]}""")]
    [InlineData("""{"schema":"gearblanks-manifest","schemaVersion":1}""")]
    [InlineData("""{"schema":"gearblanks-manifest","schemaVersion":1,"files":{}}""")]
    [InlineData("""{"schema":"gearblanks-manifest","schemaVersion":1,"files":[1]}""")]
    [InlineData("""{"schema":"gearblanks-manifest","schemaVersion":1,"files":[{"name":"a","size":1,"sha256":"12"}]}""")]
    [InlineData("""{"schema":"gearblanks-manifest","schemaVersion":1,"files":[{"name":"../a","size":1,"sha256":"ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"}]}""")]
    [InlineData("""{"schema":"gearblanks-manifest","schemaVersion":1,"files":[{"name":"/a","size":1,"sha256":"ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"}]}""")]
    [InlineData("""{"schema":"gearblanks-manifest","schemaVersion":1,"files":[{"name":"..","size":1,"sha256":"ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"}]}""")]
    [InlineData("""{"schema":"gearblanks-manifest","schemaVersion":1,"files":[{"name":"\ud800","size":1,"sha256":"ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"}]}""")]
    [InlineData("""{"schema":"gearblanks-manifest","schemaVersion":1,"files":[{"name":"a","size":-1,"sha256":"ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"}]}""")]
    public void What_is_not_a_sound_manifest_is_none(string text) => Assert.Null(Manifest.Read(Encoding.UTF8.GetBytes(text)));

    [Fact]
    public void Bytes_that_are_no_text_are_no_manifest() => Assert.Null(Manifest.Read(new byte[] { 0xFF, 0, 0xFE }));
}
