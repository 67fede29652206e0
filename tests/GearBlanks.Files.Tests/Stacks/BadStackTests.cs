using System.Text.RegularExpressions;
using GearBlanks.Files.Jobs;
using GearBlanks.Files.Profiles;
using GearBlanks.Files.Tests.Jobs;
using GearBlanks.Mechanisms;

namespace GearBlanks.Files.Tests.Stacks;

/// <summary>Each row spoils one piece of a good job with a whole stack, and says what must be told of it, and where.</summary>
public sealed partial class BadStackTests
{
    /// <summary>What is replaced, by what; what stands at the place that must be told; its key; pieces of what it says.</summary>
    public static TheoryData<string, string, string, string, string[]> Spoilt => new()
    {
        // Heights and thicknesses
        { "thickness-tolerance = 0.05", "thickness-tolerance = -0.05", "-0.05", "defaults.thickness-tolerance", ["too small", "from 0 to 10 mm", "nearest: 0"] },
        { "thickness-tolerance = 0.05", "thickness-tolerance = \"0.05\"", "\"0.05\"", "defaults.thickness-tolerance", ["unit is missing"] },
        { "thickness-tolerance = 0.05", "thicknes-tolerance = 0.05", "thicknes-tolerance", "defaults.thicknes-tolerance", ["no such key", "nearest: thickness-tolerance"] },
        { "teeth = 40", "teeth = 40\nthickness-tolerance = 11", "11\n", "sandwiches.layers.thickness-tolerance", ["too large", "nearest: 10"] },
        { "teeth = 40", "teeth = 40\nmeasured-thickness = -7", "-7", "sandwiches.layers.measured-thickness", ["too small", "over 0"] },
        { "height = 8.4", "height = 8.4\nmeasured-height = true", "true", "sandwiches.measured-height", ["not a length"] },
        { "height = 8.4", "height = 8.4\nheight-tolerance = -1", "-1\n", "sandwiches.height-tolerance", ["too small", "nearest: 0"] },

        // Washers and bores
        { "teeth = 40", "teeth = 40\ndiameter = 42", "42\n", "sandwiches.layers.diameter", ["Only a washer has this", "tip-diameter"] },
        { "washer = 3\ndiameter = 22\nbore = 4", "washer = 3\ndiameter = 22\nbore = 22", "22\nbore-class", "sandwiches.layers.bore", ["as wide as the washer"] },
        { "washer = 3\ndiameter = 22\nbore = 4", "washer = 3\ndiameter = 22", "\"H8\"\n[[sandwiches.layers]]\ngear = \"lay pinion\"", "sandwiches.layers.bore-class", ["no round bore"] },
        { "bore-class = \"P7\"", "bore-class = \"p7\"", "\"p7\"", "sandwiches.layers.bore-class", ["no tolerance class of a hole", "such as \"H7\"", "nearest: P7"] },
        { "bore-class = \"P7\"", "bore-class = \"H12\"", "\"H12\"", "sandwiches.layers.bore-class", ["no tolerance class", "from 5 to 11"] },
        { "bore-class = \"P7\"", "bore-class = 7", "7\nseat", "sandwiches.layers.bore-class", ["not text"] },
        { "bore-class = \"P7\"", "bore = 0.5\nbore-class = \"P7\"", "\"P7\"", "sandwiches.layers.bore-class", ["not go for this size", "from 1 to 120 mm"] },
        { "bore-class = \"P7\"", "bore = 0\nbore-class = \"P7\"", "\"P7\"", "sandwiches.layers.bore-class", ["no round bore"] },
        { "bore-class = \"P7\"", "measured-bore = -4", "-4\nseat", "sandwiches.layers.measured-bore", ["too small"] },
        { "seat = \"pressed\"", "seat = \"press\"", "\"press\"", "sandwiches.layers.seat", ["none of the choices", "\"runs\", \"pressed\", \"held\"", "nearest: pressed"] },

        // Screws
        { "count = 4, circle = 14, hole = 2.4, head = 3.8, thread = 2", "count = 4, circle = 14, hole = 2.4, head = 3.8, thread = 3", "3, head-height", "sandwiches.layers.screws.thread", ["does not go through its hole", "nearest: 2.4"] },
        { "count = 4, circle = 14, hole = 2.4, head = 3.8, thread = 2,", "count = 4, circle = 14, hole = 2.4, head = 3.8,", "5.2, socket", "sandwiches.layers.screws.length", ["without its thread", "length together with thread"] },
        { "circle = 14, hole = 2.4, head = 3.8, thread = 2, head-height = 1.3, heads = \"down\", length = 5.2", "circle = 14, hole = 2.4, head = 3.8, thread = 2, head-height = 1.3, heads = \"down\"", "2.5 }", "sandwiches.layers.screws.socket", ["without the screw's length"] },
        { "circle = 14, hole = 2.4, head = 3.8, thread = 2, head-height = 1.3, heads = \"down\"", "circle = 14, hole = 2.4, head = 3.8, thread = 2, head-height = 1.3, heads = \"under\"", "\"under\"", "sandwiches.layers.screws.heads", ["none of the choices", "\"up\", \"down\""] },
        { "circle = 14, hole = 2.4, head = 3.8, thread = 2, head-height = 1.3", "circle = 14, hole = 2.4, head = 3.8, thread = 2, head-height = -1.3", "-1.3", "sandwiches.layers.screws.head-height", ["too small", "nearest: 0"] },
        { "circle = 14, hole = 2.4, head = 3.8, thread = 2", "circle = 14, hole = 2.4, head = 3.8, thread = 2, grip = 0", "0, head", "sandwiches.layers.screws.grip", ["too small"] },

        // Spindles
        { "name = \"lay post\", diameter = 4,", "name = \"lay post\",", "{ name = \"lay post\"", "axes.spindles.diameter", ["\"diameter\" is missing"] },
        { "name = \"lay post\"", "name = \"bell post\"", "\"bell post\", diameter = 4, class = \"f7\", bottom = 0, top = 20", "axes.spindles.name", ["exists already"] },
        { "bottom = 0, top = 11", "bottom = 11, top = 11", "11 }", "axes.spindles.top", ["not above the lower one", "a height over bottom"] },
        { "class = \"h6\"", "class = \"H6\"", "\"H6\"", "axes.spindles.class", ["no tolerance class of a shaft", "nearest: h6"] },
        { "class = \"h6\"", "class = \"h6\", bore = 4", "4, bottom", "axes.spindles.bore", ["as wide as the tube"] },
        { "class = \"h6\"", "class = \"h6\", bore-class = \"H7\"", "\"H7\"", "axes.spindles.bore-class", ["no bore to give this to"] },
        { "top = 22, turns-with = \"crank\"", "top = 22, turns-with = \"cranck\"", "\"cranck\"", "axes.spindles.turns-with", ["no sandwich of this name", "nearest: crank"] },
        { "top = 22, turns-with = \"crank\"", "top = 22, turns-with = \"bell\"", "\"bell\" }", "axes.spindles.turns-with", ["turns on another axis", "a sandwich on the axis \"crank\""] },

        // Columns, plates, arms, hands
        { "position = [-50, -50]\n", "", "[[columns]]", "columns.position", ["\"position\" is missing"] },
        { "diameter = 8\nbottom = 0\ntop = 24", "diameter = 8\nbottom = 0\ntop = -24", "-24", "columns.top", ["not above the lower one"] },
        { "length = 160\nwidth = 160\nbottom = -4", "length = 160\nbottom = -4", "[[plates]]\nname = \"base\"", "plates.width", ["size is missing", "either diameter, or length with width"] },
        { "length = 160\nwidth = 160\nbottom = -4", "length = 160\nwidth = 160\ndiameter = 160\nbottom = -4", "160\nbottom = -4", "plates.diameter", ["disc and a rectangle at once"] },
        { "holes = [{ position = [0, 0], diameter = 4 }]", "holes = [{ diameter = 4 }]", "{ diameter = 4 }", "plates.holes.position", ["\"position\" is missing"] },
        { "to = \"lay\"", "to = \"crank\"", "\"crank\"\nwidth", "arms.to", ["ends at the axis where it begins"] },
        { "to = \"lay\"", "to = \"lays\"", "\"lays\"", "arms.to", ["no axis of this name", "nearest: lay"] },
        { "width = 6", "width = 0", "0\nbottom = 16", "arms.width", ["too small"] },
        { "bore = 4\nturns-with = \"crank\"", "bore = 4\nturns-with = \"lay\"", "\"lay\"\n\n[drive]", "arms.turns-with", ["turns on another axis"] },
        { "height = 18.5\nthickness = 1\n", "thickness = 1\n", "[[hands]]", "hands.height", ["\"length\" but no \"height\"", "or none of them"] },
        { "length = 20\n", "length = -20\n", "-20", "hands.length", ["too small"] },
    };

    [Theory]
    [MemberData(nameof(Spoilt))]
    public void Spoilt_stacks_are_told_where_they_are_spoilt(string good, string bad, string at, string key, string[] says)
    {
        Assert.Equal(2, StackJobs.Good.Split(good).Length);
        string text = StackJobs.Good.Replace(good, bad, StringComparison.Ordinal);
        Problem problem = Assert.Single(JobReader.Parse(text, "winder.toml").Problems);
        Assert.Equal((PlaceOf(at, text), key), (problem.Place, problem.Key));
        string told = $"{problem.Message} | value: {problem.Value} | {problem.Allowed} | nearest: {problem.Nearest}";
        Assert.All(says, piece => Assert.Contains(piece, told, StringComparison.Ordinal));
    }

    [Fact]
    public void Spoilt_texts_do_no_harm()
    {
        var mutator = new JobMutator([StackJobs.Good], [JobTexts.Compact]);
        var random = new Random(5);
        for (int i = 0; i < 500; i++)
        {
            Outcome<Job> outcome = JobReader.Parse(mutator.Next(random), "x.toml");
            Assert.True(outcome.Value is not null ^ outcome.Problems.Length > 0);
        }
    }

    [Fact]
    public void Other_numbers_give_a_report_or_a_problem()
    {
        string[] others = ["0", "0.001", "0.3", "1", "2", "4", "7.5", "33", "-5", "1000", "99999", "1e-9"];
        Match[] numbers = Number().Matches(StackJobs.Good).ToArray();
        var random = new Random(6);
        int reports = 0;
        for (int i = 0; i < 600; i++)
        {
            Match number = numbers[random.Next(numbers.Length)];
            string text = StackJobs.Good.Remove(number.Index, number.Length).Insert(number.Index, others[random.Next(others.Length)]);
            Outcome<Job> outcome = JobReader.Parse(text, "x.toml");
            if (outcome.Value is not { } job)
            {
                Assert.NotEmpty(outcome.Problems);
            }
            else if (Resolver.Resolve(job, ProfileFinder.BuiltIn) is { Value: { } mechanism })
            {
                reports++;
                Assert.All(MechanismCheck.Of(mechanism).Findings, finding => Assert.True(double.IsFinite(finding.Figure), finding.Message));
            }
        }

        Assert.InRange(reports, 200, 599);
    }

    private static Place PlaceOf(string at, string text)
    {
        string[] before = text[..text.IndexOf(at, StringComparison.Ordinal)].Split('\n');
        return new Place("winder.toml", before.Length, before[^1].Length + 1);
    }

    [GeneratedRegex(@"(?<=[=\[,] ?)-?[0-9]+(\.[0-9]+)?")]
    private static partial Regex Number();
}
