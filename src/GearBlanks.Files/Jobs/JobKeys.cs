using GearBlanks.Files.Keys;
using GearBlanks.Teeth;
using CrossingsOf = GearBlanks.Blanks.Crossings;

namespace GearBlanks.Files.Jobs;

/// <summary>Every key of a job file, declared once.</summary>
internal static partial class JobKeys
{
    private const int LeastTeeth = GearRanges.LeastTeeth;
    private const int MostTeeth = GearRanges.MostTeeth;
    public const double LeastModule = GearRanges.LeastModule;
    private const double MostModule = GearRanges.GreatestModule;
    private const double LeastShift = GearRanges.LeastShift;
    private const double MostShift = GearRanges.GreatestShift;

    // 25.4 over the bounds of the module.
    private const double LeastPitch = 0.508;
    private const double MostPitch = 508;

    private const double Far = 100000;

    private static readonly Key Module = new Key("module", KeyKind.Length, "Module; every gear needs one, or `diametral-pitch`, here or in `defaults`.").From(LeastModule, MostModule);

    private static readonly Key Pitch = new Key("diametral-pitch", KeyKind.Number, "Teeth per inch of reference diameter, in place of `module`.")
        .From(LeastPitch, MostPitch);

    private static readonly Key Rack = new("rack", KeyKind.Name, "Name of a basic rack, from racks/; iso-53-a where left out.");

    private static readonly Key Material = new("material", KeyKind.Name, "Name of a material, from materials/.");

    private static readonly Key Thickness = new Key("thickness", KeyKind.Length, "Thickness of the sheet; every gear needs one, here or in `defaults`.").Above(0, 1000);

    private static readonly Key Bore = new Key("bore", KeyKind.Length, "Diameter of the bore; 0 for none.").From(0, Far);

    public static readonly KeyTable DefaultBoreShape = ShapeOf("defaults.bore-shape");

    public static readonly KeyTable BoreShape = ShapeOf("sandwiches.layers.bore-shape");

    private static readonly Key Thinning =
        new Key("thinning", KeyKind.Length, "Loss of tooth thickness, as an arc on the reference circle; worked out from the wanted backlash where left out.").From(0, 10);

    private static readonly Key Backlash = new Key("backlash", KeyKind.Length, "Wanted circumferential backlash at the working circle; the limits' `wanted` where left out. It is reached by thinning, which can only add backlash.").From(0, 10);

    private static readonly Key Lettering = new("lettering", KeyKind.Flag, "Whether gears are lettered; true where left out.");

    private static readonly Key Mark = new("mark", KeyKind.Flag, "Whether gears carry a clocking mark; true where left out.");

    public static readonly KeyTable Defaults = new("defaults", "What holds wherever an item does not say otherwise.",
    [
        Module, Pitch, Rack, Material,
        new("machine", KeyKind.Name, "Name of a machine, from machines/; drawing where left out."),
        new("limits", KeyKind.Name, "Name of a set of limits, from limits/; hand-assembled where left out."),
        Thickness, Bore,
        new("bore-shape", KeyKind.Table, "What makes the bores other than round; a gear with a `bore` of its own does not take it.") { Of = DefaultBoreShape },
        Thinning, Backlash, Lettering, Mark,
        new("mark-facing", KeyKind.Flag, "Whether a shorter mark stands at each tooth that faces a mate's gap at the setting, and at both teeth beside that gap: one mark goes between two. False where left out."),
        .. StackKeys.OfDefaults,
    ]);

    public static readonly KeyTable Axes = new("axes", "Where spindles stand: at a `position`, or `from` another axis by `distance` and `direction`.",
    [
        NameOf("axis"),
        Pair("position", KeyKind.Length, "Place in plan, [x, y].").From(-Far, Far),
        new("from", KeyKind.Name, "Name of the axis to measure from."),
        new Key("distance", KeyKind.Length, "Distance from that axis.").Above(0, Far),
        new Key("direction", KeyKind.Angle, "Direction from that axis, counter-clockwise from +X.").From(-360, 360),
        MotionKeys.CarriedBy,
        .. StackKeys.OfAxes,
    ]);

    public static readonly KeyTable Screws = new("sandwiches.layers.screws", "Screws of one gear, evenly spaced on a circle.",
    [
        new Key("count", KeyKind.Count, "How many.").From(1, 100).Required(),
        new Key("circle", KeyKind.Length, "Diameter of the circle they stand on.").Above(0, Far).Required(),
        new Key("hole", KeyKind.Length, "Diameter of their holes.").Above(0, 1000).Required(),
        new Key("head", KeyKind.Length, "Diameter of their heads; left out where heads take no room.").Above(0, 1000),
        new Key("start-angle", KeyKind.Angle, "Angle of the first one, from the centre line of a tooth; 0 where left out.").From(-360, 360),
        .. StackKeys.OfScrews,
    ]);

    public static readonly KeyTable Holes = new("sandwiches.layers.holes",
        "A further hole: at a `position`, or at a `radius` and an `angle`, seen from the bore with the centre line of a tooth on +X.",
    [
        new Key("diameter", KeyKind.Length, "Diameter of the hole.").Above(0, Far).Required(),
        Pair("position", KeyKind.Length, "Place of its centre, [x, y].").From(-Far, Far),
        new Key("radius", KeyKind.Length, "Distance of its centre from the bore's.").From(0, Far),
        new Key("angle", KeyKind.Angle, "Angle of its centre, counter-clockwise from +X; 0 where left out.").From(-360, 360),
    ]);

    public static readonly KeyTable TipRelief = new("sandwiches.layers.tip-relief", "Linear tip relief: nothing at its start, the whole amount at the tip circle.",
    [
        new Key("amount", KeyKind.Length, "What is taken off the flank at the tip circle, square to the flank.").Above(0, 100).Required(),
        new Key("start-diameter", KeyKind.Length, "Diameter where it starts; every gear's relief needs it.").Above(0, Far),
        new Key("start-height", KeyKind.Length, "Height over the reference line where a rack's relief starts.").From(-1000, 1000),
    ]);

    public static readonly KeyTable Crossings = new("sandwiches.layers.crossings",
        "Windows cut out between hub and rim, so that arms are left: a hub by `hub-diameter` or by `hub-width`.",
    [
        new Key("arms", KeyKind.Count, "How many arms.").From(CrossingsOf.FewestArms, CrossingsOf.MostArms).Required(),
        new Key("arm-width", KeyKind.Length, "Width of an arm; where it tapers, where its centre line leaves the hub.").Above(0, Far).Required(),
        new Key("arm-width-at-rim", KeyKind.Length, "Width of a tapered arm where its centre line reaches the rim.").Above(0, Far),
        new Key("hub-diameter", KeyKind.Length, "Diameter of the hub.").Above(0, Far),
        new Key("hub-width", KeyKind.Length, "Width of the hub's ring round the bore, in place of `hub-diameter`; from the bore's farthest point.").Above(0, Far),
        new Key("rim-width", KeyKind.Length, "Width of the rim below the root circle.").Above(0, Far).Required(),
        new Key("corner-radius", KeyKind.Length, "Radius in the corners of the windows; 0 for sharp ones.").From(0, Far).Required(),
        new Key("start-angle", KeyKind.Angle, "Angle of the first arm, from the centre line of a tooth; 0 where left out.").From(-360, 360),
    ]);

    public static readonly KeyTable Layers = new("sandwiches.layers",
        "One layer, bottom first: a gear, which has `teeth`; a straight rack, which has `rack-length`; or a washer, which has `washer` and of the rest only what tells its size and seat.",
    [
        new("gear", KeyKind.Name, "Name of the gear; a sandwich's only gear may take the sandwich's name."),
        new Key("teeth", KeyKind.Count, "Number of teeth; every gear needs it, a rack takes none.").From(LeastTeeth, MostTeeth),
        new Key("profile-shift", KeyKind.Number, "Profile shift coefficient; positive thickens the teeth, of a ring too; 0 where left out.").From(LeastShift, MostShift),
        Module, Pitch, Rack,
        new Key("tip-diameter", KeyKind.Length, "Tip diameter, where it is not the rack's.").Above(0, Far),
        Thinning, Thickness, Material, Bore,
        new("bore-shape", KeyKind.Table, "What makes its bore other than round.") { Of = BoreShape },
        new("crossings", KeyKind.Table, "Windows that leave arms between hub and rim.") { Of = Crossings },
        new("screws", KeyKind.Table, "Its screws.") { Of = Screws },
        new("holes", KeyKind.Table, "Further holes.") { Of = Holes, Shape = KeyShape.List },
        new Key("turned", KeyKind.Angle, "How far the gear is turned against its sandwich; of a rack the direction of its reference line, its teeth to the left; 0 where left out.").From(-360, 360),
        new("form", KeyKind.Choice, "`disc` for a plain turned disc of the tip diameter, whose teeth are milled later.") { Choices = ["toothed", "disc"] },
        Lettering, Mark,
        new Key("mark-tooth", KeyKind.Count, "The tooth that carries the clocking mark, or several: 1 is the tooth on +X, counted counter-clockwise; 1 where left out.")
            .From(1, MostTeeth) with { Shape = KeyShape.OneOrMore },
        new("part-number", KeyKind.Text, "Part number, engraved before the other lettering and written beside the drawing; at most 40 characters."),
        new Key("tip-round", KeyKind.Length, "Radius of the round between flank and tip circle; 0 where left out.").From(0, 1000),
        new Key("tip-chamfer", KeyKind.Length, "Height of the chamfer at the tips, along the radius; 0 where left out. Not together with `tip-round`.").From(0, 1000),
        new("tip-relief", KeyKind.Table, "What is taken off the flanks towards the tips.") { Of = TipRelief },
        new Key("measured-tooth-thickness", KeyKind.Length, "Tooth thickness as measured, as an arc on the reference circle; the meshes are checked with it, without `thickness-tolerance`; the drawing stays.").Above(0, 500),
        new Key("measured-span", KeyKind.Length, "Base tangent length as measured over `span-teeth` teeth of an external gear, in place of `measured-tooth-thickness`.").Above(0, Far),
        new Key("span-teeth", KeyKind.Count, "Over how many teeth `measured-span` was measured.").From(1, MostTeeth - 1),
        new("conditions", KeyKind.Table, "Its own conditions.") { Of = GearConditions },
        new("ring", KeyKind.Flag, "Whether it is a ring gear, whose teeth point inward; false where left out."),
        new Key("rim-diameter", KeyKind.Length, "Outer diameter of a ring's rim; every ring needs it.").Above(0, Far),
        new Key("root-fillet", KeyKind.Length, "Radius of the round between a ring's flank and its root circle; the rack's fillet radius where left out.").From(0, 1000),
        new Key("rack-length", KeyKind.Length, "Length of a straight rack, in place of `teeth`: its middle stands on the axis, its reference line lies along `turned`.").Above(0, Far),
        new Key("back-height", KeyKind.Length, "Distance of a rack's back from its reference line; every rack needs it.").Above(0, Far),
        new Key("washer", KeyKind.Length, "Height of a washer, a hub or a gap.").Above(0, 1000),
        .. StackKeys.OfLayers,
    ]);

    public static readonly KeyTable Sandwiches = new("sandwiches", "Gears and washers on one axis that turn as one.",
    [
        NameOf("sandwich"),
        new Key("axis", KeyKind.Name, "Name of its axis.").Required(),
        new Key("height", KeyKind.Length, "Height of its underside over the frame; left out where heights are not checked.").From(-Far, Far),
        MotionKeys.Fixed,
        new("conditions", KeyKind.Table, "Its own conditions.") { Of = SandwichConditions },
        new Key("layers", KeyKind.Table, "Its layers, bottom first.") { Of = Layers, Shape = KeyShape.List }.Required(),
        .. StackKeys.OfSandwiches,
    ]);

    public static readonly KeyTable Meshes = new("meshes", "Two gears that mesh.",
    [
        Pair("gears", KeyKind.Name, "Names of the two gears.").Required(),
        new("name", KeyKind.Name, "Name of the mesh; the two gears' names where left out."),
        new Key("measured-distance", KeyKind.Length, "Centre distance as measured; it overrides the axes' positions, and has no tolerance but the mesh's own.").Above(0, Far),
        Backlash, DistanceTolerance,
        Pair("split", KeyKind.Number, "Shares of the two gears in the thinning that makes the backlash; together 1.").From(0, 1),
    ]);

    public static readonly KeyTable File = new("", "A job file describes one mechanism and how it is to be cut.",
    [
        new("title", KeyKind.Text, "What the mechanism is called; the file's name where left out."),
        new("defaults", KeyKind.Table, "What holds everywhere.") { Of = Defaults },
        List("axes", "Where spindles stand.", Axes).Required(),
        List("sandwiches", "What turns.", Sandwiches).Required(),
        List("meshes", "Which gears mesh.", Meshes),
        new("conditions", KeyKind.Table, "The conditions that it will meet; checked only where they are given.") { Of = Conditions },
        new("drive", KeyKind.Table, "What turns the mechanism; it or `drives` is needed where there are hands.") { Of = MotionKeys.Drive },
        List("drives", "What turns a mechanism that needs several drives.", MotionKeys.Drives),
        List("hands", "What shows.", MotionKeys.Hands),
        .. StackKeys.OfFile,
    ]);

    private static KeyTable ShapeOf(string path) => new(path,
        "What makes a bore other than round. Angles are from the centre line of a tooth to the middle of the first flat or of the key.",
    [
        new Key("form", KeyKind.Choice, "`d` for one flat, `two-flats`, `hexagon` (which has no `bore`), `keyway`.") { Choices = ["d", "two-flats", "hexagon", "keyway"] }.Required(),
        new Key("across", KeyKind.Length, "From the flat to the round opposite, from flat to flat, or from the bottom of a keyway to the round opposite (d + t2).").Above(0, Far),
        new Key("key-width", KeyKind.Length, "Width of the keyway.").Above(0, Far),
        new Key("key-depth", KeyKind.Length, "Depth t2 of the keyway in the hub, from the round on its centre line; in place of `across`.").Above(0, Far),
        new Key("corner-radius", KeyKind.Length, "Radius in the inner corners, as the cutter leaves it; 0, sharp, where left out.").From(0, Far),
        new Key("angle", KeyKind.Angle, "Where the first flat or the key stands; 0 where left out.").From(-360, 360),
    ]);

    private static Key NameOf(string what) => new Key("name", KeyKind.Name, $"Name of the {what}.").Required();

    private static Key Pair(string name, KeyKind kind, string meaning) => new(name, kind, meaning) { Shape = KeyShape.Pair };

    private static Key List(string name, string meaning, KeyTable of) => new(name, KeyKind.Table, meaning) { Of = of, Shape = KeyShape.List };
}
