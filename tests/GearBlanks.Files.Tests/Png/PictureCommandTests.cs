using System.Text.Json;
using GearBlanks.Files.Tests.Cli;
using GearBlanks.Files.Tests.Readers;

namespace GearBlanks.Files.Tests.Png;

/// <summary>Pictures by the command line, with Skia's library beside the program and without.</summary>
public class PictureCommandTests
{
    [Fact]
    public void Gear_draws_a_picture_and_says_that_it_is_one()
    {
        using var desk = new Desk();
        Ran ran = Ran.Of("gear", "--module", "1", "--teeth", "20", "--out", desk["wheel.PNG"]);
        Assert.True(ran.Exit == 0, ran.Told);
        Assert.Contains($"Wrote {desk["wheel.PNG"]}, a picture to look at, not to cut by.", ran.Output, StringComparison.Ordinal);
        Assert.Equal(1200, GdalPicture.Read(desk["wheel.PNG"]).Height);
        Assert.Contains("not to cut by", Ran.Of("gear", "--help").Output, StringComparison.Ordinal);
        Assert.Contains("not to cut by", string.Join(' ', Ran.Of("cut", "--help").Output.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "dxf svg")]
    [InlineData("dxf", "dxf")]
    [InlineData("svg", "svg")]
    [InlineData("png", "png")]
    [InlineData("svg,dxf", "dxf svg")]
    [InlineData("png,dxf", "dxf png")]
    [InlineData("svg,png", "png svg")]
    [InlineData("png,svg,dxf", "dxf png svg")]
    public void Cut_writes_the_formats_asked_for(string format, string endings)
    {
        using Desk desk = Desk.WithJob();
        Ran ran = Ran.Of(["cut", desk["pair.toml"], "--out", desk["out"], .. (string[])(format.Length == 0 ? [] : ["--format", format])]);
        Assert.True(ran.Exit == 0, ran.Told);
        string[] wanted = [.. endings.Split(' ').SelectMany(ending => (string[])[$"pinion.{ending}", $"wheel.{ending}"]), "overview.svg"];
        using JsonDocument manifest = JsonDocument.Parse(File.ReadAllBytes(desk["out/manifest.json"]));
        Assert.Equal(wanted.Order(StringComparer.Ordinal), manifest.RootElement.GetProperty("files").EnumerateArray().Select(file => file.GetProperty("name").GetString()));
        Assert.Equal(wanted.Append("manifest.json").Order(StringComparer.Ordinal), Folder.Names(desk["out"]));
    }

    [Theory]
    [InlineData("gear --module 1 --teeth 20 --out ~/wheel.png", "--out = ~/wheel.png")]
    [InlineData("cut ~/pair.toml --out ~/new --format dxf,png", "--format = png")]
    public void Without_the_library_a_picture_is_refused_in_words(string line, string option)
    {
        using Desk desk = Desk.WithJob();
        string program = WithoutLibrary(desk);
        string[] before = desk.Seen();
        ReaderProcess.Output ran = ReaderProcess.Run("dotnet", [program, .. line.Replace("~", desk.Root, StringComparison.Ordinal).Split(' ')]);
        Assert.Equal((2, ""), (ran.ExitCode, ran.Text));
        Assert.StartsWith($"command line: {option.Replace("~", desk.Root, StringComparison.Ordinal)}: Pictures cannot be drawn: the library libSkiaSharp is missing", ran.Errors, StringComparison.Ordinal);
        Assert.Single(ran.Errors.TrimEnd().Split('\n'));
        Assert.Equal(before, desk.Seen());
    }

    // What it never loads it cannot miss: the proof that a run without pictures pays nothing for them.
    [Fact]
    public void Without_the_library_everything_else_works()
    {
        using Desk desk = Desk.WithJob();
        string program = WithoutLibrary(desk);
        File.Delete(Path.Combine(Path.GetDirectoryName(program)!, "SkiaSharp.dll"));
        ReaderProcess.Output cut = ReaderProcess.Run("dotnet", program, "cut", desk["pair.toml"], "--out", desk["bare"]);
        Assert.True(cut.ExitCode == 0, cut.Errors);
        Assert.Equal(0, Ran.Of("cut", desk["pair.toml"], "--out", desk["whole"]).Exit);
        Folder.AssertSame(desk["whole"], desk["bare"]);
    }

    private static string WithoutLibrary(Desk desk)
    {
        string folder = Directory.CreateDirectory(desk["program"]).FullName;
        foreach (string file in Directory.EnumerateFiles(AppContext.BaseDirectory, "*.dll").Concat(Directory.EnumerateFiles(AppContext.BaseDirectory, "gearblanks.*.json")))
        {
            File.Copy(file, Path.Combine(folder, Path.GetFileName(file)));
        }

        return Path.Combine(folder, "gearblanks.dll");
    }
}
