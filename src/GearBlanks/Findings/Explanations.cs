using System.Collections.Immutable;

namespace GearBlanks.Findings;

/// <summary>An explanation for every finding that a check can make.</summary>
public static class Explanations
{
    private const string Iso21771 = "ISO 21771:2007, clauses 5 and 7; from memory";
    private const string Plain = "geometry";
    private const string RingSource = "Stock Drive Products / Sterling Instrument, Elements of Metric Gear Technology, D785/D805, 5.2; from memory";
    private const string Shop = "common practice, no source";

    /// <summary>All of them, by name.</summary>
    public static ImmutableSortedDictionary<string, Explanation> All { get; } =
        Teeth().Concat(Meshes()).Concat(Rings()).Concat(Blanks()).Concat(Sandwiches()).Concat(Stack()).Concat(Trains()).Concat(Conditions()).Concat(Reach()).Concat(Rolls())
            .ToImmutableSortedDictionary(one => one.Name, one => one, StringComparer.Ordinal);

    private static IEnumerable<Explanation> Teeth() =>
    [
        new("undercut-depth", "The rack's tip cuts into the involute near the base circle: the tooth's neck is weaker and the flank shorter.",
            "the arc along the base circle between the involute's foot and the fillet; none from x = h - z sin^2(alpha) / 2 on, h = hfP - rho fP (1 - sin alpha)",
            Iso21771, ["Raise the profile shift, and lower the mate's by as much to keep the distance.", "Use more teeth.", "Accept a weaker neck where little force passes."]),
        new("tip-thickness", "The land at the tip is thin: it chips, bends or burns away in cutting.",
            "sa = da (s / d + inv alpha - inv alpha_a)", Iso21771,
            ["Make the tip diameter smaller.", "Lower the profile shift or the thinning.", "Make the tip's round, chamfer or relief smaller."]),
        new("pointed-tip", "The flanks meet before the tip circle: the tooth ends in a point and the tip diameter asked for does not exist.",
            "the diameter at which the tooth's half angle comes to 0", Iso21771, ["Make the tip diameter smaller.", "Lower the profile shift."]),
    ];

    private static IEnumerable<Explanation> Meshes() =>
    [
        new("backlash", "The play between the flanks at the working circle: with too little the mesh binds, with too much hands are loose and it rattles.",
            "j = 2 a (inv alpha_w - inv alpha_w0); in a ring with the other sign; over a rack 2 tan alpha (a - a0)", Iso21771,
            ["Move the axes to the distance that is told.", "Shift or thin one of the gears.", "Say in the job which backlash is wanted."]),
        new("backlash-miss", "The backlash is not the one that the job asks for.", "the difference between both", Iso21771,
            ["Let `gearblanks shift` find the profile shifts.", "Move the axes.", "Change the thinning, or the backlash that is wanted."]),
        new("contact-ratio", "How many pairs of teeth share the work on average: below 1 the drive jerks from tooth to tooth.",
            "length of the path of contact between the usable circles over the base pitch", Iso21771,
            ["Close the distance, where the backlash allows it.", "Use more teeth or longer tips.", "Lower the sum of profile shifts."]),
        new("tip-clearance", "The room between a tip circle and the mate's root circle.", "c = a - da1/2 - df2/2; in a ring the radii change their parts", Iso21771,
            ["Make the tip diameter smaller (a ring's greater).", "Use a rack with a deeper dedendum.", "Open the distance."]),
        new("fillet-clearance", "The room between the mate's tip corner on its way and this gear's fillet: where it is negative the corner digs in.",
            "the least distance of the corner's path, an epitrochoid, from the fillet or the flank beside it", Plain,
            ["Shorten or round the mate's tips.", "Raise this gear's profile shift.", "Open the distance."]),
        new("face-overlap", "The two faces share too little of their thickness along the axis, at the worst tolerances.", "overlap of the two height ranges over the thinner face", Plain,
            ["Move one sandwich by the height that is told.", "Use another washer or a thicker gear."]),
        new("distance-disagreement", "A measured centre distance and the drawn one, or two measured ones of the same axes, differ.", "the difference", Plain,
            ["Measure again.", "Correct the axes' positions: the check uses what was measured."]),
        new("tooth-thickness-disagreement", "The teeth that were measured are thicker or thinner than the drawn ones: the kerf was another, or the gear is another.",
            "s = W / cos alpha - m ((k - 1) pi + z inv alpha) where the base tangent length W over k teeth was measured", "ISO 21771:2007, clause 8; from memory",
            ["Measure again, at several places.", "Correct the kerf of the machine profile.", "Draw what was measured: the check uses it."]),
        new("distance-spread", "Meshes on the same two axes want different distances.", "the spread of the distances at which each has its wanted backlash", Iso21771,
            ["Let `gearblanks shift` find the profile shifts.", "Change tooth counts so that the sums agree."]),
        new("out-of-phase", "A loop of meshes does not close: where all others are in mesh, teeth meet teeth here.", "the angle left over round the loop, as a share of the pitch", Plain,
            ["Turn a gear against its sandwich by the angle that is told.", "Move an axis."]),
    ];

    private static IEnumerable<Explanation> Rings()
    {
        return
        [
            new("involute-interference", "The ring's tip would have to touch an involute that the pinion no longer has.", "rb2 tan alpha_a2 - a sin alpha_w, at least 0", RingSource,
                ["Make the ring's tip diameter greater.", "Use more teeth, or a greater shift, for the pinion."]),
            new("trochoid-interference", "Tip corners meet where the two tip circles cross, away from the line of centres.", "eqs. (5-6) to (5-8) as an arc on the ring's tip circle", RingSource,
                ["Shorten the tips of ring or pinion.", "Use a greater difference of tooth counts."]),
            new("trimming-interference", "The pinion cannot be moved in along the line of centres: its tips catch on the ring's.", "eqs. (5-9) and (5-10) as a length, with the backlash added", RingSource,
                ["Put the pinion in along the axis.", "Use a greater difference of tooth counts."]),
        ];
    }

    private static IEnumerable<Explanation> Blanks() =>
    [
        new("wall", "The material left between bore, holes, windows, screws and the root circle.", "the least distance between the contours", Plain,
            ["Move or shrink the hole that is named.", "Use thinner sheet, where the limit is in thicknesses."]),
        new("hole-diameter", "A hole is small against the sheet: it may not come out clean.", "diameter over thickness", Shop, ["Make the hole greater, or drill it.", "Use thinner sheet."]),
        new("arm-width", "An arm between two windows is narrow against the sheet.", "the least width over the thickness", Shop, ["Make the arms wider or fewer."]),
        new("least-feature", "A wall, hole or web is smaller than the machine or shop makes.", "the least size against the machine profile's rule", "the machine's profile",
            ["Make the feature greater.", "Choose another machine or thinner sheet."]),
    ];

    private static IEnumerable<Explanation> Sandwiches() =>
    [
        new("screw-room", "Screws of gears on one spindle come near one another.", "the least distance of holes or heads in plan", Plain, ["Turn one pattern against the other.", "Change a circle's diameter or the number of screws."]),
        new("head-clearance", "A screw's head stands in the way of the next part of its own sandwich.", "the height left over the head", Plain, ["Use a thicker washer or a lower head.", "Turn the screw round."]),
        new("screw-engagement", "Too little of the thread holds.", "engaged length over the thread's diameter", Shop, ["Use a longer screw, or a deeper socket."]),
        new("screw-end-room", "The screw meets the bottom of its socket before its head holds.", "depth of the socket less the length in it", Plain, ["Use a shorter screw, or a deeper socket."]),
        new("fit-clearance", "A bore that should run on its spindle binds, or shakes.", "least bore less greatest spindle", "ISO 286-1:2010, tables 1 to 3; from memory", ["Choose another class, or ream the bore."]),
        new("fit-interference", "A part that is pressed on is loose, or too tight.", "greatest spindle less least bore", "ISO 286-1:2010, tables 1 to 3; from memory", ["Choose another class, or turn the spindle."]),
        new("wobble", "A rim that swings by the play of its bore comes near its neighbour.", "clearance times rim radius over bearing length, against the gap in height", Plain,
            ["Use a longer hub.", "Use a closer fit.", "Use a thicker washer."]),
        new("play-backlash", "The play of the bores lets two gears come so near that the mesh can bind.", "the backlash at the distance less both plays", Iso21771, ["Use closer fits.", "Open the distance, or thin the teeth."]),
        new("clocking-pattern", "The screws let a gear be put on at an angle, or upside down, at which its teeth stand elsewhere.", "the symmetries of the screw pattern that are none of the teeth", Plain,
            ["Mark the tooth and the sandwich.", "Use a pin, or another number of screws."]),
        new("height-disagreement", "A measured height or thickness differs from the drawn one.", "the difference", Plain, ["Measure again.", "Correct the job: the check uses what was measured."]),
    ];

    private static IEnumerable<Explanation> Stack() =>
    [
        new("collision", "Two bodies that are not meant to mesh take the same room.", "overlap in plan and in height, the turn of whatever turns with an arm included", Plain,
            ["Move one up or down by the height that is told: another washer.", "Move or shrink it in plan."]),
        new("stack-clearance", "Two bodies pass over one another with little room.", "the gap in height at the worst tolerances", Shop, ["Use a thicker washer."]),
        new("side-clearance", "Two bodies on one level pass beside one another with little room.", "the gap in plan", Shop, ["Move or shrink one in plan."]),
    ];

    private static IEnumerable<Explanation> Trains() =>
    [
        new("hand-error", "A hand does not keep the time it should.", "(period - wanted) / wanted, from exact fractions", Plain, ["Look for tooth counts whose ratio comes nearer."]),
        new("hand-still", "A hand sits on a sandwich that nothing turns.", "its speed is 0 or not settled", Plain, ["Add the mesh that turns it."]),
        new("train-locked", "A loop of meshes asks for speeds that contradict one another: nothing turns.", "(w1 - wc) z1 + (w2 - wc) z2 = 0 for every mesh on a carrier c", "Willis' equation; from memory",
            ["Take out one of the meshes that are named.", "Change tooth counts until the loop's ratio is 1."]),
        new("train-contradiction", "The drives ask for speeds that the train cannot have together.", "as for train-locked, with the drives' speeds", "Willis' equation; from memory", ["Take out a drive, or give it the turn that is told."]),
        new("train-loose", "The drives do not settle the speed of a sandwich.", "a column of the linear system stays free", Plain, ["Add the mesh that turns it, or hold it to the frame.", "Take it out of the job."]),
        new("train-surplus", "A mesh turns along that the others make unnecessary; its speeds agree.", "a row of the linear system says nothing new", Plain, ["Nothing need change."]),
        new("distance-changes", "The axes of a mesh rest against no one body: its distance changes as an arm turns.", "the chains of carriers of the two axes have no body in common", Plain, ["Carry both axes by the same body, or put one on the arm's own axis."]),
        new("lost-motion", "How far a hand can be turned while the drives stand still, by the backlash on its way.", "sum of j / rw of every mesh, each divided by the ratio from there to the hand", Plain,
            ["Use less backlash near the hand.", "Drive the hand through a reduction.", "Load the hand with a light spring."]),
    ];

    private static IEnumerable<Explanation> Conditions() =>
    [
        new("backlash-least", "In the worst build and weather the mesh has this backlash: below 0 it binds.", "the exact backlash at the corner of all tolerances, plays and climates", Iso21771,
            ["Open the distance or thin the teeth by what is told.", "Narrow the tolerance that is named as the greatest.", "Use one material for gears and frame."]),
        new("backlash-greatest", "In the worst build and weather the mesh has this much backlash.", "the exact backlash at the opposite corner", Iso21771, ["Narrow the tolerance that is named.", "Close the distance."]),
        new("binding-share", "The share of random builds in which the mesh binds.", "builds drawn inside the stated limits, seeded", Plain, ["As for backlash-least."]),
        new("rattling-share", "The share of random builds with more backlash than the limit.", "builds drawn inside the stated limits, seeded", Plain, ["As for backlash-greatest."]),
        .. AtEnds("contact-ratio", "contact ratio", Iso21771),
        .. AtEnds("tip-clearance", "tip clearance", Iso21771),
        .. AtEnds("fillet-clearance", "room between a tip corner and the fillet", Plain),
        .. AtEnds("involute-interference", "involute interference", RingSource),
        .. AtEnds("trochoid-interference", "trochoid interference", RingSource),
        .. AtEnds("trimming-interference", "trimming interference", RingSource),
        new("face-overlap-least", "The overlap of the faces at the end play's worst.", "as face-overlap", Plain, ["As for face-overlap."]),
        new("approach-share", "Where the larger gear drives, flanks that touch before the pitch point rub into one another.", "path of contact before the pitch point over the whole", Shop,
            ["Shift the driver up and the driven gear down.", "Shorten the driven gear's tips."]),
        new("grade-range", "The gear lies outside the sizes that ISO 1328-1 gives tolerances for.", "module, tooth count, diameter, face width against the standard's ranges", "ISO 1328-1:2013, clause 1; from memory",
            ["Give tolerances of your own.", "Set outside-standard, and read the figures as a guess."]),
    ];

    private static IEnumerable<Explanation> AtEnds(string name, string what, string source) =>
        [new($"{name}-least", $"The {what} at the least or the greatest distance of any build, whichever is worse, with the thickest or the thinnest teeth.", $"as {name}", source, [$"As for {name}.", "Narrow what moves the centres: the conditions' tolerances and plays."])];

    private static IEnumerable<Explanation> Reach() =>
    [
        new("as-cut-clearance", "The room between the mate's tip corner on its way and what the tool leaves standing: below 0 the corner strikes it.",
            "the least distance of the corner's path from the tool's round between its two touches, R less the distance from the tool's centre", Plain,
            ["Use a smaller tool, or a second one for the corners.", "Use a deeper dedendum or another rack.", "Round or chamfer the mate's tips."]),
        new("root-reach", "The tool stays off the root by more than the rack's own bottom clearance: a mate with the rack's addendum strikes there.",
            "greatest distance of the nominal outline from the outline as cut, against hfP - haP", Plain,
            ["Use a smaller tool.", "Check the gear in a job, with its mate.", "Use a deeper dedendum."]),
        new("hole-reach", "A bore, hole or window is narrower than the tool, which does not go through it.", "the largest tool that runs along all its sides", Plain,
            ["Use a smaller tool.", "Drill the hole.", "Make it wider."]),
    ];

    private static IEnumerable<Explanation> Rolls() =>
    [
        new("roll-contact", "At some position of the roll no tooth of one gear reaches a tooth of the other.", "first contact of the outlines at every position; the turn at which there is none", Plain,
            ["Close the distance (in a ring: open it).", "Use longer tips or more teeth."]),
        new("roll-interference", "Rolled as they are, one gear's material is in the other's way.", "how deep a tip would dig in along the normal if the flanks alone carried", Plain,
            ["Round or shorten the tips.", "Cut the roots deeper, or with a smaller tool.", "Open the distance (in a ring: close it)."]),
        new("roll-pitch", "The two outlines have different base pitches: other modules or pressure angles, or one was scaled.", "base pitch pi m cos alpha, of outlines alone from how far their flanks turn between two radii", "ISO 21771:2007, clause 5.1, from memory",
            ["Draw both with one module and pressure angle.", "See that both drawings say their true units."]),
        new("roll-backlash", "The least play between the two outlines over the whole roll: below 0 the pair does not turn.", "difference of the two turns at which flanks stop a gear, times its working radius", Plain,
            ["Set the distance at which the pair just turns, or more (in a ring: less).", "Thin the teeth."]),
    ];
}
