using GearBlanks.Blanks;
using GearBlanks.Blanks.Bores;
using GearBlanks.Curves.Fitting;
using GearBlanks.Cutting;
using GearBlanks.Cutting.Routes;
using GearBlanks.Files.Profiles;
using GearBlanks.Mechanisms;
using GearBlanks.Teeth;

namespace GearBlanks.Files.Tests.Profiles;

/// <summary>Machines: kerf, compensation, least feature.</summary>
public sealed class MachineProfileTests : IDisposable
{
    private const string Layers = "title = \"Test\"\nlayers = { outside = \"a\", holes = \"b\", engrave = \"c\", note = \"d\" }\n";

    private static readonly Place Asked = new("job.toml", 3, 8);

    private readonly string _folder = Directory.CreateTempSubdirectory("gearblanks-machines-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    /// <summary>laser504.com, Kerfs and Laser Thickness, table of average kerfs (inches); Ponoko, How much material does the laser burn away (mm): common practice.</summary>
    [Theory]
    [InlineData("acrylic", 1.5875, 0.007 * 25.4)]
    [InlineData("acrylic", 3, 0.2)]
    [InlineData("acrylic", 3.175, 0.009 * 25.4)]
    [InlineData("plywood", 1.5875, 0.006 * 25.4)]
    [InlineData("plywood", 3.175, 0.008 * 25.4)]
    [InlineData("plywood", 6.35, 0.010 * 25.4)]
    public void The_laser_has_its_published_kerfs(string material, double thickness, double width)
    {
        Kerf kerf = GearKerf.Of(BuiltIn("co2-laser"), material, thickness, null).Kerf!;
        Assert.True(kerf.IsEqual);
        Assert.Equal(width, kerf.X, 1e-12);
    }

    [Fact]
    public void Each_machine_says_who_compensates()
    {
        Assert.False(BuiltIn("co2-laser").Compensates);
        Assert.False(BuiltIn("drawing").Compensates);
        Assert.All((string[])["compensating-shop", "desktop-mill", "wire-cutter"], name => Assert.True(BuiltIn(name).Compensates));
        Assert.Equal(1, BuiltIn("desktop-mill").ToolDiameter);
        Assert.False(BuiltIn("desktop-mill").FollowsToolCentre);
        foreach ((string mill, double tool) in ((string, double)[])[("end-mill-0-8mm", 0.8), ("end-mill-1mm", 1), ("end-mill-3-175mm", 3.175)])
        {
            Machine machine = BuiltIn(mill);
            Assert.Equal((tool, true, false), (machine.ToolDiameter, machine.FollowsToolCentre, machine.Compensates));
            Assert.Equal((StartPlace.Tip, LeadForm.Line, 3), (machine.Route.Start, machine.Route.Lead, machine.Route.Tabs));
        }

        Assert.All(ProfileFinder.BuiltIn.Names(ProfileKind.Machine), name => Assert.Contains(BuiltIn(name).Cautions, caution => caution.Contains("machine's manual", StringComparison.Ordinal)));
    }

    [Fact]
    public void One_width_or_two_are_read()
    {
        Machine machine = Read(Layers + """
            [[kerf]]
            material = "brass"
            thickness = [1, "1/8 in"]
            width = [0.18, 0.2]
            source = "test"
            [[kerf]]
            material = "steel"
            thickness = [1, 2]
            width = "7 thou"
            source = "test"
            [least-feature]
            length = 0.5
            source = "test"
            """).Value!;
        Assert.Equal([new SheetKerf("brass", 1, 3.175, new Kerf(0.18, 0.2), "test"), new SheetKerf("steel", 1, 2, Kerf.Of(0.1778), "test")], machine.Kerfs);
        Assert.Equal((0.5, 0.5), (machine.LeastFeature!.At(0), machine.LeastFeature.At(10)));
    }

    /// <summary>Whatever comes first, the outside comes last: a part that is cut free moves.</summary>
    [Theory]
    [InlineData("", new[] { Operation.Note, Operation.Engrave, Operation.CutHoles, Operation.CutOutside })]
    [InlineData("first = \"engrave\"", new[] { Operation.Note, Operation.Engrave, Operation.CutHoles, Operation.CutOutside })]
    [InlineData("first = \"holes\"", new[] { Operation.Note, Operation.CutHoles, Operation.Engrave, Operation.CutOutside })]
    public void A_machine_has_its_order(string first, Operation[] order)
    {
        Machine machine = Read($"title = \"Test\"\n[layers]\noutside = \"a\"\nholes = \"b\"\nengrave = \"c\"\nnote = \"d\"\n{first}\n").Value!;
        Assert.Equal(order, machine.Layers.Order);
        Part part = PartBuilder.Build(new Blank("disc", ExternalGear.Create(new GearData(20, 1, ProfileFinder.BuiltIn.Rack(DefaultNames.Rack, Asked).Value!)), 2, new Cutouts { Bore = new RoundBore(4) }, []));
        Drawing drawing = PartDrawing.Of(part, machine.Layers, 0.001, Pieces.Arcs, []);
        Assert.Equal(order, drawing.Layers.Select(layer => layer.Operation));
        Assert.Equal(order.Select(operation => machine.Layers.Names[operation]), drawing.Layers.Select(layer => layer.Name));
    }

    [Theory]
    [InlineData("[[kerf]]\nmaterial = \"brass\"\nthickness = [2, 1]\nwidth = 0.2\nsource = \"t\"", "kerf.thickness")]
    [InlineData("[[kerf]]\nmaterial = \"brass\"\nthickness = [1, 2]\nwidth = [0.1, 0.5]\nsource = \"t\"", "kerf.width")]
    [InlineData("[[kerf]]\nmaterial = \"brass\"\nthickness = [1, 2]\nwidth = [0.1, 0.2, 0.3]\nsource = \"t\"", "kerf.width")]
    [InlineData("[[kerf]]\nmaterial = \"brass\"\nthickness = [1, 2]\nwidth = 6\nsource = \"t\"", "kerf.width")]
    [InlineData("[[kerf]]\nmaterial = \"brass\"\nthickness = [1, 2]\nwidth = \"wide\"\nsource = \"t\"", "kerf.width")]
    [InlineData("[[kerf]]\nmaterial = \"brass\"\nthickness = [1, 2]\nwidth = 0", "kerf.source")]
    [InlineData("[least-feature]\nsource = \"t\"", "least-feature.thicknesses")]
    [InlineData("tool-diameter = 1", "tool-diameter")]
    [InlineData("tool-diameter = 0\npath = \"tool-centre\"", "tool-diameter")]
    [InlineData("tool-diameter = 6\npath = \"tool-centre\"", "tool-diameter")]
    [InlineData("path = \"tool-centre\"", "path")]
    [InlineData("path = \"tool-center\"\ntool-diameter = 1", "path")]
    [InlineData("path = \"tool-centre\"\ntool-diameter = 1\ncompensates = true", "path")]
    [InlineData("path = \"tool-centre\"\ntool-diameter = 1\n[[kerf]]\nmaterial = \"brass\"\nthickness = [1, 2]\nwidth = 0.2\nsource = \"t\"", "path")]
    [InlineData("[contour]\nlead = \"line\"", "contour.lead")]
    [InlineData("[contour]\nlead-length = 1", "contour.lead-length")]
    [InlineData("[contour]\nlead = \"spiral\"\nlead-length = 1", "contour.lead")]
    [InlineData("[contour]\nlead = \"line\"\nlead-length = -1", "contour.lead-length")]
    [InlineData("[contour]\ntabs = 3", "contour.tabs")]
    [InlineData("[contour]\ntab-width = 1", "contour.tab-width")]
    [InlineData("[contour]\ntabs = 0\ntab-width = 1", "contour.tabs")]
    [InlineData("[contour]\ntabs = 25\ntab-width = 1", "contour.tabs")]
    [InlineData("[contour]\ntabs = 2.5\ntab-width = 1", "contour.tabs")]
    [InlineData("[contour]\nstart = \"flank\"", "contour.start")]
    [InlineData("[contour]\nstrat = \"tip\"", "contour.strat")]
    [InlineData("compensates = true\n[[kerf]]\nmaterial = \"brass\"\nthickness = [1, 2]\nwidth = 0.2\nsource = \"t\"", "kerf")]
    public void What_cannot_be_is_told_by_its_key(string text, string key)
    {
        Outcome<Machine> outcome = Read(Layers + text);
        Assert.Null(outcome.Value);
        Assert.Contains(outcome.Problems, problem => problem.Key == key);
    }

    [Fact]
    public void The_outside_cannot_come_first() => Assert.Contains(
        Read(Layers.Replace(" }", ", first = \"outside\" }", StringComparison.Ordinal)).Problems, problem => problem.Key == "layers.first");

    private static Machine BuiltIn(string name) => ProfileFinder.BuiltIn.Machine(name, Asked).Value!;

    private Outcome<Machine> Read(string text)
    {
        Directory.CreateDirectory(Path.Join(_folder, "machines"));
        File.WriteAllText(Path.Join(_folder, "machines", "test.toml"), text);
        return ProfileFinder.BesideJob(Path.Join(_folder, "job.toml")).Machine("test", Asked);
    }
}
