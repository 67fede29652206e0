using GearBlanks.Files.Keys;
using GearBlanks.Mechanisms.Conditions;

namespace GearBlanks.Files.Jobs;

/// <content>The keys of conditions.</content>
internal static partial class JobKeys
{
    private const int MostBuilds = 10_000_000;

    private static readonly Key DistanceTolerance =
        new Key("centre-distance-tolerance", KeyKind.Length, "By how much a centre distance may differ, either way; 0 where left out.").From(0, 10);

    private static readonly Key ThicknessTolerance =
        new Key("thickness-tolerance", KeyKind.Length, "By how much the tooth thickness may differ, as an arc on the reference circle, either way: the scatter of the kerf. 0 where left out.").From(0, 10);

    private static readonly Key EdgeTaper =
        new Key("edge-taper", KeyKind.Angle, "How far a cut edge may lean; the outline holds in the middle of the sheet. 0 where left out.").From(0, 10);

    private static readonly Key Eccentricity =
        new Key("eccentricity", KeyKind.Length, "How far the middle of the teeth may lie from the bore's: half of what a dial gauge reads as runout. The class's where there is a `grade`, else 0.").From(0, 10);

    private static readonly Key Grade =
        new Key("grade", KeyKind.Count, "Flank tolerance class after ISO 1328-1:2013, for pitch and profile, and for runout where no `eccentricity` is given.").From(1, 11);

    private static readonly Key BoreClearance =
        new Key("bore-clearance", KeyKind.Length, "By how much a bore is wider than its spindle at most, in diameter; of tubes in one another the sum. 0 where left out.").From(0, 10);

    private static readonly Key EndPlay =
        new Key("end-play", KeyKind.Length, "How far a sandwich can move along its axis; 0 where left out.").From(0, 100);

    public static readonly KeyTable GearConditions = new("sandwiches.layers.conditions", "The conditions of one gear, where those of the job do not hold.",
    [
        ThicknessTolerance, EdgeTaper, Eccentricity, Grade,
    ]);

    public static readonly KeyTable SandwichConditions = new("sandwiches.conditions", "The conditions of one sandwich, where those of the job do not hold.",
    [
        BoreClearance, EndPlay,
    ]);

    public static readonly KeyTable Conditions = new("conditions",
        "The conditions that the mechanism will meet; each mesh is then checked at its least and greatest backlash, and over random builds. Lengths and angles are limits: nothing is taken to lie beyond them.",
    [
        DistanceTolerance,
        new Key("post-tilt", KeyKind.Number, "How far a post may lean, mm a mm of height; every sandwich whose gears mesh then needs its `height`. 0 where left out.").From(0, 0.2),
        new Key("post-parallelism", KeyKind.Number, "How far two posts may lean from one another beside that, mm a mm of height; 0 where left out.").From(0, 0.2),
        ThicknessTolerance, EdgeTaper, Eccentricity, Grade,
        new("outside-standard", KeyKind.Flag, "Whether `grade` may be used outside the ranges of ISO 1328-1 (5 to 1000 teeth, 5 to 15000 mm of reference diameter, module 0.5 to 70, face width 4 to 1200 mm), and is then marked so; false where left out."),
        BoreClearance, EndPlay,
        new Key("sheet-tolerance", KeyKind.Length, "By how much the thickness of the sheet may differ, either way; 0 where left out.").From(0, 10),
        new Key("temperature", KeyKind.Number, "Least and greatest temperature, degrees Celsius; every gear then needs a material whose expansion is known, and the frame a `frame-material`.") { Shape = KeyShape.Pair }.From(-100, 200),
        new Key("humidity", KeyKind.Number, "Least and greatest relative humidity, per cent; materials as for `temperature`, with their growth in damp air.") { Shape = KeyShape.Pair }.From(0, 100),
        new Key("reference-temperature", KeyKind.Number, "Degrees Celsius at which the sizes hold; 20 where left out.").From(-100, 200),
        new Key("reference-humidity", KeyKind.Number, "Per cent of relative humidity at which the sizes hold; 50 where left out.").From(0, 100),
        new("frame-material", KeyKind.Name, "Name of the material, from materials/, of what holds the axes."),
        new Key("builds", KeyKind.Count, $"How many random builds are drawn; {Key.Written(JobBuilds.DefaultCount)} where left out.").From(1, MostBuilds),
        new Key("seed", KeyKind.Count, "The seed they are drawn from: the same seed gives the same builds; 1 where left out.").From(0, int.MaxValue),
        new("distribution", KeyKind.Choice, "How each quantity lies between its limits: `uniform`, or `normal` cut off at them, three standard deviations out; uniform where left out.") { Choices = ["uniform", "normal"] },
        new Key("most-binding", KeyKind.Number, "Greatest share of builds that may bind; the limits' `binding-share` where left out.").From(0, 1),
        new Key("most-rattling", KeyKind.Number, "Greatest share of builds that may rattle; the limits' `rattling-share` where left out.").From(0, 1),
    ]);
}
