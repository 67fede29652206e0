namespace GearBlanks.Teeth;

/// <summary>The cases in which a tip's form does not fit on its tooth; what to change is worked out where they are caught.</summary>
internal static class TipRefusal
{
    // The limits of these three are found with the advice.
    public static GearGeometryException RoundTooWide(double round) =>
        new("tip-round-too-wide", "The two rounds overlap at the tip; radius, mm", round, 0, null);

    public static GearGeometryException ChamferTooWide(double chamfer) =>
        new("chamfer-too-wide", "The two chamfers overlap at the tip; height, mm", chamfer, 0, null);

    public static GearGeometryException ReliefTooDeep(double amount) =>
        new("relief-too-deep", "The tip relief is deeper than half the tip or as steep as a chamfer; amount, mm", amount, 0, null);

    public static GearGeometryException ChamferTooSteep(double profileAngle) => new(
        "chamfer-too-steep", "The flank at the tip leans as much as a chamfer at 45 degrees would; angle between flank and radius, degrees",
        profileAngle * 180 / Math.PI, 45, "use a tip round instead, or neither");

    public static GearGeometryException ReliefOutOfRange(string at, double start, double limit, bool isBelow) => new(
        "relief-out-of-range",
        isBelow ? $"The tip relief starts below the flank, in the fillet; {at} of its start, mm" : $"The tip relief starts beyond the end of the flank; {at} of its start, mm",
        start, limit, null);

    public static GearGeometryException NoFlank(string at, double end, double form) =>
        new("tip-form-leaves-no-flank", $"What is taken off the tip reaches down to the fillet; {at} where the flank ends, mm", end, form, null);
}
