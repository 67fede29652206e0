using GearBlanks.Files.Profiles;
using GearBlanks.Files.Tests.Jobs;
using GearBlanks.Findings;
using GearBlanks.Mechanisms;

namespace GearBlanks.Files.Tests.Profiles;

/// <summary>What conditions take from profiles.</summary>
public sealed class ConditionsProfileTests : IDisposable
{
    private static readonly Place Asked = new("job.toml", 3, 8);

    private readonly string _folder = Directory.CreateTempSubdirectory("gearblanks-conditions-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    // Carville Ltd, cast acrylic: 77e-6 /K. lon-so.com, acetal: 85e-6 /K. APA, Dimensional stability and flatness, second-hand: plywood in plane 3.4e-6 per degree F,
    // 0.0002 for 10 per cent of relative humidity. W. D. Callister, Table B.6: metals. The growth of acrylic, acetal and metals in damp air: common practice, no source.
    [Theory]
    [InlineData("acrylic", 77e-6, 4e-5)]
    [InlineData("pom", 85e-6, 2e-5)]
    [InlineData("plywood", 6.1e-6, 0.0002 / 10)]
    [InlineData("brass", 20.5e-6, 0.0)]
    [InlineData("steel", 11.7e-6, 0.0)]
    [InlineData("aluminium", 23.6e-6, 0.0)]
    [InlineData("pvc", null, null)]
    public void Materials_grow_as_published(string name, double? heat, double? damp)
    {
        Material material = ProfileFinder.BuiltIn.Material(name, Asked).Value!;
        Assert.Equal(heat, material.ThermalExpansion);
        Assert.Equal(damp, material.MoistureExpansion);
    }

    [Fact]
    public void Limits_written_before_there_were_conditions_take_those_built_in()
    {
        Directory.CreateDirectory(Path.Combine(_folder, "limits"));
        string text = File.ReadAllText(Path.Combine(Repository.Root, "profiles", "limits", "hand-assembled.toml"));
        File.WriteAllText(Path.Combine(_folder, "limits", "old.toml"), text[..text.IndexOf("[backlash-least]", StringComparison.Ordinal)]);
        Limits builtIn = ProfileFinder.BuiltIn.Limits("hand-assembled", Asked).Value!;
        Limits old = ProfileFinder.BesideJob(Path.Combine(_folder, "job.toml")).Limits("old", Asked).Value!;
        Assert.Equal(builtIn.Conditions, old.Conditions);
        Assert.Equal(0, builtIn.Conditions.BacklashLeast.FailsBelow);
        Assert.Equal(0.4, builtIn.Conditions.BacklashGreatest.FailsAbove);
        Assert.Equal((-0.01, 0), (builtIn.Conditions.FilletClearanceLeast.FailsBelow, builtIn.Conditions.FilletClearanceLeast.TightBelow));
        Assert.Equal(0.001, builtIn.Conditions.BindingShare.FailsAbove);
        Assert.Equal(0.1, builtIn.Conditions.RattlingShare.FailsAbove);
        Assert.Equal(0.5, builtIn.Conditions.ApproachShare.TightAbove);
    }

    [Fact]
    public void A_limit_of_conditions_can_be_ones_own()
    {
        Directory.CreateDirectory(Path.Combine(_folder, "limits"));
        string text = File.ReadAllText(Path.Combine(Repository.Root, "profiles", "limits", "hand-assembled.toml"));
        File.WriteAllText(Path.Combine(_folder, "limits", "own.toml"), text.Replace("fails-above = 0.001\n", "fails-above = 0.02\n", StringComparison.Ordinal));
        Assert.Equal(0.02, ProfileFinder.BesideJob(Path.Combine(_folder, "job.toml")).Limits("own", Asked).Value!.Conditions.BindingShare.FailsAbove);
    }
}
