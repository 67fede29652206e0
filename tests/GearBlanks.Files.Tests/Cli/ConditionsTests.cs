using System.Text.Json;
using GearBlanks.Files.Tests.Jobs;

namespace GearBlanks.Files.Tests.Cli;

/// <summary>Conditions as <c>check</c> tells them, to people and to programs.</summary>
public class ConditionsTests
{
    private const string Shop = """
        [conditions]
        centre-distance-tolerance = 0.02
        thickness-tolerance = 0.005
        bore-clearance = 0.02
        grade = 9
        outside-standard = true
        seed = 5
        builds = 2000

        """;

    [Fact]
    public void Json_has_every_field()
    {
        using Desk desk = WithConditions();
        Ran ran = Ran.Of("check", desk["pair.toml"], "--json");
        JsonElement conditions = ran.Json.GetProperty("conditions");
        Assert.Equal((2000, 5, "uniform", "outside ISO 1328-1"), (
            conditions.GetProperty("builds").GetInt32(), conditions.GetProperty("seed").GetInt32(), conditions.GetProperty("distribution").GetString(),
            conditions.GetProperty("standard").GetString()));
        Assert.InRange(conditions.GetProperty("bindingShare").GetDouble(), 0, 1);
        Assert.InRange(conditions.GetProperty("rattlingShare").GetDouble(), 0, 1);
        JsonElement mesh = Assert.Single(conditions.GetProperty("meshes").EnumerateArray());
        JsonElement backlash = mesh.GetProperty("backlash");
        double Of(string name) => backlash.GetProperty(name).GetDouble();
        Assert.True(Of("least") < Of("asDrawn") && Of("asDrawn") < Of("greatest"));
        double[] spread = [.. backlash.GetProperty("rootSumSquare").EnumerateArray().Select(one => one.GetDouble())];
        Assert.True(Of("least") < spread[0] && spread[0] < Of("mean") && Of("mean") < spread[1] && spread[1] < Of("greatest"));
        Assert.Equal(Of("mean"), (spread[0] + spread[1]) / 2, 12);
        Assert.Equal(2, mesh.GetProperty("atLeastDistance").GetProperty("tipClearance").GetArrayLength());
        Assert.True(mesh.GetProperty("atGreatestDistance").GetProperty("contactRatio").GetDouble() < mesh.GetProperty("atLeastDistance").GetProperty("contactRatio").GetDouble());
        Assert.Equal(JsonValueKind.Null, mesh.GetProperty("leastFaceOverlap").ValueKind);
        Assert.InRange(mesh.GetProperty("approachShare").GetDouble(), 0, 1);
        Assert.False(mesh.GetProperty("stepUp").GetBoolean());
        string?[] names = [.. mesh.GetProperty("contributions").EnumerateArray().Select(one => one.GetProperty("name").GetString())];
        Assert.Superset(new HashSet<string?> { "centre distance", "bore clearance", "eccentricity", "tooth thickness", "single pitch", "profile" }, names.ToHashSet());
    }

    [Fact]
    public void A_section_shows_every_figure_at_both_ends_of_the_distance()
    {
        using Desk desk = WithConditions();
        string told = Ran.Of("check", desk["pair.toml"], "--section", "pinion - wheel").Output;
        Assert.Contains("least distance", told, StringComparison.Ordinal);
        Assert.Contains("greatest distance", told, StringComparison.Ordinal);
        Assert.Contains("specific sliding of pinion, root and tip", told, StringComparison.Ordinal);
        Assert.Contains("eccentricity of wheel", told, StringComparison.Ordinal);
        Assert.Contains("ok     contact-ratio: ", told, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_job_gives_the_same_text_again()
    {
        using Desk desk = WithConditions();
        Assert.Equal(Ran.Of("check", desk["pair.toml"], "--json").Output, Ran.Of("check", desk["pair.toml"], "--json").Output);
    }

    [Fact]
    public void People_are_told_the_bounds_the_seed_and_what_is_not_checked_once()
    {
        using Desk desk = WithConditions();
        string told = Ran.Of("check", desk["pair.toml"]).Output;
        Assert.Contains("2000 random builds, uniform, seed 5", told, StringComparison.Ordinal);
        Assert.Contains("outside ISO 1328-1", told, StringComparison.Ordinal);
        Assert.Equal(2, told.Split("Not checked under these conditions: strength, torque, friction, unbalance of hands, burrs").Length);
    }

    [Fact]
    public void Without_conditions_nothing_is_told_of_them()
    {
        using Desk desk = Desk.WithJob();
        Assert.DoesNotContain("conditions", Ran.Of("check", desk["pair.toml"]).Output, StringComparison.Ordinal);
        Assert.False(Ran.Of("check", desk["pair.toml"], "--json").Json.TryGetProperty("conditions", out _));
    }

    private static Desk WithConditions()
    {
        var desk = new Desk();
        File.WriteAllText(desk["pair.toml"], JobTexts.Pair + Shop);
        return desk;
    }
}
