using System.Globalization;
using GearBlanks.Files.Tests.Jobs;

namespace GearBlanks.Files.Tests.Cli;

/// <summary>Whatever the user's culture, every file and every text is the same byte for byte.</summary>
public class CultureTests
{
    private static readonly string Job = Path.Combine(Repository.Root, "profiles", "jobs", "slipway-counter-pair.toml");

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    public void Everything_written_and_said_is_the_same(string name)
    {
        var culture = new CultureInfo(name);
        Assert.NotEqual("1.5", 1.5.ToString(culture));
        using var desk = new Desk();
        Dictionary<string, string> wanted = Said(CultureInfo.InvariantCulture, desk, "invariant");
        Dictionary<string, string> found = Said(culture, desk, name);
        Assert.All(wanted, said => Assert.Equal(said.Value, found[said.Key]));
        Folder.AssertSame(desk["invariant"], desk[name]);

        // One of each kind, so that nothing is left out by mistake.
        Assert.Equal(
            ["gear.dxf", "new.toml", "r12/counter-wheel.dxf", "r2000/counter-wheel.dxf", "r2000/counter-wheel.svg", "r2000/manifest.json", "r2000/overview.svg"],
            Folder.Names(desk[name]).Where(file => !file.Contains("crank", StringComparison.Ordinal) && !(file.StartsWith("r12", StringComparison.Ordinal) && !file.EndsWith("dxf", StringComparison.Ordinal))));
    }

    private static Dictionary<string, string> Said(CultureInfo culture, Desk desk, string folder)
    {
        Dictionary<string, string> said = [];
        var thread = new Thread(() =>
        {
            CultureInfo.CurrentCulture = culture;
            CultureInfo.CurrentUICulture = culture;
            Assert.Equal(1.5.ToString(culture), $"{1.5}");
            Directory.CreateDirectory(desk[folder]);
            string[][] lines =
            [
                ["new", desk[$"{folder}/new.toml"]],
                ["check", Job], ["check", Job, "--json"],
                ["cut", Job, "--out", desk[$"{folder}/r2000"]], ["cut", Job, "--out", desk[$"{folder}/r2000"], "--json"],
                ["cut", Job, "--out", desk[$"{folder}/r12"], "--format", "dxf", "--dxf-version", "r12"],
                ["gear", "--module", "0.8", "--teeth", "13", "--profile-shift", "0.25", "--bore", "1/8 in", "--out", desk[$"{folder}/gear.dxf"]],
                ["gear", "--module", "0.8", "--teeth", "13", "--profile-shift", "0.25", "--bore", "1/8 in", "--out", desk[$"{folder}/gear.dxf"], "--json"],
                ["mesh", "--module", "0.8", "--teeth", "13", "87", "--distance", "40.25"], ["mesh", "--module", "0.8", "--teeth", "13", "87", "--distance", "40.25", "--json"],
                ["mesh", "--module", "0,8", "--teeth", "13", "87", "--distance", "1e9"], ["gear", "--help"],
            ];
            foreach (string[] line in lines)
            {
                Ran ran = Ran.Of(line);
                said[string.Join(' ', line).Replace($"/{folder}/", "/", StringComparison.Ordinal)] = ran.Told.Replace($"/{folder}/", "/", StringComparison.Ordinal);
            }
        });
        thread.Start();
        thread.Join();
        return said;
    }
}
