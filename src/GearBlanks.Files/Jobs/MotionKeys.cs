using GearBlanks.Files.Keys;

namespace GearBlanks.Files.Jobs;

/// <summary>Keys of what turns: arms, drives, hands and the setting of a dial.</summary>
internal static class MotionKeys
{
    public static readonly Key CarriedBy = new(
        "carried-by", KeyKind.Name, "Name of the sandwich that carries it, an arm; its place is where it stands at the setting. The frame where left out.");

    public static readonly Key Fixed = new("fixed", KeyKind.Flag, "Whether it is held to the frame and never turns; false where left out.");

    private static readonly Key Driven = new Key("sandwich", KeyKind.Name, "Name of the sandwich that is driven.").Required();

    private static readonly Key Turn = new Key("turn", KeyKind.Time, "Time of one turn.").Required();

    private static readonly Key Sense = new("sense", KeyKind.Choice, "The sense it turns in, seen from above; clockwise where left out.")
    {
        Choices = ["clockwise", "counter-clockwise"],
    };

    private static readonly Key Set = new("set", KeyKind.Date, "When the hands stand at their angles; needed where positions at other dates are asked for.");

    public static readonly KeyTable Drive = new("drive", "What turns the mechanism.", [Driven, Turn, Sense, Set]);

    public static readonly KeyTable Drives = new(
        "drives", "What turns a mechanism that needs several drives, as a differential does; in place of `drive`. Speeds are told per turn of the first.",
        [Driven, Turn, Sense, Set]);

    public static readonly KeyTable Hands = new("hands", "A hand or pointer, and how long one turn of it should take.",
    [
        new Key("name", KeyKind.Name, "Name of the hand.").Required(),
        new Key("sandwich", KeyKind.Name, "Name of the sandwich it sits on.").Required(),
        new Key("turn", KeyKind.Time, "Time in which it should turn once.").Required(),
        new Key("angle", KeyKind.ExactAngle, "Where it stands at the setting, clockwise from the dial's zero, as a dial is read; 0 where left out.").From(-360, 360),
        .. StackKeys.OfHands,
    ]);
}
