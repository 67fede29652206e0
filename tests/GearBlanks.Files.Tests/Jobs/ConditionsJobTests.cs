using GearBlanks.Files.Jobs;
using GearBlanks.Files.Profiles;
using GearBlanks.Mechanisms;
using GearBlanks.Mechanisms.Conditions;

namespace GearBlanks.Files.Tests.Jobs;

/// <summary>The keys of conditions: every one read, every bad value told where it stands.</summary>
public class ConditionsJobTests
{
    private const string Head = "[conditions]\n";

    /// <summary>A line of [conditions]; line and column of the problem, its key, pieces of what it says.</summary>
    public static TheoryData<string, int, int, string, string[]> Bad => new()
    {
        { "centre-distance-tolerance = -0.01", 26, 29, "conditions.centre-distance-tolerance", ["too small", "from 0 to 10 mm", "nearest: 0"] },
        { "centre-distance-tolerance = \"1 cm\"", 26, 29, "conditions.centre-distance-tolerance", ["unit \"cm\" is not known"] },
        { "center-distance-tolerance = 0.01", 26, 1, "conditions.center-distance-tolerance", ["no such key", "nearest: centre-distance-tolerance"] },
        { "post-tilt = 0.3", 26, 13, "conditions.post-tilt", ["too large", "nearest: 0.2"] },
        { "post-tilt = \"1 mm\"", 26, 13, "conditions.post-tilt", ["text, not a number"] },
        { "post-parallelism = -1", 26, 20, "conditions.post-parallelism", ["too small", "from 0 to 0.2"] },
        { "thickness-tolerance = nan", 26, 23, "conditions.thickness-tolerance", ["not a finite number"] },
        { "edge-taper = 11", 26, 14, "conditions.edge-taper", ["too large", "from 0 to 10 degrees"] },
        { "eccentricity = -0.1", 26, 16, "conditions.eccentricity", ["too small"] },
        { "grade = 0", 26, 9, "conditions.grade", ["too small", "from 1 to 11", "nearest: 1"] },
        { "grade = 12", 26, 9, "conditions.grade", ["too large", "nearest: 11"] },
        { "grade = 7.5", 26, 9, "conditions.grade", ["not a whole number", "nearest: 8"] },
        { "outside-standard = 1", 26, 20, "conditions.outside-standard", ["neither true nor false"] },
        { "bore-clearance = 11", 26, 18, "conditions.bore-clearance", ["too large"] },
        { "end-play = -0.1", 26, 12, "conditions.end-play", ["too small"] },
        { "sheet-tolerance = true", 26, 19, "conditions.sheet-tolerance", ["not a length"] },
        { "temperature = 20\nframe-material = \"brass\"", 26, 15, "conditions.temperature", ["not a list"] },
        { "temperature = [10, 20, 30]\nframe-material = \"brass\"", 26, 15, "conditions.temperature", ["not exactly two"] },
        { "temperature = [30, 10]\nframe-material = \"brass\"", 26, 20, "conditions.temperature", ["less than the least", "nearest: 30"] },
        { "temperature = [10, 300]\nframe-material = \"brass\"", 26, 20, "conditions.temperature", ["too large", "from -100 to 200"] },
        { "temperature = [10, 30]", 25, 1, "conditions.frame-material", ["temperature changes", "together with temperature"] },
        { "humidity = [10, 101]\nframe-material = \"brass\"", 26, 17, "conditions.humidity", ["too large", "nearest: 100"] },
        { "humidity = [10, 30]", 25, 1, "conditions.frame-material", ["humidity changes"] },
        { "reference-temperature = 25", 26, 25, "conditions.reference-temperature", ["no range of temperature"] },
        { "reference-humidity = 200", 26, 22, "conditions.reference-humidity", ["too large"] },
        { "frame-material = \"bras\"", 26, 18, "conditions.frame-material", ["no profile of this name", "nearest: brass"] },
        { "builds = 0", 26, 10, "conditions.builds", ["too small", "nearest: 1"] },
        { "builds = 10000001", 26, 10, "conditions.builds", ["too large"] },
        { "seed = -1", 26, 8, "conditions.seed", ["too small", "nearest: 0"] },
        { "seed = 2147483648", 26, 8, "conditions.seed", ["too large", "nearest: 2147483647"] },
        { "distribution = \"gauss\"", 26, 16, "conditions.distribution", ["none of the choices", "\"uniform\", \"normal\""] },
        { "most-binding = 1.5", 26, 16, "conditions.most-binding", ["too large", "from 0 to 1"] },
        { "most-rattling = -0.5", 26, 17, "conditions.most-rattling", ["too small"] },
    };

    /// <summary>The same for keys of gears, sandwiches and meshes.</summary>
    public static TheoryData<string, string, bool, int, int, string, string[]> BadItems => new()
    {
        { "teeth = 20", "teeth = 20\nconditions = { grade = 13 }", true, 18, 24, "sandwiches.layers.conditions.grade", ["too large", "nearest: 11"] },
        { "teeth = 20", "teeth = 20\nconditions = { edge-taper = -1 }", true, 18, 29, "sandwiches.layers.conditions.edge-taper", ["too small"] },
        { "teeth = 20", "teeth = 20\nconditions = { thickness-tolerance = 20 }", true, 18, 38, "sandwiches.layers.conditions.thickness-tolerance", ["too large"] },
        { "teeth = 20", "teeth = 20\nconditions = { excentricity = 0.1 }", true, 18, 16, "sandwiches.layers.conditions.excentricity", ["no such key", "nearest: eccentricity"] },
        { "teeth = 20", "teeth = 20\nconditions = 3", true, 18, 14, "sandwiches.layers.conditions", ["not a table"] },
        { "axis = \"far\"", "axis = \"far\"\nconditions = { bore-clearance = -1 }", true, 21, 33, "sandwiches.conditions.bore-clearance", ["too small"] },
        { "axis = \"far\"", "axis = \"far\"\nconditions = { end-play = 101 }", true, 21, 27, "sandwiches.conditions.end-play", ["too large"] },
        { "gears = [\"pinion\", \"wheel\"]", "gears = [\"pinion\", \"wheel\"]\ncentre-distance-tolerance = 11", true, 25, 29, "meshes.centre-distance-tolerance", ["too large"] },
        { "gears = [\"pinion\", \"wheel\"]", "gears = [\"pinion\", \"wheel\"]\ncentre-distance-tolerance = 0.1", false, 25, 29, "meshes.centre-distance-tolerance", ["[conditions] table"] },
        { "teeth = 20", "teeth = 20\nconditions = { grade = 9 }", false, 18, 14, "sandwiches.layers.conditions", ["[conditions] table"] },
    };

    [Theory]
    [MemberData(nameof(Bad))]
    public void Bad_conditions_are_told_where_they_stand(string lines, int line, int column, string key, string[] says) =>
        IsTold(JobTexts.Pair.Replace("[drive]", $"{Head}{lines}\n[drive]", StringComparison.Ordinal), line, column, key, says);

    [Theory]
    [MemberData(nameof(BadItems))]
    public void Bad_conditions_of_items_are_told_where_they_stand(string good, string bad, bool hasTable, int line, int column, string key, string[] says)
    {
        Assert.Contains(good, JobTexts.Pair, StringComparison.Ordinal);
        string text = JobTexts.Pair.Replace(good, bad, StringComparison.Ordinal);
        IsTold(hasTable ? text.Replace("[drive]", $"{Head}[drive]", StringComparison.Ordinal) : text, line, column, key, says);
    }

    [Fact]
    public void Every_key_arrives()
    {
        string text = JobTexts.Pair
            .Replace("teeth = 20", "teeth = 20\nconditions = { thickness-tolerance = 0.02, edge-taper = 1.8, eccentricity = \"1 thou\", grade = 10 }", StringComparison.Ordinal)
            .Replace("axis = \"far\"", "axis = \"far\"\nconditions = { bore-clearance = 0.07, end-play = 0.3 }", StringComparison.Ordinal)
            .Replace("gears = [\"pinion\", \"wheel\"]", "gears = [\"pinion\", \"wheel\"]\ncentre-distance-tolerance = 0.08", StringComparison.Ordinal)
            .Replace("[drive]", Head + """
                centre-distance-tolerance = 0.02
                post-tilt = 0.001
                post-parallelism = 0.002
                thickness-tolerance = 0.003
                edge-taper = 0.9
                eccentricity = 0.004
                grade = 9
                outside-standard = true
                bore-clearance = 0.05
                end-play = 0.1
                sheet-tolerance = 0.06
                temperature = [5, 35]
                humidity = [30, 80]
                reference-temperature = 22
                reference-humidity = 45
                frame-material = "brass"
                builds = 1234
                seed = 99
                distribution = "normal"
                most-binding = 0.01
                most-rattling = 0.02
                [drive]
                """, StringComparison.Ordinal);
        Outcome<Job> outcome = JobReader.Parse(text, "pair.toml");
        Assert.Empty(outcome.Problems);
        Job job = outcome.Value!;
        JobConditions c = job.Conditions!;
        Assert.Equal((0.02, 0.001, 0.002, 0.06, true, "brass"), (c.CentreDistanceTolerance, c.PostTilt, c.PostParallelism, c.SheetTolerance, c.IsOutsideStandard, c.FrameMaterial));
        Assert.Equal(new JobGearConditions { ThicknessTolerance = 0.003, EdgeTaper = Math.PI / 200, Eccentricity = 0.004, Grade = 9 }, c.Gears);
        Assert.Equal(new JobSandwichConditions { BoreClearance = 0.05, EndPlay = 0.1 }, c.Sandwiches);
        Assert.Equal(new JobClimate(5, 35, 30, 80, 22, 45), c.Climate);
        Assert.Equal(new JobBuilds { Count = 1234, Seed = 99, IsNormal = true, MostBinding = 0.01, MostRattling = 0.02 }, c.Builds);
        Assert.Equal(
            new JobGearConditions { ThicknessTolerance = 0.02, EdgeTaper = Math.PI / 100, Eccentricity = 0.0254, Grade = 10 },
            Assert.IsType<JobGear>(job.Sandwiches[0].Layers[0]).Conditions);
        Assert.Equal(new JobSandwichConditions { BoreClearance = 0.07, EndPlay = 0.3 }, job.Sandwiches[1].Conditions);
        Assert.Equal(0.08, job.Meshes[0].CentreDistanceTolerance);
    }

    [Fact]
    public void An_empty_table_asks_for_the_check_with_nothing_that_differs()
    {
        Job job = JobReader.Parse(JobTexts.Pair + Head, "pair.toml").Value!;
        Assert.Equal(new JobBuilds { Count = 10_000, Seed = 1 }, job.Conditions!.Builds);
        Assert.Null(job.Conditions.Climate);
        Assert.Null(JobReader.Parse(JobTexts.Pair, "pair.toml").Value!.Conditions);
    }

    [Fact]
    public void A_material_without_its_growth_is_told_only_where_a_climate_is_asked_for()
    {
        string text = JobTexts.Pair.Replace("module = 1", "module = 1\nmaterial = \"pvc\"", StringComparison.Ordinal);
        Job warm = JobReader.Parse(text + Head + "temperature = [10, 30]\nframe-material = \"steel\"\n", "pair.toml").Value!;
        var problems = Resolver.Resolve(warm, ProfileFinder.BuiltIn).Problems;
        Assert.Equal(2, problems.Length);
        Assert.All(problems, problem => Assert.Contains("no thermal-expansion", problem.Message, StringComparison.Ordinal));
        Assert.NotNull(Resolver.Resolve(JobReader.Parse(text + Head, "pair.toml").Value!, ProfileFinder.BuiltIn).Value);
    }

    private static void IsTold(string text, int line, int column, string key, string[] says)
    {
        Outcome<Job> outcome = JobReader.Parse(text, "pair.toml");
        Assert.Null(outcome.Value);
        Problem problem = Assert.Single(outcome.Problems);
        Assert.Equal((new Place("pair.toml", line, column), key), (problem.Place, problem.Key));
        string told = $"{problem.Message} | value: {problem.Value} | {problem.Allowed} | nearest: {problem.Nearest}";
        Assert.All(says, piece => Assert.Contains(piece, told, StringComparison.Ordinal));
    }
}
