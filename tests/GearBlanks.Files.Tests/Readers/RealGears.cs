using GearBlanks.Blanks;
using GearBlanks.Blanks.Bores;
using GearBlanks.Curves;
using GearBlanks.Curves.Fitting;
using GearBlanks.Cutting;
using GearBlanks.Cutting.Routes;
using GearBlanks.Files.Profiles;
using GearBlanks.Files.Tests.Jobs;
using GearBlanks.Mechanisms;
using GearBlanks.Teeth;
using GearBlanks.Verbs;

namespace GearBlanks.Files.Tests.Readers;

/// <summary>Real gears as they are cut, with words and lettering; none too large for LibreCAD's paper.</summary>
public static class RealGears
{
    private const double Tolerance = 0.001;
    private static readonly Place Here = new("tests", 0, 0);

    /// <summary>Every gear of the tide dial, and gears at the ends of what is made.</summary>
    public static IReadOnlyDictionary<string, Drawing> All { get; } = Dial()
        .Append(Single("undercut", new GearData(8, 1, Rack)))
        .Append(Single("pointed", new GearData(10, 1, Rack, 0.9)))
        .Append(Single("small", new GearData(23, 0.3, Rack)))
        .Append(Single("large", new GearData(31, 3, Rack, -0.2)))
        .Append(Routed("tabbed", new RoutePlan(StartPlace.Tip, LeadForm.Line, 0.5, 3, 0.4)))
        .Append(Routed("led in by arcs", new RoutePlan(StartPlace.Root, LeadForm.Arc, 0.4, 0, 0)))
        .ToDictionary(gear => gear.Name, gear => gear.Drawing);

    private static BasicRack Rack => ProfileFinder.BuiltIn.Rack(DefaultNames.Rack, Here).Value!;

    private static Machine Machine => ProfileFinder.BuiltIn.Machine(DefaultNames.Machine, Here).Value!;

    private static IEnumerable<(string Name, Drawing Drawing)> Dial()
    {
        MechanismReport report = CheckVerb.Run(Path.Combine(Repository.Root, "profiles", "jobs", "tide-dial.toml")).Value!;
        return report.Mechanism.Gears.Select(gear => (gear.Name, Draw(gear.Blank)));
    }

    private static (string Name, Drawing Drawing) Single(string name, GearData data) =>
        (name, Draw(new Blank(name, ExternalGear.Create(data), 2, new Cutouts { Bore = new RoundBore(1.5) }, [])));

    // The path of a mill's centre.
    private static (string Name, Drawing Drawing) Routed(string name, RoutePlan plan)
    {
        var blank = new Blank(name, ExternalGear.Create(new GearData(24, 1.5, Rack)), 2, new Cutouts { Bore = new RoundBore(2), Holes = [new Circle(new Point(8, 0), 1.5)] }, [1]);
        Part path = Compensation.Of(PartBuilder.Build(blank), Kerf.Of(0.8));
        Drawing closed = PartDrawing.Of(path, Machine.Layers, Tolerance, Pieces.Arcs, [blank.Name, plan.Words]);
        return (name, Router.Of(closed, blank.Gear, plan, 0.8, 0).Drawing);
    }

    private static Drawing Draw(Blank blank) =>
        PartDrawing.Of(PartBuilder.Build(blank), Machine.Layers, Tolerance, Pieces.Arcs, [blank.Name, "nominal, kerf not compensated"]);
}
