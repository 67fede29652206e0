using GearBlanks.Cutting;
using GearBlanks.Cutting.Routes;
using GearBlanks.Files.Keys;

namespace GearBlanks.Files.Profiles;

/// <summary>Every key of the profiles, declared once.</summary>
internal static class ProfileKeys
{
    private static readonly Key Source =
        new Key("source", KeyKind.Text, "Where the values come from, or \"common practice, no source\".").Required();

    private static readonly Key Title = new Key("title", KeyKind.Text, "What it is called in words.").Required();

    private static readonly Key Cautions = new("cautions", KeyKind.Text, "What to mind, a sentence each.") { Shape = KeyShape.List };

    public static readonly KeyTable Rack = new("", "A basic rack, in racks/. Proportions are in modules.",
    [
        new Key("pressure-angle", KeyKind.Angle, "Pressure angle.").From(5, 45).Required(),
        new Key("addendum", KeyKind.Number, "Addendum.").Above(0, 3).Required(),
        new Key("dedendum", KeyKind.Number, "Dedendum.").Above(0, 3).Required(),
        new Key("fillet-radius", KeyKind.Number, "Fillet radius: the round at the tip of the generating rack.").From(0, 1).Required(),
        new Key("dedendum-allowance", KeyKind.Length, "Length added to the dedendum; 0 where left out.").From(0, 1),
        Source,
    ]);

    public static readonly KeyTable Material = new("", "A material, in materials/.",
    [
        Title,
        new Key("thermal-expansion", KeyKind.Number, "Linear expansion, per kelvin; left out where it is not known.").From(-0.001, 0.001),
        new Key("moisture-expansion", KeyKind.Number, "Linear growth with each per cent of relative humidity; left out where it is not known.").From(0, 0.001),
        Cautions,
        Source,
    ]);

    public static readonly KeyTable MachineLayers = new("layers", "The drawing layer of each operation.",
    [
        new Key("outside", KeyKind.LayerName, "Cut through: the outside.").Required(),
        new Key("holes", KeyKind.LayerName, "Cut through: holes.").Required(),
        new Key("engrave", KeyKind.LayerName, "Marked on the surface.").Required(),
        new Key("note", KeyKind.LayerName, "For people: never cut or marked.").Required(),
        new("first", KeyKind.Choice, "What the machine does first, `engrave` where left out. The outside always comes last: a part that is cut free moves.") { Choices = ["engrave", "holes"] },
    ]);

    public static readonly KeyTable MachineKerf = new("kerf", "The kerf in one kind of sheet; in others it is not known, and files stay nominal.",
    [
        new Key("material", KeyKind.Name, "Name of the material's profile.").Required(),
        new Key("thickness", KeyKind.Length, "Least and greatest thickness of the sheet that it holds for.") { Shape = KeyShape.Pair }.Above(0, 1000).Required(),
        new Key("width", KeyKind.Length, "Full width of the cut; two where the beam is wider one way: along X, then along Y.") { Shape = KeyShape.OneOrPair }
            .Above(0, Kerf.Greatest).Required(),
        Source,
    ]);

    public static readonly KeyTable MachineLeast = new("least-feature", "The least wall, web and hole that the machine or shop makes: the greater of the two where both are given.",
    [
        new Key("thicknesses", KeyKind.Number, "In thicknesses of the sheet.").Above(0, 10),
        new Key("length", KeyKind.Length, "As a length.").Above(0, 100),
        Source,
    ]);

    public static readonly KeyTable MachineContour = new("contour", "Where contours start, how the tool comes to them, and what holds the part; closed contours without leads where left out. Options of `cut` come before it.",
    [
        new("start", KeyKind.Choice, "Where the contour of the teeth starts: in the middle of a `tip` land, or in a `root`; never on a flank.") { Choices = ["tip", "root"] },
        new("lead", KeyKind.Choice, "The way in and out, over scrap: a `line`, or a quarter `arc` that touches the contour; needs `lead-length`. Beside tabs it is a line square to the contour.") { Choices = ["line", "arc"] },
        new Key("lead-length", KeyKind.Length, "Length of the line, radius of the arc; shortened where there is no room.").Above(0, 100),
        new Key("tabs", KeyKind.Count, "How many tabs hold the part, on tip lands or the rim; needs `tab-width`.").From(1, RoutePlan.MostTabs),
        new Key("tab-width", KeyKind.Length, "Width of each tab; narrower where the land is.").Above(0, 100),
    ]);

    public static readonly KeyTable Machine = new("", "A machine or a shop, in machines/.",
    [
        Title,
        new Key("layers", KeyKind.Table, "The drawing layer of each operation.") { Of = MachineLayers }.Required(),
        new Key("compensates", KeyKind.Flag, "True where the shop, the controller or the CAM program moves the cut off the outline itself: files then stay nominal. False where left out."),
        new Key("kerf", KeyKind.Table, "The kerf in one kind of sheet.") { Of = MachineKerf, Shape = KeyShape.List },
        new Key("tool-diameter", KeyKind.Length, "Diameter of a mill's tool; \"path\" or \"compensates\" goes with it.").Above(0, Kerf.Greatest),
        new("path", KeyKind.Choice, "What a mill's files are: `part-contour`, and the controller or CAM program moves the tool off it (\"compensates\"), or `tool-centre`, the way of the tool's middle.") { Choices = ["part-contour", "tool-centre"] },
        new("contour", KeyKind.Table, "Where contours start, leads and tabs.") { Of = MachineContour },
        new Key("least-feature", KeyKind.Table, "The least wall, web and hole.") { Of = MachineLeast },
        Cautions,
    ]);

    public static readonly KeyTable Backlash = Limit("backlash", "Circumferential backlash at the working circle, in modules.",
        new Key("wanted", KeyKind.Number, "Backlash that a mesh is designed for where the job does not say, in modules.").From(0, 1).Required(),
        new Key("split", KeyKind.Number, "Shares of the two gears in the thinning that makes it; together 1.")
        {
            Least = 0,
            Most = 1,
            Shape = KeyShape.Pair,
            IsRequired = true,
        });

    public static readonly KeyTable Limits = new("", "Limits of findings, in limits/. Every table that is marked as needed must be there, others are taken from hand-assembled; a bound that is left out never bites.",
    [
        In(Backlash),
        In(Limit("backlash-miss", "Difference between the backlash a mesh has and the one it is designed for, in modules.")),
        In(Limit("contact-ratio", "Transverse contact ratio.")),
        In(Limit("tip-clearance", "Clearance of a tip circle from the mate's root circle, in modules.")),
        In(Limit("fillet-clearance", "Room between the mate's tip corner and the fillet, in modules.")),
        In(Limit("tip-thickness", "Arc thickness of a tooth at its tip circle, in modules.")),
        In(Limit("undercut-depth", "How deep the fillet cuts into the involute, in modules.")),
        In(Limit("wall", "Material between a bore, a hole and the root circle, in sheet thicknesses.")),
        In(Limit("hole-diameter", "Diameter of a hole, in sheet thicknesses.")),
        In(Limit("arm-width", "Least width of an arm between two windows, in sheet thicknesses.")),
        In(Limit("screw-room", "Room between the screws of gears on one spindle, in mm.")),
        In(Limit("distance-disagreement", "Difference between a measured centre distance and the axes' positions, in mm.")),
        Or(Limit("tooth-thickness-disagreement", "Difference between a measured tooth thickness and the drawn one, in mm; no bounds where left out.")),
        Or(Limit("roll-interference", "How deep one gear may lie in the other where outlines are rolled, in modules; none is allowed where left out.")),
        Or(Limit("roll-pitch", "Difference of the base pitches of two gears that are rolled, as a share of them; no bounds where left out.")),
        In(Limit("distance-spread", "Spread of the distances at which meshes between the same two axes have their wanted backlash, in modules.")),
        In(Limit("face-overlap", "Overlap of two gears' faces along the axis, as a share of the thinner one.")),
        In(Limit("hand-error", "Error of a hand's period, in parts per million.")),
        In(Limit("lost-motion", "How far a hand can be turned while the drives stand still, in degrees; no bounds where left out.")) with { IsRequired = false },
        .. StackLimitKeys.All,
        Or(Limit("backlash-least", "Least backlash of any build under the job's conditions, in modules.")),
        Or(Limit("backlash-greatest", "Greatest backlash of any build, in modules; over its `fails-above` a build counts as rattling.")),
        Or(Limit("fillet-clearance-least", "Least room between a tip corner and the mate's fillet in any build, in modules.")),
        Or(Limit("binding-share", "Share of random builds in which a mesh binds, 0 to 1.")),
        Or(Limit("rattling-share", "Share of random builds in which a mesh rattles, 0 to 1.")),
        Or(Limit("approach-share", "Share of the path of contact before the pitch point where the larger gear drives, 0 to 1.")),
    ]);

    public static KeyTable Of(ProfileKind kind) => kind switch
    {
        ProfileKind.Rack => Rack,
        ProfileKind.Material => Material,
        ProfileKind.Machine => Machine,
        _ => Limits,
    };

    private static Key In(KeyTable table) => Or(table).Required();

    // For profiles that were written before there was such a limit.
    private static Key Or(KeyTable table) => new(table.Path, KeyKind.Table, table.Meaning) { Of = table };

    internal static KeyTable Limit(string name, string meaning, params ReadOnlySpan<Key> more) => new(name, meaning,
    [
        Bound("fails-below", "Smaller figures fail."),
        Bound("tight-below", "Smaller figures are tight."),
        Bound("tight-above", "Greater figures are tight."),
        Bound("fails-above", "Greater figures fail."),
        .. more,
        Source,
    ]);

    private static Key Bound(string name, string meaning) => new Key(name, KeyKind.Number, meaning).From(-1000000, 1000000);
}
