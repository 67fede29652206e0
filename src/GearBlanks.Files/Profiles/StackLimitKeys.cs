using GearBlanks.Files.Keys;
using GearBlanks.Findings;
using GearBlanks.Mechanisms;

namespace GearBlanks.Files.Profiles;

/// <summary>The limits of the stack. Profiles that are older than they are stay valid: what one leaves out is taken from the built-in ones.</summary>
internal static class StackLimitKeys
{
    public static IEnumerable<Key> All =>
    [
        Of("stack-clearance", "Gap in height between bodies that lie over one another, at the worst tolerances, in mm."),
        Of("side-clearance", "Gap in plan between bodies that lie beside one another on one level, in mm."),
        Of("height-disagreement", "Difference between a measured height or thickness and the drawn one, in mm."),
        Of("head-clearance", "Gap between a screw's head and the next part of its own sandwich, in mm."),
        Of("screw-engagement", "Engaged length of a screw's thread, in thread diameters."),
        Of("screw-end-room", "Room between a screw's end and the bottom of its socket, in mm."),
        Of("fit-clearance", "Clearance between a bore and a spindle that it runs on, in mm of diameter."),
        Of("fit-interference", "Interference between a bore and a spindle that is pressed into it, in mm of diameter."),
        Of("wobble", "What a rim that swings on its spindle leaves of the gap to its neighbours, in mm."),
        Of("play-backlash", "Backlash that is left where the play of the bores brings two gears together, in modules."),
    ];

    public static StackLimits Build(Entries file)
    {
        StackLimits? others = All.All(key => file.Has(key.Name))
            ? null
            : ProfileFinder.BuiltIn.Limits(DefaultNames.Limits, new Place("", 0, 0)).Value?.Stack;
        Limit Find(string name, Func<StackLimits, Limit> other) =>
            file.Has(name) ? ProfileBuilder.Limit(file, name) : other(others ?? StackLimits.None);
        return new StackLimits
        {
            StackClearance = Find("stack-clearance", limits => limits.StackClearance),
            SideClearance = Find("side-clearance", limits => limits.SideClearance),
            HeightDisagreement = Find("height-disagreement", limits => limits.HeightDisagreement),
            HeadClearance = Find("head-clearance", limits => limits.HeadClearance),
            ScrewEngagement = Find("screw-engagement", limits => limits.ScrewEngagement),
            ScrewEndRoom = Find("screw-end-room", limits => limits.ScrewEndRoom),
            FitClearance = Find("fit-clearance", limits => limits.FitClearance),
            FitInterference = Find("fit-interference", limits => limits.FitInterference),
            WobbleRoom = Find("wobble", limits => limits.WobbleRoom),
            PlayBacklash = Find("play-backlash", limits => limits.PlayBacklash),
        };
    }

    private static Key Of(string name, string meaning)
    {
        KeyTable table = ProfileKeys.Limit(name, meaning);
        return new Key(name, KeyKind.Table, meaning) { Of = table };
    }
}
