using GearBlanks.Files.Jobs;
using GearBlanks.Files.Profiles;
using GearBlanks.Files.Tests.Jobs;
using GearBlanks.Findings;
using GearBlanks.Mechanisms;

namespace GearBlanks.Files.Tests.Mechanisms;

/// <summary>Faults of meshes, trains and conditions planted in the jobs that come along, one at a time: each is found, named and not ok. Those of the stack stand in Stacks.</summary>
public sealed class PlantedFaultsTests
{
    private const string Dial = "tide-dial";
    private const string Sled = "chart-sled";
    private const string Conditions = "[drive]\n";

    /// <summary>What is wrong, the job, the text there, the text planted, the finding, and its place.</summary>
    public static TheoryData<string, string, string, string, string, string> Faults => new()
    {
        { "distance 0.3 mm short", Dial, "distance = 32.8", "distance = 32.5", "backlash", "mesh day to first lay" },
        { "distance 0.5 mm long", Dial, "distance = 32.8", "distance = 33.3", "backlash", "mesh first lay to tide" },
        { "distance 0.1 mm short", Dial, "distance = 40", "distance = 39.9", "backlash", "mesh tide to second lay" },
        { "distance 0.06 mm long", Dial, "distance = 40", "distance = 40.06", "backlash-miss", "mesh second lay to moon" },
        { "frame measured 0.03 mm off", Dial, "name = \"day to first lay\"", "name = \"day to first lay\"\nmeasured-distance = 32.83", "distance-disagreement", "mesh day to first lay" },
        { "one tooth too many", Dial, "teeth = 59", "teeth = 60", "backlash", "mesh day to first lay" },
        { "one tooth too few", Dial, "teeth = 87", "teeth = 86", "backlash", "mesh tide to second lay" },
        { "sums that want two distances", Dial, "profile-shift = 0.222", "profile-shift = 0.1", "distance-spread", "axes column and first lay" },
        { "pinion undercut", Dial, "teeth = 13\nprofile-shift = 0.30", "teeth = 13\nprofile-shift = -0.30", "undercut-depth", "gear tide pinion" },
        { "tooth pointed", Dial, "teeth = 13\nprofile-shift = 0.30", "teeth = 13\nprofile-shift = 1.4", "pointed-tip", "gear tide pinion" },
        { "tip too long", Dial, "teeth = 59\n", "teeth = 59\ntip-diameter = 49.2\n", "tip-clearance", "mesh day to first lay" },
        { "tip digs into the fillet", Dial, "teeth = 87\n", "teeth = 87\ntip-diameter = 71.7\n", "fillet-clearance", "mesh tide to second lay" },
        { "tips cut off", Dial, "teeth = 81\n", "teeth = 81\ntip-diameter = 64.9\n", "contact-ratio", "mesh second lay to moon" },
        { "teeth thinned too far", Dial, "thinning = 0.016 ", "thinning = 0.2 ", "backlash", "mesh day to first lay" },
        { "bore bursts the gear", Dial, "teeth = 13\n", "teeth = 13\nbore = 8\n", "wall", "gear tide pinion" },
        { "wrong period", Dial, "turn = \"24.8412 h\"", "turn = \"24.9 h\"", "hand-error", "hand tide hand" },
        { "mesh forgotten", Dial, "[[meshes]]\nname = \"day to first lay\"\ngears = [\"day wheel\", \"lay wheel 59\"]\n", "", "train-loose", "sandwich first lay" },
        { "hand on what stands still", Dial, "[[meshes]]\nname = \"day to first lay\"\ngears = [\"day wheel\", \"lay wheel 59\"]\n", "", "hand-still", "hand tide hand" },
        { "loop that locks", Dial, "[drive]\n", "[[meshes]]\nname = \"too much\"\ngears = [\"lay wheel 57\", \"day wheel\"]\n\n[drive]\n", "train-locked", "mesh too much" },
        { "ring's tips too long", Sled, "tip-diameter = 52.4 ", "tip-diameter = 51.6 ", "fillet-clearance", "mesh" },
        { "posts stand loosely", Dial, Conditions, "[conditions]\ncentre-distance-tolerance = 0.08\n\n[drive]\n", "backlash-least", "mesh day to first lay" },
        { "bores out of the middle", Dial, Conditions, "[conditions]\neccentricity = 0.05\n\n[drive]\n", "backlash-least", "mesh first lay to tide" },
        { "cut leans", Dial, Conditions, "[conditions]\nedge-taper = 2\n\n[drive]\n", "backlash-least", "mesh tide to second lay" },
        { "teeth vary", Dial, Conditions, "[conditions]\nthickness-tolerance = 0.04\n\n[drive]\n", "backlash-least", "mesh second lay to moon" },
        { "random builds bind", Dial, Conditions, "[conditions]\ncentre-distance-tolerance = 0.08\nbuilds = 20000\n\n[drive]\n", "binding-share", "mesh day to first lay" },
        { "posts far apart", Dial, Conditions, "[conditions]\ncentre-distance-tolerance = 0.6\n\n[drive]\n", "backlash-greatest", "mesh day to first lay" },
        { "humid acrylic in a brass frame", Dial, "material = \"brass\"\nthickness = 2", "material = \"acrylic\"\nthickness = 2", "backlash-least", "mesh tide to second lay" },
        { "class on thin sheet", Dial, Conditions, "[conditions]\ngrade = 9\n\n[drive]\n", "grade-range", "gear" },
        { "end play takes the face", Dial, Conditions, "[conditions]\nend-play = 1.2\n\n[drive]\n", "face-overlap-least", "mesh" },
    };

    [Theory]
    [MemberData(nameof(Faults))]
    public void Every_planted_fault_is_found_and_named(string what, string job, string good, string bad, string name, string place)
    {
        string text = File.ReadAllText(Path.Combine(Repository.Root, "profiles", "jobs", job + ".toml")).ReplaceLineEndings("\n");
        Assert.Contains(good, text, StringComparison.Ordinal);
        text = text.Replace(good, bad, StringComparison.Ordinal);
        if (what == "humid acrylic in a brass frame")
        {
            text = text.Replace(Conditions, "[conditions]\nhumidity = [20, 90]\nreference-humidity = 40\nframe-material = \"brass\"\n\n[drive]\n", StringComparison.Ordinal);
        }

        Finding[] findings = [.. Report(text).Findings.Where(finding => finding.Level != Level.Ok)];
        Assert.True(
            findings.Any(finding => (name.Length == 0 || finding.Name == name) && finding.Place.StartsWith(place, StringComparison.Ordinal)),
            $"{what}: {string.Join("; ", findings.Select(finding => $"{finding.Name} of {finding.Place}"))}");
    }

    private static MechanismReport Report(string text)
    {
        Outcome<Job> job = JobReader.Parse(text, "job.toml");
        Assert.True(job.Value is not null, string.Join("; ", job.Problems.Select(problem => problem.Message)));
        Outcome<Mechanism> mechanism = Resolver.Resolve(job.Value, ProfileFinder.BesideJob("job.toml"));
        Assert.True(mechanism.Value is not null, string.Join("; ", mechanism.Problems.Select(problem => problem.Message)));
        return MechanismCheck.Of(mechanism.Value);
    }
}
