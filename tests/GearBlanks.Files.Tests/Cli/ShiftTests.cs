using System.Text.Json;
using GearBlanks.Files.Tests.Jobs;

namespace GearBlanks.Files.Tests.Cli;

/// <summary>The verb shift: what it prints, and what it writes into a job file.</summary>
public sealed class ShiftTests : IDisposable
{
    private const string Job = """
        # A pair, by hand.
        title = "Pair"
        defaults = { module = 1, thickness = 2, bore = 3, thinning = 0 }   # all of brass
        axes = [{ name = "a", position = [0, 0] }, { name = "b", position = [30.3, 0] }]
        meshes = [{ gears = ["one", "two"], backlash = 0.04 }]

        [[sandwiches]]
        name = "first"
        axis = "a"

            [[sandwiches.layers]]
            gear = "one"
            teeth = 20        # counted twice
            material = "brass"

        [[sandwiches]]
        name = "second"
        axis = "b"
        layers = [{ gear = "two", teeth = 40, profile-shift = 0.5 }]   # milled
        """;

    private readonly string _folder = Directory.CreateTempSubdirectory("gearblanks-shift-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("\n", "")]
    [InlineData("\r\n", "")]
    [InlineData("\n", "\uFEFF")]
    public void Numbers_go_into_the_job_and_nothing_else_changes(string newline, string mark)
    {
        string text = mark + Job.ReplaceLineEndings(newline);
        string file = Write(text);
        (int exit, string output, _) = Ran.Of("shift", file, "--write", "--json");
        Assert.Equal(0, exit);
        using JsonDocument json = JsonDocument.Parse(output);
        JsonElement mesh = json.RootElement.GetProperty("meshes")[0];
        double[] shifts = [.. mesh.GetProperty("profileShift").EnumerateArray().Select(one => one.GetDouble())];
        Assert.Equal(0.04, mesh.GetProperty("backlash").GetDouble(), 1e-4);
        Assert.Equal(file, json.RootElement.GetProperty("written").GetString());
        string after = File.ReadAllText(file, new System.Text.UTF8Encoding(false));
        string expected = text
            .Replace("teeth = 20        # counted twice", $"teeth = 20        # counted twice{newline}    profile-shift = {shifts[0]}", StringComparison.Ordinal)
            .Replace("profile-shift = 0.5 }", $"profile-shift = {shifts[1]} }}", StringComparison.Ordinal);
        Assert.Equal(expected.TrimStart('\uFEFF'), after.TrimStart('\uFEFF'));
        Assert.Equal(text[0] == '\uFEFF', File.ReadAllBytes(file)[0] == 0xEF);

        // The check then finds the backlash that was wanted, and the second time nothing is left to change.
        Assert.Equal(0, Ran.Of("check", file).Exit);
        Assert.Equal(0, Ran.Of("shift", file, "--write").Exit);
        Assert.Equal(after, File.ReadAllText(file, new System.Text.UTF8Encoding(false)));
    }

    [Fact]
    public void Nothing_is_written_without_being_asked_for_or_without_an_answer()
    {
        string file = Write(Job);
        Assert.Equal(0, Ran.Of("shift", file).Exit);
        Assert.Equal(Job, File.ReadAllText(file));
        string far = Job.Replace("[30.3, 0]", "[31.6, 0]", StringComparison.Ordinal);
        File.WriteAllText(file, far);
        (int exit, string output, _) = Ran.Of("shift", file, "--write");
        Assert.Equal(1, exit);
        Assert.Equal(far, File.ReadAllText(file));
        Assert.Contains("In the way: ", output, StringComparison.Ordinal);
        Assert.Contains("What would work: distance of axes a and b: ", output, StringComparison.Ordinal);
        Assert.Contains("Nothing was written.", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Another_module_is_written_where_it_may_change()
    {
        string far = Job.Replace("[30.3, 0]", "[31.6, 0]", StringComparison.Ordinal);
        string file = Write(far);
        (int exit, string output, _) = Ran.Of("shift", file, "--change-module", "--write", "--json");
        Assert.Equal(0, exit);
        using JsonDocument json = JsonDocument.Parse(output);
        JsonElement changed = Assert.Single(json.RootElement.GetProperty("modules").EnumerateArray());
        string module = $"module = {changed.GetProperty("module").GetDouble()}";
        string[] shifts = [.. json.RootElement.GetProperty("meshes")[0].GetProperty("profileShift").EnumerateArray().Select(one => $"profile-shift = {one.GetDouble()}")];
        string expected = far
            .Replace("teeth = 20        # counted twice", $"teeth = 20        # counted twice\n    {module}\n    {shifts[0]}", StringComparison.Ordinal)
            .Replace("teeth = 40, profile-shift = 0.5 }", $"teeth = 40, {module}, {shifts[1]} }}", StringComparison.Ordinal);
        Assert.Equal(expected, File.ReadAllText(file));
        Assert.Equal(0, Ran.Of("check", file).Exit);
        Assert.Contains("Module of the gears of", Ran.Of("shift", Write(far), "--change-module").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Held_gears_stay()
    {
        string file = Write(Job);
        Assert.Equal(0, Ran.Of("shift", file, "--hold", "two", "--write").Exit);
        Assert.Contains("profile-shift = 0.5 }", File.ReadAllText(file), StringComparison.Ordinal);
        (int exit, _, string error) = Ran.Of("shift", file, "--hold", "tow");
        Assert.Equal(2, exit);
        Assert.Contains("--hold", error, StringComparison.Ordinal);
        Assert.Contains("two", error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--rule", "best", "equal-land")]
    [InlineData("--hold", null, "--hold")]
    [InlineData("--rool", "wheel", "--rool")]
    public void Bad_options_are_told(string option, string? value, string told)
    {
        string[] words = value is null ? ["shift", Write(Job), option] : ["shift", Write(Job), option, value];
        (int exit, _, string error) = Ran.Of(words);
        Assert.Equal(2, exit);
        Assert.Contains(told, error, StringComparison.Ordinal);
    }

    [Fact]
    public void Gears_that_do_not_mesh_are_told_at_their_mesh()
    {
        string file = Write(Job.Replace("gear = \"two\", ", "gear = \"two\", module = 2, ", StringComparison.Ordinal));
        (int exit, _, string error) = Ran.Of("shift", file);
        Assert.Equal(2, exit);
        Assert.Contains("do not mesh", error, StringComparison.Ordinal);
        Assert.Contains("job.toml:5", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_demo_job_closes()
    {
        foreach (string job in Directory.EnumerateFiles(Path.Combine(Repository.Root, "profiles", "jobs"), "*.toml"))
        {
            (int exit, string output, string error) = Ran.Of("shift", job);
            Assert.True(exit == 0, $"{job}: {output}{error}");
        }
    }

    private string Write(string text)
    {
        string file = Path.Combine(_folder, "job.toml");
        File.WriteAllText(file, text, new System.Text.UTF8Encoding(false));
        return file;
    }
}
