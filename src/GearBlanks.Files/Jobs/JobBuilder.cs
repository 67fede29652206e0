using Fractions;
using GearBlanks.Curves;
using GearBlanks.Files.Keys;
using GearBlanks.Mechanisms;
using GearBlanks.Teeth;

namespace GearBlanks.Files.Jobs;

/// <summary>Makes the job from entries in which no problem was found.</summary>
internal static class JobBuilder
{
    public static Job Build(Entries file, string name) => new(
        new Place(name, 0, 0),
        file.Text("title") ?? TitleOf(name),
        Defaults(file.Table("defaults"), new Place(name, 0, 0)),
        [.. file.Tables("axes").Select(Axis)],
        [.. file.Tables("sandwiches").Select(Sandwich)],
        [.. file.Tables("meshes").Select(Mesh)],
        Drives(file).Select(Drive).FirstOrDefault(),
        [.. file.Tables("hands").Select(h => new JobHand(h.Place, h.Text("name")!, h.Text("sandwich")!, h.Time("turn")!.Value) { Angle = h.ExactAngle("angle") ?? Fraction.Zero, Shape = StackJob.HandShape(h) })])
    {
        Conditions = file.Table("conditions") is { } conditions ? ConditionsBuilder.Conditions(conditions) : null,
        Frame = StackJob.Frame(file),
        OtherDrives = [.. Drives(file).Skip(1).Select(Drive)],
        Setting = Drives(file).Select(drive => drive.Date("set")).FirstOrDefault(set => set is not null),
    };

    /// <summary>What turns the mechanism: the one drive, or several.</summary>
    public static IEnumerable<Entries> Drives(Entries file) => file.Table("drive") is { } drive ? [drive] : file.Tables("drives");

    private static JobDrive Drive(Entries drive) => new(drive.Place, drive.Text("sandwich")!, drive.Time("turn")!.Value)
    {
        Sense = drive.Text("sense") == "counter-clockwise" ? Sense.CounterClockwise : Sense.Clockwise,
    };

    /// <summary>The name of a gear: its own, or the sandwich's.</summary>
    public static string? GearName(Entries layer, Entries sandwich) => layer.Has("gear") ? layer.Text("gear") : sandwich.Text("name");

    /// <summary>The name of a mesh: its own, or the two gears'.</summary>
    public static string? MeshName(Entries mesh)
    {
        if (mesh.Has("name"))
        {
            return mesh.Text("name");
        }

        return mesh.Items("gears") is [{ Value: string first }, { Value: string second }] ? $"{first} - {second}" : null;
    }

    // The module of a table, mm; null where it has none.
    private static double? Module(Entries table)
    {
        if (table.Number("diametral-pitch") is { } pitch)
        {
            // The finest pitch would come out below the least module by the last bit.
            return Math.Max(JobKeys.LeastModule, 25.4 / pitch);
        }

        return table.Number("module");
    }

    // Titles go into drawings, which hold ASCII only.
    private static string TitleOf(string file) =>
        string.Concat(Path.GetFileNameWithoutExtension(file).Select(c => c is >= ' ' and <= '~' ? c : '_'));

    private static JobDefaults Defaults(Entries? table, Place file) => table is null
        ? new JobDefaults(file, null, null, null, null, null, null, null, null, null, null, null)
        : new JobDefaults(
            table.Place, Module(table), table.Text("rack"), table.Text("material"), table.Text("machine"), table.Text("limits"),
            table.Number("thickness"), table.Number("bore"), table.Number("thinning"), table.Number("backlash"),
            table.Flag("lettering"), table.Flag("mark"))
        {
            BoreShape = table.Table("bore-shape") is { } shape ? BoreShape(shape) : null,
            MarkFacing = table.Flag("mark-facing") ?? false,
            ThicknessTolerance = table.Number("thickness-tolerance"),
        };

    private static JobAxis Axis(Entries axis) => new(
        axis.Place, axis.Text("name")!, PointOf(axis), axis.Text("from"), axis.Number("distance") ?? 0, axis.Number("direction") ?? 0)
    {
        CarriedBy = axis.Text("carried-by"),
        Spindles = [.. axis.Tables("spindles").Select(StackJob.Spindle)],
    };

    private static Point? PointOf(Entries table) =>
        table.Items("position") is [{ Value: double x }, { Value: double y }] ? new Point(x, y) : null;

    private static JobSandwich Sandwich(Entries sandwich) => new(
        sandwich.Place, sandwich.Text("name")!, sandwich.Text("axis")!, sandwich.Number("height"),
        [.. sandwich.Tables("layers").Select(l => Layer(l, sandwich) with { Stack = StackJob.Layer(l) })])
    {
        IsFixed = sandwich.Flag("fixed") ?? false,
        MeasuredHeight = sandwich.Number("measured-height"),
        HeightTolerance = sandwich.Number("height-tolerance") ?? 0,
        Conditions = sandwich.Table("conditions") is { } conditions ? ConditionsBuilder.Sandwich(conditions) : null,
    };

    private static JobLayer Layer(Entries layer, Entries sandwich) =>
        layer.Number("washer") is { } height ? new JobWasher(layer.Place, height) : Gear(layer, sandwich);

    private static JobGear Gear(Entries gear, Entries sandwich) => new(
        gear.Place,
        GearName(gear, sandwich)!,
        gear.Count("teeth") ?? 0,
        Module(gear),
        gear.Text("rack"),
        gear.Number("profile-shift") ?? 0,
        gear.Number("tip-diameter"),
        gear.Number("thinning"),
        gear.Number("thickness"),
        gear.Text("material"),
        gear.Number("bore"),
        gear.Table("screws") is { } screws ? Screws(screws) : null,
        [.. gear.Tables("holes").Select(Hole)],
        gear.Number("turned") ?? 0,
        gear.Text("form") == "disc",
        gear.Flag("lettering"),
        gear.Flag("mark"))
    {
        Ring = gear.Flag("ring") == true ? new JobRing(gear.Number("rim-diameter")!.Value, gear.Number("root-fillet")) : null,
        RackBar = gear.Number("rack-length") is { } length ? new JobRackBar(length, gear.Number("back-height")!.Value) : null,
        Conditions = gear.Table("conditions") is { } conditions ? ConditionsBuilder.Gear(conditions) : null,
        Tip = Tip(gear),
        BoreShape = gear.Table("bore-shape") is { } shape ? BoreShape(shape) : null,
        Crossings = gear.Table("crossings") is { } crossings ? Crossings(crossings) : null,
        MarkTeeth = gear.Has("mark-tooth") ? [.. gear.Items("mark-tooth").Select(tooth => (int)tooth.Value!)] : null,
        PartNumber = gear.Text("part-number"),
        Measured = gear.Has("measured-tooth-thickness") || gear.Has("measured-span")
            ? new JobMeasuredTeeth(gear.Place, gear.Number("measured-tooth-thickness"), gear.Number("measured-span"), gear.Count("span-teeth") ?? 0)
            : null,
    };

    private static TipForm? Tip(Entries gear) => gear.Has("tip-round") || gear.Has("tip-chamfer") || gear.Has("tip-relief")
        ? new TipForm(gear.Number("tip-round") ?? 0, gear.Number("tip-chamfer") ?? 0, gear.Table("tip-relief") is { } relief ? Relief(relief) : null)
        : null;

    private static TipRelief Relief(Entries relief) =>
        new(relief.Number("amount")!.Value, relief.Number("start-height") ?? relief.Number("start-diameter")!.Value);

    private static JobBoreShape BoreShape(Entries shape) => new(
        shape.Place,
        shape.Text("form") switch
        {
            "d" => BoreForm.D,
            "two-flats" => BoreForm.TwoFlats,
            "hexagon" => BoreForm.Hexagon,
            _ => BoreForm.Keyway,
        },
        shape.Number("across"), shape.Number("key-width"), shape.Number("key-depth"), shape.Number("corner-radius") ?? 0, shape.Number("angle") ?? 0);

    private static JobCrossings Crossings(Entries crossings) => new(
        crossings.Place, crossings.Count("arms")!.Value, crossings.Number("hub-diameter"), crossings.Number("hub-width"),
        crossings.Number("rim-width")!.Value, crossings.Number("arm-width")!.Value, crossings.Number("arm-width-at-rim"),
        crossings.Number("corner-radius")!.Value, crossings.Number("start-angle") ?? 0);

    private static JobScrews Screws(Entries screws) => new(
        screws.Place, screws.Count("count")!.Value, screws.Number("circle")!.Value, screws.Number("hole")!.Value,
        screws.Number("head"), screws.Number("start-angle") ?? 0)
    {
        Depth = StackJob.ScrewDepth(screws),
    };

    private static Circle Hole(Entries hole) => new(
        PointOf(hole) ?? Point.Polar(hole.Number("radius")!.Value, hole.Number("angle") ?? 0), hole.Number("diameter")!.Value / 2);

    private static JobMesh Mesh(Entries mesh)
    {
        var gears = mesh.Items("gears");
        var split = mesh.Items("split");
        return new JobMesh(
            mesh.Place, MeshName(mesh)!, (string)gears[0].Value!, (string)gears[1].Value!, mesh.Number("measured-distance"),
            mesh.Number("backlash"), split.IsEmpty ? null : (double)split[0].Value!)
        {
            CentreDistanceTolerance = mesh.Number("centre-distance-tolerance"),
        };
    }
}
