using System.Collections.Immutable;
using GearBlanks.Cutting;
using GearBlanks.Cutting.Routes;
using GearBlanks.Files.Keys;
using GearBlanks.Findings;
using GearBlanks.Mechanisms;
using GearBlanks.Teeth;

namespace GearBlanks.Files.Profiles;

/// <summary>Makes profiles from entries in which no problem was found.</summary>
internal static class ProfileBuilder
{
    public static BasicRack Rack(string name, Entries file) => new(
        name, file.Number("pressure-angle")!.Value, file.Number("addendum")!.Value, file.Number("dedendum")!.Value,
        file.Number("fillet-radius")!.Value, file.Number("dedendum-allowance") ?? 0);

    public static Material Material(string name, Entries file) =>
        new(name, file.Text("title")!, file.Number("thermal-expansion"), Cautions(file))
        {
            MoistureExpansion = file.Number("moisture-expansion"),
        };

    public static Machine Machine(string name, Entries file)
    {
        var layers = file.Table("layers")!;
        var names = ImmutableDictionary.CreateRange(
        [
            KeyValuePair.Create(Operation.CutOutside, layers.Text("outside")!),
            KeyValuePair.Create(Operation.CutHoles, layers.Text("holes")!),
            KeyValuePair.Create(Operation.Engrave, layers.Text("engrave")!),
            KeyValuePair.Create(Operation.Note, layers.Text("note")!),
        ]);
        return new Machine(name, file.Text("title")!, new LayerPlan(names, layers.Text("first") == "holes"), Cautions(file))
        {
            Compensates = file.Flag("compensates") ?? false,
            Kerfs = [.. file.Tables("kerf").Select(SheetKerf)],
            ToolDiameter = file.Number("tool-diameter"),
            FollowsToolCentre = file.Text("path") == "tool-centre",
            Route = file.Table("contour") is { } contour ? Route(contour) : RoutePlan.None,
            LeastFeature = file.Table("least-feature") is { } least
                ? new LeastFeature(least.Number("thicknesses") ?? 0, least.Number("length") ?? 0, least.Text("source")!)
                : null,
        };
    }

    private static RoutePlan Route(Entries contour) => new(
        contour.Text("start") switch { "tip" => StartPlace.Tip, "root" => StartPlace.Root, _ => StartPlace.Anywhere },
        contour.Text("lead") switch { "line" => LeadForm.Line, "arc" => LeadForm.Arc, _ => null },
        contour.Number("lead-length") ?? 0, contour.Count("tabs") ?? 0, contour.Number("tab-width") ?? 0);

    private static SheetKerf SheetKerf(Entries table)
    {
        double[] thickness = [.. table.Items("thickness").Select(i => (double)i.Value!)];
        double[] width = [.. table.Items("width").Select(i => (double)i.Value!)];
        return new SheetKerf(table.Text("material")!, thickness[0], thickness[1], new Kerf(width[0], width[^1]), table.Text("source")!);
    }

    public static Limits Limits(string name, Entries file)
    {
        var backlash = file.Table("backlash")!;
        return new Limits
        {
            Name = name,
            Backlash = Limit(file, "backlash"),
            WantedBacklash = backlash.Number("wanted")!.Value,
            BacklashShareOfFirst = (double)backlash.Items("split")[0].Value!,
            ContactRatio = Limit(file, "contact-ratio"),
            TipClearance = Limit(file, "tip-clearance"),
            FilletClearance = Limit(file, "fillet-clearance"),
            TipThickness = Limit(file, "tip-thickness"),
            UndercutDepth = Limit(file, "undercut-depth"),
            Wall = Limit(file, "wall"),
            HoleDiameter = Limit(file, "hole-diameter"),
            ArmWidth = Limit(file, "arm-width"),
            ScrewRoom = Limit(file, "screw-room"),
            DistanceDisagreement = Limit(file, "distance-disagreement"),
            BacklashMiss = Limit(file, "backlash-miss"),
            DistanceSpread = Limit(file, "distance-spread"),
            FaceOverlap = Limit(file, "face-overlap"),
            HandError = Limit(file, "hand-error"),
            LostMotion = OptionalLimit(file, "lost-motion"),
            ToothThicknessDisagreement = OptionalLimit(file, "tooth-thickness-disagreement"),
            Roll = new RollLimits
            {
                Interference = file.Has("roll-interference") ? Limit(file, "roll-interference") : new RollLimits().Interference,
                Pitch = OptionalLimit(file, "roll-pitch"),
            },
            Stack = StackLimitKeys.Build(file),
            Conditions = ConditionLimitsBuilder.Of(file),
        };
    }

    private static Limit OptionalLimit(Entries file, string key) => file.Has(key) ? Limit(file, key) : Findings.Limits.None;

    internal static Limit Limit(Entries file, string key)
    {
        var table = file.Table(key)!;
        return new Limit(
            table.Number("fails-below"), table.Number("tight-below"), table.Number("tight-above"), table.Number("fails-above"), table.Text("source")!);
    }

    private static ImmutableArray<string> Cautions(Entries file) => [.. file.Items("cautions").Select(i => (string)i.Value!)];
}
