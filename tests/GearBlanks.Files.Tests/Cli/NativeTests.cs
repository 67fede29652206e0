using GearBlanks.Files.Tests.Jobs;
using GearBlanks.Files.Tests.Readers;

namespace GearBlanks.Files.Tests.Cli;

/// <summary>The native executable and the managed program write and say the same, byte for byte.</summary>
public class NativeTests
{
    private const string Variable = "GEARBLANKS_NATIVE";

    [Theory]
    [InlineData("tide-dial")]
    [InlineData("slipway-counter-pair")]
    [InlineData("chart-sled")]
    [InlineData("watch-hut-motion-work")]
    public void Native_and_managed_cut_the_same(string job)
    {
        using var desk = new Desk();
        string file = Path.Combine(Repository.Root, "profiles", "jobs", job + ".toml");
        ReaderProcess.Output native = ReaderProcess.Run(Native(), "cut", file, "--out", desk["native"], "--format", "dxf,svg,png");
        Ran managed = Ran.Of("cut", file, "--out", desk["managed"], "--format", "dxf,svg,png");
        Assert.Equal(managed.Exit, native.ExitCode);
        Assert.Equal(managed.Output.Replace("managed", "native", StringComparison.Ordinal), native.Text);
        Assert.Equal(managed.Errors, native.Errors);
        Folder.AssertSame(desk["managed"], desk["native"]);
    }

    [Theory]
    [InlineData("mesh", "--module", "3", "--teeth", "12", "24", "--profile-shift", "0.6", "0.36", "--tip-rule", "clearance", "--json")]
    [InlineData("mesh", "--module", "0.8", "--teeth", "13", "87", "--profile-shift", "0.3", "-0.3", "--distance", "40", "--json")]
    [InlineData("mesh", "--module", "0,8", "--teeth", "3", "x")]
    [InlineData("chek")]
    [InlineData("check", "missing.toml")]
    public void Native_and_managed_say_the_same(params string[] words)
    {
        ReaderProcess.Output native = ReaderProcess.Run(Native(), words);
        Ran managed = Ran.Of(words);
        Assert.Equal((managed.Exit, managed.Output, managed.Errors), (native.ExitCode, native.Text, native.Errors));
    }

    [Fact]
    public void Alone_it_writes_all_but_pictures()
    {
        using Desk desk = Desk.WithJob();
        File.Copy(Native(), desk["gearblanks"]);
        string[] before = desk.Seen();
        ReaderProcess.Output picture = ReaderProcess.Run(desk["gearblanks"], "cut", desk["pair.toml"], "--out", desk["new"], "--format", "png");
        Assert.Equal((2, ""), (picture.ExitCode, picture.Text));
        Assert.StartsWith("command line: --format = png: Pictures cannot be drawn: the library libSkiaSharp is missing", picture.Errors, StringComparison.Ordinal);
        Assert.Equal(before, desk.Seen());
        ReaderProcess.Output cut = ReaderProcess.Run(desk["gearblanks"], "cut", desk["pair.toml"], "--out", desk["new"]);
        Assert.True(cut.ExitCode == 0, cut.Errors);
    }

    private static string Native()
    {
        string? program = Environment.GetEnvironmentVariable(Variable);
        Assert.True(
            File.Exists(program),
            $"{Variable} must name the native program. tests/run sees to it; by hand: dotnet publish src/GearBlanks.Cli -c Release -o publish, then {Variable}=publish/gearblanks with its whole path.");
        return program!;
    }
}
