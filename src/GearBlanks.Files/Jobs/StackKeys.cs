using GearBlanks.Files.Keys;
using GearBlanks.Mechanisms.Fits;

namespace GearBlanks.Files.Jobs;

/// <summary>The keys of a job that tell heights, what stands beside gears, and how bores fit their spindles.</summary>
internal static class StackKeys
{
    private const double Far = 100000;
    private const double Tall = 1000;

    private static readonly Key Tolerance = new Key("thickness-tolerance", KeyKind.Length, "Greatest deviation of the thickness, either way; none where left out.").From(0, 10);

    private static readonly Key TurnsWith = new("turns-with", KeyKind.Name, "Name of the sandwich that it turns with; left out where it stands still.");

    private static readonly Key BoreClass = new("bore-class", KeyKind.Text, "Tolerance class of the bore after ISO 286, such as \"H7\", for bores from 1 to 120 mm; taken as drawn where left out.");

    private static readonly Key MeasuredBore = new Key("measured-bore", KeyKind.Length, "Diameter of the bore as measured; it overrides `bore` and `bore-class` where fits are judged.").Above(0, Far);

    public static readonly KeyTable Spindles = new("axes.spindles", "A post, a rod or a tube that stands on the axis.",
    [
        NameOf("spindle"),
        new Key("diameter", KeyKind.Length, "Outer diameter.").Above(0, Far).Required(),
        new Key("bore", KeyKind.Length, "Bore of a tube; 0, solid, where left out.").From(0, Far),
        Height("bottom", "Height of its lower end over the frame.").Required(),
        Height("top", "Height of its upper end over the frame.").Required(),
        TurnsWith,
        new("class", KeyKind.Text, "Tolerance class of its diameter after ISO 286, such as \"h6\", for diameters from 1 to 120 mm; taken as drawn where left out."),
        new Key("measured-diameter", KeyKind.Length, "Diameter as measured; it overrides `diameter` and `class` where fits are judged.").Above(0, Far),
        BoreClass, MeasuredBore,
    ]);

    public static readonly KeyTable Columns = new("columns", "A round column of the frame.",
    [
        NameOf("column"),
        Position(),
        new Key("diameter", KeyKind.Length, "Diameter.").Above(0, Far).Required(),
        Height("bottom", "Height of its lower end over the frame.").Required(),
        Height("top", "Height of its upper end over the frame.").Required(),
    ]);

    public static readonly KeyTable PlateHoles = new("plates.holes", "A round hole through a plate.",
    [
        Position(),
        new Key("diameter", KeyKind.Length, "Diameter of the hole.").Above(0, Far).Required(),
    ]);

    public static readonly KeyTable Plates = new("plates", "A plate of the frame: a disc by `diameter`, or a rectangle by `length` and `width`.",
    [
        NameOf("plate"),
        Position(),
        new Key("diameter", KeyKind.Length, "Diameter of a disc.").Above(0, Far),
        new Key("length", KeyKind.Length, "Length of a rectangle.").Above(0, Far),
        new Key("width", KeyKind.Length, "Width of a rectangle.").Above(0, Far),
        new Key("direction", KeyKind.Angle, "Direction of a rectangle's length, counter-clockwise from +X; 0 where left out.").From(-360, 360),
        Height("bottom", "Height of its underside over the frame.").Required(),
        new Key("thickness", KeyKind.Length, "Thickness.").Above(0, Tall).Required(),
        Tolerance,
        new("holes", KeyKind.Table, "Its holes, anything may pass through.") { Of = PlateHoles, Shape = KeyShape.List },
    ]);

    public static readonly KeyTable Arms = new("arms", "A bar with round ends from one axis to another; one that turns sweeps a whole turn about the first.",
    [
        NameOf("arm"),
        new Key("from", KeyKind.Name, "Name of the axis at its one end, about which it turns.").Required(),
        new Key("to", KeyKind.Name, "Name of the axis at its other end.").Required(),
        new Key("width", KeyKind.Length, "Width.").Above(0, Far).Required(),
        Height("bottom", "Height of its underside over the frame.").Required(),
        new Key("thickness", KeyKind.Length, "Thickness.").Above(0, Tall).Required(),
        Tolerance,
        new Key("bore", KeyKind.Length, "Diameter of its hole at the first axis; 0 for none.").From(0, Far),
        TurnsWith,
    ]);

    public static readonly Key[] OfDefaults = [Tolerance];

    public static readonly Key[] OfAxes =
    [
        new("spindles", KeyKind.Table, "What stands on it: posts, rods, tubes within tubes.") { Of = Spindles, Shape = KeyShape.List },
    ];

    public static readonly Key[] OfSandwiches =
    [
        Height("measured-height", "Height of its underside as measured; it overrides `height`."),
        new Key("height-tolerance", KeyKind.Length, "How far its underside may lie above or below its height, end play included; none where left out.").From(0, 100),
    ];

    public static readonly Key[] OfLayers =
    [
        Tolerance,
        new Key("measured-thickness", KeyKind.Length, "Thickness as measured; it overrides the drawn one where heights are worked out.").Above(0, Tall),
        new Key("diameter", KeyKind.Length, "Outer diameter of a washer, which may have a `bore` as well; it takes no room in plan where left out.").Above(0, Far),
        BoreClass, MeasuredBore,
        new("seat", KeyKind.Choice, "How it sits on its spindle: `runs`, `pressed`, or `held` by screws or glue; where left out it is held by a spindle that turns with its sandwich, and runs on any other.")
        {
            Choices = ["runs", "pressed", "held"],
        },
    ];

    public static readonly Key[] OfScrews =
    [
        new Key("thread", KeyKind.Length, "Nominal diameter of the thread, such as 1.6 for M1.6.").Above(0, Tall),
        new Key("head-height", KeyKind.Length, "How far the heads stand out of the gear's face; 0, sunk, where left out.").From(0, Tall),
        new("heads", KeyKind.Choice, "The face that the heads are on; `up` where left out.") { Choices = ["up", "down"] },
        new Key("length", KeyKind.Length, "Length under the head; it needs `thread`.").Above(0, Tall),
        new Key("grip", KeyKind.Length, "Height between head and socket; the gear's own thickness where left out.").Above(0, Tall),
        new Key("socket", KeyKind.Length, "Depth of the tapped holes that they go into; it needs `length`.").Above(0, Tall),
    ];

    public static readonly Key[] OfHands =
    [
        new Key("length", KeyKind.Length, "Length from its axis; with `width`, `height` and `thickness` it takes room.").Above(0, Far),
        new Key("tail", KeyKind.Length, "Length of its tail from its axis; 0 where left out.").From(0, Far),
        new Key("width", KeyKind.Length, "Greatest width.").Above(0, Far),
        Height("height", "Height of its underside over the frame."),
        new Key("thickness", KeyKind.Length, "Thickness.").Above(0, Tall),
        new Key("bore", KeyKind.Length, "Diameter of its hole; 0 for none.").From(0, Far),
    ];

    public static readonly Key[] OfFile =
    [
        List("columns", "Round columns of the frame.", Columns),
        List("plates", "Plates of the frame.", Plates),
        List("arms", "Arms, fixed or turning.", Arms),
    ];

    /// <summary>What may be written as a class.</summary>
    public static string Classes(bool ofHole)
    {
        string example = ofHole ? "H7" : "h6";
        return FormattableString.Invariant($"letters from {(ofHole ? "D, E, F, G, H, JS, K, M, N, P, R, S" : "d, e, f, g, h, js, k, m, n, p, r, s")} with a grade from 5 to 11 (K up to 8), such as \"{example}\", for sizes from {ToleranceClass.LeastSize} to {ToleranceClass.GreatestSize} mm");
    }

    private static Key NameOf(string what) => new Key("name", KeyKind.Name, $"Name of the {what}.").Required();

    private static Key Position() => new Key("position", KeyKind.Length, "Place of its middle in plan, [x, y].") { Shape = KeyShape.Pair }.From(-Far, Far).Required();

    private static Key Height(string name, string meaning) => new Key(name, KeyKind.Length, meaning).From(-Far, Far);

    private static Key List(string name, string meaning, KeyTable of) => new(name, KeyKind.Table, meaning) { Of = of, Shape = KeyShape.List };
}
