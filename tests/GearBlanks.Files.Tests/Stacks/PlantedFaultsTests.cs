using GearBlanks.Files.Jobs;
using GearBlanks.Files.Profiles;
using GearBlanks.Findings;
using GearBlanks.Mechanisms;

namespace GearBlanks.Files.Tests.Stacks;

/// <summary>Faults planted in a good mechanism: each row changes one piece of it and says what must be found, and where.</summary>
public sealed class PlantedFaultsTests
{
    private const string LayScrews = "count = 4, circle = 14, hole = 2.4, head = 3.8, thread = 2, head-height = 1.3, heads = \"down\", length = 5.2, socket = 2.5";
    private const string BellScrews = "count = 5, circle = 18, hole = 2.4, head = 3.8, thread = 2, head-height = 1.3, heads = \"down\"";

    /// <summary>What is planted; what is replaced, by what; the finding and its place.</summary>
    public static TheoryData<string, string, string, string, string> Faults => new()
    {
        // Bodies of different sandwiches
        { "thin flange under the pinion: the bell wheel's level is missed", "washer = 3\ndiameter = 22", "washer = 0.5\ndiameter = 22", "face-overlap", "mesh second" },
        { "lay sandwich set lower: its heads run into the base", "axis = \"lay\"\nheight = 2", "axis = \"lay\"\nheight = 1", "collision", "the screw heads of lay wheel and plate base" },
        { "taller screw heads run into the base", LayScrews, LayScrews.Replace("head-height = 1.3", "head-height = 2.2", StringComparison.Ordinal), "collision", "the screw heads of lay wheel and plate base" },
        { "bell sandwich set lower: its wheel rubs the flange of the lay", "axis = \"bell\"\nheight = 8.4", "axis = \"bell\"\nheight = 8", "stack-clearance", "washer of lay and gear bell wheel" },
        { "flange of the lay as wide as a wheel", "washer = 3\ndiameter = 22", "washer = 3\ndiameter = 80", "collision", "washer of lay and spindle bell post" },
        { "flange of the lay over the crank pinion", "washer = 3\ndiameter = 22", "washer = 3\ndiameter = 44", "stack-clearance", "gear crank pinion and washer of lay" },
        { "bell axis beside the crank: a foreign post in a gear", "distance = 35.05\ndirection = 90", "distance = 35.05\ndirection = 200", "collision", "gear crank pinion and spindle bell post" },
        { "post of the lay reaches the striker", "bottom = 0, top = 11", "bottom = 0, top = 17", "collision", "arm striker and spindle lay post" },
        { "crank rod through a base without a hole", "\nholes = [{ position = [0, 0], diameter = 4 }]", "", "collision", "spindle crank rod and plate base" },
        { "hole of the base beside the crank", "holes = [{ position = [0, 0], diameter = 4 }]", "holes = [{ position = [1, 0], diameter = 4 }]", "collision", "spindle crank rod and plate base" },
        { "crank rod through the closed cover", "bottom = 24\nthickness = 2\nholes = [{ position = [0, 0], diameter = 5 }]", "bottom = 21\nthickness = 2", "collision", "spindle crank rod and plate cover" },
        { "cover down on the hand", "bottom = 24\nthickness = 2\nholes", "bottom = 19\nthickness = 2\nholes", "collision", "hand tell-tale and plate cover" },
        { "column within the bell wheel", "position = [-50, -50]", "position = [30, 60]", "collision", "gear bell wheel and column corner column" },
        { "column just beside the lay wheel", "position = [-50, -50]", "position = [30.05, -25.1]", "side-clearance", "gear lay wheel and column corner column" },
        { "column in a part of the striker's turn", "position = [-50, -50]", "position = [0, -30]", "collision", "arm striker and column corner column" },
        { "striker that strikes the bell wheel in a part of its turn", "bottom = 16\nthickness = 2", "bottom = 10\nthickness = 2", "collision", "gear bell wheel and arm striker" },
        { "hand too low: it strikes the arm", "height = 18.5\nthickness = 1", "height = 17\nthickness = 1", "collision", "hand tell-tale and arm striker" },
        { "sheet thicker than drawn, as measured", "teeth = 40", "teeth = 40\nmeasured-thickness = 3.4", "stack-clearance", "washer of lay and gear bell wheel" },
        { "sheet thicker than drawn, and nobody said so", "teeth = 40", "teeth = 40\nmeasured-thickness = 3.4", "height-disagreement", "gear lay wheel" },
        { "sandwich that hangs lower than drawn", "axis = \"bell\"\nheight = 8.4", "axis = \"bell\"\nheight = 8.4\nmeasured-height = 8.05", "height-disagreement", "sandwich bell" },
        { "sheet that scatters", "thickness-tolerance = 0.05", "thickness-tolerance = 0.3", "stack-clearance", "washer of lay and gear bell wheel" },
        { "end play", "axis = \"bell\"\nheight = 8.4", "axis = \"bell\"\nheight = 8.4\nheight-tolerance = 0.4", "stack-clearance", "washer of lay and gear bell wheel" },

        { "hand drawn into its own wheel", "height = 18.5\nthickness = 1", "height = 9\nthickness = 1", "collision", "gear bell wheel and hand tell-tale" },

        // Screws
        { "screws too long", LayScrews, LayScrews.Replace("5.2", "6", StringComparison.Ordinal), "screw-end-room", "gear lay wheel" },
        { "screws too long for a flange tapped through", LayScrews, LayScrews.Replace("5.2, socket = 2.5", "8", StringComparison.Ordinal), "screw-end-room", "gear lay wheel" },
        { "screws too short", LayScrews, LayScrews.Replace("5.2", "3.5", StringComparison.Ordinal), "screw-engagement", "gear lay wheel" },
        { "sockets too shallow", LayScrews, LayScrews.Replace("socket = 2.5", "socket = 1.8", StringComparison.Ordinal), "screw-end-room", "gear lay wheel" },
        { "heads on the inner face, under the flange", LayScrews, LayScrews.Replace("down", "up", StringComparison.Ordinal), "head-clearance", "gear lay wheel" },
        { "heads on the inner face of the bell wheel", BellScrews, BellScrews.Replace("down", "up", StringComparison.Ordinal), "head-clearance", "gear bell wheel" },
        { "flange too small for its sockets", "washer = 3\ndiameter = 22", "washer = 3\ndiameter = 17", "wall", "washer of lay" },
        { "both gears on one flange by the same sockets", "gear = \"lay pinion\"\nteeth = 20", "gear = \"lay pinion\"\nteeth = 20\nscrews = { count = 4, circle = 13, hole = 2.4 }", "screw-room", "sandwich lay" },

        // Fits and wobble
        { "pressing post where a wheel should run", "name = \"lay post\", diameter = 4, class = \"f7\"", "name = \"lay post\", diameter = 4, class = \"p6\"", "fit-clearance", "gear lay wheel" },
        { "post thicker than drawn, as measured", "name = \"lay post\", diameter = 4, class = \"f7\"", "name = \"lay post\", diameter = 4, measured-diameter = 4.03", "fit-clearance", "gear lay pinion" },
        { "bore drilled too wide", "gear = \"lay pinion\"\nteeth = 20", "gear = \"lay pinion\"\nteeth = 20\nmeasured-bore = 4.2", "fit-clearance", "gear lay pinion" },
        { "running bore on a pressed gear", "bore-class = \"P7\"", "bore-class = \"H7\"", "fit-interference", "gear crank pinion" },
        { "hub that does not guide: the wheel leans onto the flange", "diameter = 26\nbore = 4\nbore-class = \"H8\"", "diameter = 26", "wobble", "sandwich bell" },
        { "wide bore: the mesh can bind", "teeth = 50", "teeth = 50\nmeasured-bore = 4.15", "play-backlash", "mesh second" },
    };

    /// <summary>Changes that do no harm: what is replaced, by what.</summary>
    public static TheoryData<string, string> Harmless => new()
    {
        { "bottom = 0, top = 11", "bottom = 0, top = 15.7" },
        { "bottom = -4, top = 22, turns", "bottom = -4, top = 19, turns" },
        { "bottom = -4, top = 22, turns", "bottom = -4, top = 30, turns" },
        { "bottom = 0, top = 20", "bottom = 0, top = 23.5" },
        { "diameter = 8\nbottom", "diameter = 12\nbottom" },
        { "position = [-50, -50]", "position = [60, -50]" },
        { "bottom = 16\nthickness", "bottom = 15.5\nthickness" },
        { "width = 6", "width = 5" },
        { "length = 20\n", "length = 8\n" },
        { "tail = 5\n", "" },
        { "bottom = 24\nthickness = 2", "bottom = 26\nthickness = 2" },
        { "bottom = 24\nthickness = 2", "bottom = 24\nthickness = 5" },
        { "bottom = -4\nthickness = 4", "bottom = -6\nthickness = 6" },
        { "holes = [{ position = [0, 0], diameter = 4 }]", "holes = [{ position = [0, 0], diameter = 6 }]" },
        { "height = 8.4", "height = 8.45" },
        { "washer = 3\ndiameter = 22", "washer = 3\ndiameter = 24" },
        { "thickness-tolerance = 0.05", "thickness-tolerance = 0.02" },
        { "teeth = 40", "teeth = 40\nmeasured-thickness = 3.03" },
        { "height = 8.4", "height = 8.4\nmeasured-height = 8.43" },
        { "height = 8.4", "height = 8.4\nheight-tolerance = 0.02" },
        { LayScrews, LayScrews.Replace("5.2", "5.1", StringComparison.Ordinal) },
        { LayScrews, LayScrews.Replace("head-height = 1.3", "head-height = 0", StringComparison.Ordinal) },
        { LayScrews, LayScrews.Replace("socket = 2.5", "socket = 2.9", StringComparison.Ordinal) },
        { LayScrews, LayScrews.Replace("count = 4", "count = 6", StringComparison.Ordinal) },
        { LayScrews, LayScrews.Replace(", socket = 2.5", "", StringComparison.Ordinal) },
        { "name = \"lay post\", diameter = 4, class = \"f7\"", "name = \"lay post\", diameter = 4, class = \"g6\"" },
        { "name = \"lay post\", diameter = 4, class = \"f7\"", "name = \"lay post\", diameter = 4, class = \"e8\"" },
        { "name = \"lay post\", diameter = 4, class = \"f7\"", "name = \"lay post\", diameter = 4, measured-diameter = 3.985" },
        { "bore-class = \"P7\"", "bore-class = \"S7\"" },
        { "bore-class = \"P7\"", "measured-bore = 3.985" },
        { "seat = \"pressed\"", "seat = \"held\"" },
        { "washer = 0.5", "washer = 0.8" },
        { "distance = 35.05\ndirection = 90", "distance = 35.05\ndirection = 100" },
    };

    public static TheoryData<string> GoodJobs => ["chart-sled", "first-pair", "slipway-counter-pair", "tide-dial", "watch-hut-motion-work"];

    [Fact]
    public void The_good_mechanism_gives_no_alarm() => Assert.Equal("", Alarms(Report(StackJobs.Good)));

    /// <summary>Faults of the tide dial that only its comments told of.</summary>
    [Theory]
    [InlineData("washer = 2                # collar", "washer = 0.5                # collar", "head-clearance", "gear tide wheel")]
    [InlineData("head-height = 1.6 }\n\n[[sandwiches.layers]]\nwasher = 2                # collar", "head-height = 2.2 }\n\n[[sandwiches.layers]]\nwasher = 3                # collar", "collision", "the screw heads of tide wheel and gear lay wheel 87")]
    [InlineData("bottom = 0, top = 10 }", "bottom = 0, top = 14.5 }", "collision", "gear moon wheel and spindle first lay post")]
    [InlineData("start-angle = 0, thread = 1.6, head-height = 1.6, heads = \"down\"", "start-angle = 0, thread = 1.6, head-height = 2.2, heads = \"down\"", "collision", "the screw heads of lay wheel 59 and plate frame plate")]
    [InlineData("bore = 4.03, bottom = 14.3", "bore = 4.13, bottom = 14.3", "wobble", "sandwich moon")]
    [InlineData("bore = 3.03, bottom = 6", "bore = 3.13, bottom = 6", "play-backlash", "mesh first lay to tide")]
    public void Faults_planted_in_the_tide_dial(string good, string bad, string name, string place)
    {
        string dial = File.ReadAllText(Path.Combine(Jobs.Repository.Root, "profiles", "jobs", "tide-dial.toml"));
        Assert.Contains(good, dial, StringComparison.Ordinal);
        MechanismReport report = Report(dial.Replace(good, bad, StringComparison.Ordinal));
        Assert.True(report.Findings.Any(finding => finding.Name == name && finding.Place == place && finding.Level == Level.Fails), Alarms(report));
    }

    [Theory]
    [MemberData(nameof(Harmless))]
    public void Harmless_changes_give_no_alarm(string good, string other)
    {
        Assert.Equal(2, StackJobs.Good.Split(good).Length);
        Assert.Equal("", Alarms(Report(StackJobs.Good.Replace(good, other, StringComparison.Ordinal))));
    }

    [Theory]
    [MemberData(nameof(GoodJobs))]
    public void The_jobs_that_come_along_give_no_alarm(string name) =>
        Assert.Equal("", Alarms(Report(File.ReadAllText(Path.Combine(Jobs.Repository.Root, "profiles", "jobs", name + ".toml")))));

    [Theory]
    [MemberData(nameof(Faults))]
    public void Every_planted_fault_is_found_and_named(string what, string good, string bad, string name, string place)
    {
        Assert.Equal(2, StackJobs.Good.Split(good).Length);
        MechanismReport report = Report(StackJobs.Good.Replace(good, bad, StringComparison.Ordinal));
        Assert.True(
            report.Findings.Any(finding => finding.Name == name && finding.Place == place && finding is { Level: not Level.Ok, Advice.Length: > 0 }),
            $"{what}: found only\n{Alarms(report)}");
    }

    private static string Alarms(MechanismReport report) => string.Join("\n", report.Findings
        .Where(finding => finding.Level != Level.Ok)
        .Select(finding => $"{finding.Place}: {finding.Name}: {finding.Message} {finding.Advice}"));

    private static MechanismReport Report(string text)
    {
        Outcome<Job> job = JobReader.Parse(text, "winder.toml");
        Assert.Empty(job.Problems);
        Outcome<Mechanism> mechanism = Resolver.Resolve(job.Value!, ProfileFinder.BuiltIn);
        Assert.Empty(mechanism.Problems);
        return MechanismCheck.Of(mechanism.Value!);
    }
}
