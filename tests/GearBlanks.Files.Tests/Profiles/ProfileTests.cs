using GearBlanks.Cutting;
using GearBlanks.Files.Profiles;
using GearBlanks.Files.Tests.Jobs;
using GearBlanks.Findings;
using GearBlanks.Mechanisms;

namespace GearBlanks.Files.Tests.Profiles;

public sealed class ProfileTests : IDisposable
{
    private const double Degree = Math.PI / 180;

    private static readonly Place Asked = new("job.toml", 3, 8);

    private readonly string _folder = Directory.CreateTempSubdirectory("gearblanks-profiles-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    /// <summary>ISO 53:1998, Table 2, from memory; ANSI B6.1 1968 (R1974), from memory; B6.7: Mott, 4th ed. 2004, Table 8-4, page 314.</summary>
    [Theory]
    [InlineData("iso-53-a", 1.25, 0.38, 0)]
    [InlineData("iso-53-b", 1.25, 0.30, 0)]
    [InlineData("iso-53-c", 1.25, 0.25, 0)]
    [InlineData("iso-53-d", 1.40, 0.39, 0)]
    [InlineData("ansi-b6-1", 1.25, 0.300, 0)]
    [InlineData("ansi-b6-7", 1.20, 0.3, 0.0508)]
    public void Racks_have_their_published_proportions(string name, double dedendum, double fillet, double allowance)
    {
        var rack = Good(ProfileFinder.BuiltIn.Rack(name, Asked));
        Assert.Equal((name, 20 * Degree, 1, dedendum, fillet), (rack.Name, rack.PressureAngle, rack.Addendum, rack.Dedendum, rack.FilletRadius));
        Assert.Equal(allowance, rack.DedendumAllowance, 15);

        // The tip round fits between the generating rack's flanks, at module 0.2 too.
        var depth = rack.Dedendum + (rack.DedendumAllowance / 0.2);
        var room = ((Math.PI / 4) - (depth * Math.Tan(rack.PressureAngle))) * Math.Cos(rack.PressureAngle) / (1 - Math.Sin(rack.PressureAngle));
        Assert.InRange(rack.FilletRadius, 0, room + 1e-12);
    }

    [Fact]
    public void Every_file_under_profiles_is_built_in_and_reads()
    {
        foreach (var (kind, folder) in new[] { (ProfileKind.Rack, "racks"), (ProfileKind.Material, "materials"), (ProfileKind.Machine, "machines"), (ProfileKind.Limits, "limits") })
        {
            var names = Directory.EnumerateFiles(Path.Combine(Repository.Root, "profiles", folder), "*.toml").Select(f => Path.GetFileNameWithoutExtension(f)).Order(StringComparer.Ordinal).ToList();
            Assert.NotEmpty(names);
            Assert.Equal(names, ProfileFinder.BuiltIn.Names(kind));
            Assert.All(names, name => Assert.Equal(name, NameOf(kind, name)));
        }
    }

    [Fact]
    public void Materials_carry_expansion_and_cautions()
    {
        // W. D. Callister, Materials Science and Engineering, 5th ed., Table B.6.
        Assert.Equal(20.5e-6, Good(ProfileFinder.BuiltIn.Material("brass", Asked)).ThermalExpansion);
        Assert.Equal(11.7e-6, Good(ProfileFinder.BuiltIn.Material("steel", Asked)).ThermalExpansion);
        Assert.Equal(23.6e-6, Good(ProfileFinder.BuiltIn.Material("aluminium", Asked)).ThermalExpansion);
        var pvc = Good(ProfileFinder.BuiltIn.Material("pvc", Asked));
        Assert.Null(pvc.ThermalExpansion);
        Assert.Contains(pvc.Cautions, c => c.Contains("NEVER", StringComparison.Ordinal) && c.Contains("chlorine", StringComparison.Ordinal));
        foreach (var name in ProfileFinder.BuiltIn.Names(ProfileKind.Material))
        {
            Assert.Contains(Good(ProfileFinder.BuiltIn.Material(name, Asked)).Cautions, c => c.Contains("machine's manual", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void The_drawing_machine_has_a_layer_for_each_operation()
    {
        var machine = Good(ProfileFinder.BuiltIn.Machine("drawing", Asked));
        Assert.Equal("outside", machine.Layers.Names[Operation.CutOutside]);
        Assert.Equal("holes", machine.Layers.Names[Operation.CutHoles]);
        Assert.Equal("engrave", machine.Layers.Names[Operation.Engrave]);
        Assert.Equal("note", machine.Layers.Names[Operation.Note]);
    }

    [Fact]
    public void Limits_arrive_under_their_own_names()
    {
        var limits = Good(ProfileFinder.BuiltIn.Limits("hand-assembled", Asked));
        Assert.Equal((0, 0.02, 0.12, 0.3), Bounds(limits.Backlash));
        Assert.Equal((0.04, 0.5), (limits.WantedBacklash, limits.BacklashShareOfFirst));
        Assert.Equal((1.0, 1.2, null, null), Bounds(limits.ContactRatio));
        Assert.Equal((0, 0.1, null, null), Bounds(limits.TipClearance));
        Assert.Equal((0, null, null, null), Bounds(limits.FilletClearance));
        Assert.Equal((0.1, 0.25, null, null), Bounds(limits.TipThickness));
        Assert.Equal((null, null, 0.001, 0.15), Bounds(limits.UndercutDepth));
        Assert.Equal((0.5, 1.0, null, null), Bounds(limits.Wall));
        Assert.Equal((0.3, 0.5, null, null), Bounds(limits.HoleDiameter));
        Assert.Equal((0.5, 1.5, null, null), Bounds(limits.ArmWidth));
        Assert.Equal((0.1, 0.3, null, null), Bounds(limits.ScrewRoom));
        Assert.Equal((null, null, 0.02, 0.2), Bounds(limits.DistanceDisagreement));
        Assert.Equal((null, null, 0.04, null), Bounds(limits.BacklashMiss));
        Assert.Equal((null, null, 0.02, 0.1), Bounds(limits.DistanceSpread));
        Assert.Equal((0.25, 0.75, null, null), Bounds(limits.FaceOverlap));
        Assert.Equal((null, null, 50, 500), Bounds(limits.HandError));
        Assert.All([limits.Backlash, limits.HandError], l => Assert.NotEmpty(l.Source));
    }

    [Fact]
    public void A_profile_beside_the_job_comes_before_profiles_beside_it_and_before_the_built_in()
    {
        var finder = ProfileFinder.BesideJob(Path.Combine(_folder, "job.toml"));
        Assert.Equal(20 * Degree, Good(finder.Rack("iso-53-a", Asked)).PressureAngle);
        Write("profiles/racks/iso-53-a.toml", Rack(25));
        Assert.Equal(25 * Degree, Good(finder.Rack("iso-53-a", Asked)).PressureAngle);
        Write("racks/iso-53-a.toml", Rack(15));
        Assert.Equal(15 * Degree, Good(finder.Rack("iso-53-a", Asked)).PressureAngle);
        Write("racks/my own.toml", Rack(22));
        Assert.Equal(22 * Degree, Good(finder.Rack("my own", Asked)).PressureAngle);
        Assert.Contains("my own", finder.Names(ProfileKind.Rack));
        Assert.Equal(ProfileFinder.BuiltIn.Names(ProfileKind.Rack).Count + 1, finder.Names(ProfileKind.Rack).Count);
    }

    [Theory]
    [InlineData("iso-53-x", "iso-53-a")]
    [InlineData("ISO-53-A", "iso-53-a")]
    [InlineData("iso53a", "iso-53-a")]
    [InlineData("../racks/iso-53-a", null)]
    [InlineData("", null)]
    [InlineData("/etc/passwd", null)]
    public void An_unknown_name_is_told_where_it_is_asked(string name, string? nearest)
    {
        var problem = Assert.Single(ProfileFinder.BesideJob(Path.Combine(_folder, "job.toml")).Rack(name, Asked).Problems);
        Assert.Equal((Asked, "rack", name, nearest), (problem.Place, problem.Key, problem.Value, problem.Nearest));
        Assert.Contains("ansi-b6-1, ansi-b6-7, iso-53-a", problem.Allowed!, StringComparison.Ordinal);
    }

    /// <summary>Kind, text of a bad profile; line, key and pieces of the message of its first problem.</summary>
    public static TheoryData<ProfileKind, string, int, string, string> Bad => new()
    {
        { ProfileKind.Rack, "pressure-angle = 20\naddendum = 1\ndedendum = 1.25\nfillet-radius = -0.1\nsource = 'x'", 4, "fillet-radius", "too small" },
        { ProfileKind.Rack, "pressure-angle = 90\naddendum = 1\ndedendum = 1.25\nfillet-radius = 0.1\nsource = 'x'", 1, "pressure-angle", "too large" },
        { ProfileKind.Rack, "presure-angle = 20\naddendum = 1\ndedendum = 1.25\nfillet-radius = 0.1\nsource = 'x'", 1, "presure-angle", "no such key" },
        { ProfileKind.Rack, "pressure-angle = 20\naddendum = 1\ndedendum = 1.25\nfillet-radius = 0.1", 0, "source", "missing" },
        { ProfileKind.Rack, "pressure-angle = [", 1, "pressure-angle", "" },
        { ProfileKind.Material, "title = 'x'\ncautions = 'careful'\nsource = 'x'", 2, "cautions", "not a list" },
        { ProfileKind.Material, "title = 'x'\nthermal-expansion = 20.5\nsource = 'x'", 2, "thermal-expansion", "too large" },
        { ProfileKind.Machine, "title = 'x'\nlayers = { outside = 'a', holes = 'b', engrave = 'A', note = 'c' }", 2, "layers.engrave", "has this layer already" },
        { ProfileKind.Machine, "title = 'x'\nlayers = { outside = 'a b', holes = 'b', engrave = 'e', note = 'c' }", 2, "layers.outside", "layer" },
        { ProfileKind.Limits, "[backlash]\nfails-below = 1\ntight-below = 0\nwanted = 0.04\nsplit = [0.5, 0.5]\nsource = 'x'", 3, "backlash.tight-below", "less than \"fails-below\"" },
        { ProfileKind.Limits, "[backlash]\nfails-below = 0\nwanted = 0.04\nsplit = [0.5, 0.4]\nsource = 'x'", 4, "backlash.split", "add up to 1" },
        { ProfileKind.Limits, "[wall]\nsource = 'x'", 1, "wall.fails-below", "no bound at all" },
    };

    [Theory]
    [MemberData(nameof(Bad))]
    public void Bad_profiles_are_told_in_their_own_file(ProfileKind kind, string text, int line, string key, string says)
    {
        var file = Write($"{Folder(kind)}/bad.toml", text);
        var finder = ProfileFinder.BesideJob(Path.Combine(_folder, "job.toml"));
        var problems = kind switch
        {
            ProfileKind.Rack => finder.Rack("bad", Asked).Problems,
            ProfileKind.Material => finder.Material("bad", Asked).Problems,
            ProfileKind.Machine => finder.Machine("bad", Asked).Problems,
            _ => finder.Limits("bad", Asked).Problems,
        };
        var problem = Assert.Single(problems, p => p.Key == key && p.Place.Line == line);
        Assert.Equal(file, problem.Place.File);
        Assert.Contains(says, problem.Message, StringComparison.Ordinal);
    }

    private static string NameOf(ProfileKind kind, string name) => kind switch
    {
        ProfileKind.Rack => Good(ProfileFinder.BuiltIn.Rack(name, Asked)).Name,
        ProfileKind.Material => Good(ProfileFinder.BuiltIn.Material(name, Asked)).Name,
        ProfileKind.Machine => Good(ProfileFinder.BuiltIn.Machine(name, Asked)).Name,
        _ => Good(ProfileFinder.BuiltIn.Limits(name, Asked)).Name,
    };

    private static string Folder(ProfileKind kind) => kind switch
    {
        ProfileKind.Rack => "racks",
        ProfileKind.Material => "materials",
        ProfileKind.Machine => "machines",
        _ => "limits",
    };

    private static string Rack(int degrees) =>
        $"pressure-angle = {degrees}\naddendum = 1\ndedendum = 1.25\nfillet-radius = 0.2\nsource = 'invented for this test'\n";

    private static (double?, double?, double?, double?) Bounds(Limit limit) => (limit.FailsBelow, limit.TightBelow, limit.TightAbove, limit.FailsAbove);

    private static T Good<T>(Outcome<T> outcome)
        where T : class
    {
        Assert.Empty(outcome.Problems);
        return outcome.Value!;
    }

    private string Write(string name, string text)
    {
        var file = Path.Combine(_folder, name);
        Directory.CreateDirectory(Path.GetDirectoryName(file)!);
        File.WriteAllText(file, text);
        return file;
    }
}
