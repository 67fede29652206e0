using GearBlanks.Findings;

namespace GearBlanks.Tests;

/// <summary>Limits to judge by in tests: round figures in the way of common practice, no source.</summary>
internal static class TestLimits
{
    public static Limits Common { get; } = new()
    {
        Name = "tests",
        Backlash = Between(0, 0.02, 0.12, 0.3),
        WantedBacklash = 0.04,
        BacklashShareOfFirst = 0.5,
        ContactRatio = AtLeast(1, 1.2),
        TipClearance = AtLeast(0, 0.1),
        FilletClearance = AtLeast(0, null),
        TipThickness = AtLeast(0.1, 0.25),
        UndercutDepth = AtMost(0, 0.15),
        Wall = AtLeast(0.5, 1),
        HoleDiameter = AtLeast(0.3, 0.5),
        ArmWidth = AtLeast(0.5, 1.5),
        ScrewRoom = AtLeast(0.1, 0.3),
        DistanceDisagreement = AtMost(0.02, 0.2),
        ToothThicknessDisagreement = AtMost(0.02, 0.1),
        BacklashMiss = AtMost(0.04, null),
        DistanceSpread = AtMost(0.02, 0.1),
        FaceOverlap = AtLeast(0.25, 0.75),
        HandError = AtMost(50, 500),
        LostMotion = AtMost(3, 10),
        Roll = new RollLimits { Interference = AtMost(0.0005, 0.005), Pitch = AtMost(0.002, null) },
        Stack = new StackLimits
        {
            StackClearance = AtLeast(0, 0.2),
            SideClearance = AtLeast(0, 0.3),
            HeightDisagreement = AtMost(0.05, 0.3),
            HeadClearance = AtLeast(0, 0.1),
            ScrewEngagement = AtLeast(0.5, 1),
            ScrewEndRoom = AtLeast(0, 0.2),
            FitClearance = Between(0, 0.002, 0.15, null),
            FitInterference = Between(0, null, 0.04, null),
            WobbleRoom = AtLeast(0, 0.05),
            PlayBacklash = AtLeast(0, null),
        },
        Conditions = new ConditionLimits
        {
            BacklashLeast = AtLeast(0, null),
            BacklashGreatest = AtMost(0.2, 0.4),
            FilletClearanceLeast = AtLeast(-0.01, 0),
            BindingShare = AtMost(0, 0.001),
            RattlingShare = AtMost(0.01, 0.1),
            ApproachShare = AtMost(0.5, null),
        },
    };

    public static Limit Between(double? failsBelow, double? tightBelow, double? tightAbove, double? failsAbove) =>
        new(failsBelow, tightBelow, tightAbove, failsAbove, "common practice, no source");

    private static Limit AtLeast(double? fails, double? tight) => Between(fails, tight, null, null);

    private static Limit AtMost(double? tight, double? fails) => Between(null, null, tight, fails);
}
