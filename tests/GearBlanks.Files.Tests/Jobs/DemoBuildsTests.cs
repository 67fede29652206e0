using System.Globalization;
using GearBlanks.Files.Jobs;
using GearBlanks.Files.Profiles;
using GearBlanks.Mechanisms;
using GearBlanks.Mechanisms.Conditions;

namespace GearBlanks.Files.Tests.Jobs;

/// <summary>Every demo under a shop's conditions. GEARBLANKS_BUILDS asks for more builds than a quick run draws.</summary>
public class DemoBuildsTests
{
    private const string Shop =
        """

        [conditions]
        centre-distance-tolerance = 0.02
        thickness-tolerance = 0.005
        edge-taper = 0.05
        bore-clearance = 0.03
        grade = 9
        outside-standard = true
        temperature = [5, 35]
        humidity = [30, 80]
        frame-material = "steel"
        seed = 4
        """;

    private static readonly string Builds = int.Parse(Environment.GetEnvironmentVariable("GEARBLANKS_BUILDS") ?? "40000", CultureInfo.InvariantCulture)
        .ToString(CultureInfo.InvariantCulture);

    public static TheoryData<string, string> Demos => [.. from file in Directory.EnumerateFiles(Path.Combine(Repository.Root, "profiles", "jobs"), "*.toml")
                                                          from distribution in (string[])["uniform", "normal"]
                                                          select (Path.GetFileName(file), distribution)];

    [Theory]
    [MemberData(nameof(Demos))]
    public void No_build_passes_the_bounds_and_the_root_of_squares_is_the_samples_spread(string demo, string distribution)
    {
        string text = File.ReadAllText(Path.Combine(Repository.Root, "profiles", "jobs", demo));
        Job job = JobReader.Parse($"{text}{Shop}\nbuilds = {Builds}\ndistribution = \"{distribution}\"\n", demo).Value!;
        if (job.Sandwiches.SelectMany(sandwich => sandwich.Layers).OfType<JobGear>().Any(gear => gear.Material is null) && job.Defaults.Material is null)
        {
            job = job with { Defaults = job.Defaults with { Material = "acrylic" } };
        }

        Outcome<Mechanism> mechanism = Resolver.Resolve(job, ProfileFinder.BuiltIn);
        Assert.Empty(mechanism.Problems);
        ConditionsReport report = MechanismCheck.Of(mechanism.Value!).Conditions!;
        Assert.Equal(Builds, report.Builds.ToString(CultureInfo.InvariantCulture));
        Assert.Equal(mechanism.Value!.Meshes.Length, report.Meshes.Length);
        Assert.All(report.Meshes, mesh =>
        {
            Assert.True(mesh.Least <= mesh.Drawn.Least && mesh.Drawn.Greatest <= mesh.Greatest);
            Assert.InRange(mesh.ThreeDeviations / (3 * mesh.Drawn.Deviation), 0.95, 1.05);
        });
    }
}
