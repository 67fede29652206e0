using System.Text.Json;
using System.Xml.Linq;
using GearBlanks.Files.Tests.Jobs;
using GearBlanks.Files.Tests.Readers;

namespace GearBlanks.Files.Tests.Cli;

/// <summary>What <c>reach --out</c> writes: pictures, and the corners for a second tool as an outside reader sees them.</summary>
public sealed class ReachFilesTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("reach").FullName;

    private string Out => Path.Combine(_folder, "out");

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("first-pair", "1.2", "r2000", 2)]
    [InlineData("chart-sled", "1.0", "r12", 4)]
    public void Corners_are_closed_contours_with_the_area_that_stays_uncut(string job, string tool, string version, int gears)
    {
        Ran ran = Ran.Of("reach", Path.Combine(Repository.Root, "profiles", "jobs", job + ".toml"), "--tool", tool, "--out", Out, "--dxf-version", version, "--json");
        Assert.True(ran.Exit is 0 or 1, ran.Told);
        JsonElement[] reached = [.. ran.Json.GetProperty("gears").EnumerateArray()];
        Assert.Equal(gears, reached.Length);
        Assert.Equal(Folder.Names(Out), ran.Json.GetProperty("files").EnumerateArray().Select(file => file.GetString()));
        foreach (JsonElement gear in reached)
        {
            string name = gear.GetProperty("name").GetString()!.Replace(' ', '-');
            Assert.True(File.Exists(Path.Combine(Out, name + "-reach.svg")));
            string corners = Path.Combine(Out, name + "-corners.dxf");
            Assert.Equal(gear.GetProperty("uncutDepth").GetDouble() >= 0.01, File.Exists(corners));
            if (File.Exists(corners))
            {
                AssertCorners(corners, gear.GetProperty("uncutArea").GetDouble());
            }
        }
    }

    [Fact]
    public void The_picture_says_its_figures_and_is_drawn_by_another_program()
    {
        Ran ran = Ran.Of("reach", "--module", "1", "--teeth", "40", "--tool", "1.2", "--out", Out);
        Assert.Equal(0, ran.Exit);
        string file = Path.Combine(Out, "z-40-m-1-reach.svg");
        var svg = XDocument.Load(file);
        Assert.Equal("z 40 m 1: reach of a tool of 1.2 mm", svg.Root!.Elements().First(element => element.Name.LocalName == "title").Value);
        Assert.Equal(["gear", "gap", "words"], svg.Root.Elements().Where(element => element.Name.LocalName == "g").Select(element => element.Attribute("id")!.Value));
        ReaderProcess.Output drawn = ReaderProcess.Run("rsvg-convert", file, "-o", Path.Combine(_folder, "picture.png"));
        Assert.True(drawn.ExitCode == 0, drawn.Errors);
        Assert.True(new FileInfo(Path.Combine(_folder, "picture.png")).Length > 5_000);
    }

    [Fact]
    public void The_same_command_writes_the_same_bytes_and_a_persons_edit_stays()
    {
        string[] words = ["reach", "--module", "1", "--teeth", "40", "--tool", "1.2", "--out"];
        Assert.Equal(0, Ran.Of([.. words, Out]).Exit);
        Assert.Equal(0, Ran.Of([.. words, Path.Combine(_folder, "again")]).Exit);
        Folder.AssertSame(Out, Path.Combine(_folder, "again"));
        File.AppendAllText(Path.Combine(Out, "z-40-m-1-corners.dxf"), "edited");
        Ran refused = Ran.Of([.. words, Out]);
        Assert.Equal(2, refused.Exit);
        Assert.Contains("z-40-m-1-corners.dxf", refused.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_that_is_none_is_refused()
    {
        string file = Path.Combine(_folder, "file");
        File.WriteAllText(file, "");
        Ran refused = Ran.Of("reach", "--module", "1", "--teeth", "40", "--tool", "1.2", "--out", file);
        Assert.Equal(2, refused.Exit);
        Assert.Equal(2, Ran.Of("reach", "--module", "1", "--teeth", "40", "--tool", "1.2", "--out", Out, "--tolerance", "0.5").Exit);
    }

    private static void AssertCorners(string file, double uncutArea)
    {
        ReaderProcess.Output read = ReaderProcess.Run("/usr/bin/python3", Path.Combine(AppContext.BaseDirectory, "readers", "read_ezdxf.py"), file);
        Assert.True(read.ExitCode == 0, read.Errors);
        JsonElement found = JsonDocument.Parse(read.Text).RootElement;
        Assert.Empty(found.GetProperty("errors").EnumerateArray());
        JsonElement[] cut = [.. found.GetProperty("shapes").EnumerateArray().Where(shape => shape.GetProperty("layer").GetString() == "holes")];
        Assert.NotEmpty(cut);
        Assert.All(cut, shape => Assert.True(shape.GetProperty("closed").GetBoolean()));

        // The ends that are narrower than 0.005 mm are left out.
        double area = cut.Sum(shape => Math.Abs(shape.GetProperty("area").GetDouble()));
        Assert.InRange(area, uncutArea - (0.003 * cut.Length), uncutArea + (0.0005 * cut.Length));
    }
}
