namespace GearBlanks.Teeth;

/// <summary>What to change so that a ring can exist, tried before it is said.</summary>
internal static class RingRemedy
{
    /// <summary>The refusal with advice; where nothing near works, without.</summary>
    public static GearGeometryException For(GearGeometryException refusal, RingData data)
    {
        string?[] ways = refusal.ShapeCase switch
        {
            "root-round-too-wide" => [SmallerFillet(data)],
            "no-flank" => [OtherTip(data), SmallerFillet(data)],
            "tip-inside-base" or "tip-below-root" => [OtherTip(data), OtherShift(data)],
            _ => [SmallerDedendum(data), OtherShift(data)],
        };
        string remedy = string.Join(", or ", ways.Where(way => way is not null));
        return new GearGeometryException(refusal.ShapeCase, refusal.What, refusal.Value, refusal.Limit, remedy.Length == 0 ? null : remedy);
    }

    private static string? OtherTip(RingData data)
    {
        double asked = 2 * RingForm.NominalTip(data);
        return NearestWorking.Of(tip => Exists(data with { TipDiameter = tip }), asked, 2 * data.BaseRadius, 2 * RingForm.Root(data)) is { } tip
            ? FormattableString.Invariant($"use a tip diameter of {(tip > asked ? "at least" : "at most")} {tip:0.######} mm")
            : null;
    }

    private static string? SmallerFillet(RingData data) =>
        NearestWorking.Of(round => Exists(data with { RootFilletRadius = round }), RingForm.Fillet(data), 0, RingForm.Fillet(data)) is { } most
            ? FormattableString.Invariant($"use a root fillet radius of at most {most:0.######} mm")
            : Exists(data with { RootFilletRadius = 0 }) ? "use a root fillet radius of 0 mm" : null;

    private static string? SmallerDedendum(RingData data) =>
        NearestWorking.Of(dedendum => Exists(data with { Rack = data.Rack with { Dedendum = dedendum } }), data.Rack.Dedendum, 0.1, data.Rack.Dedendum) is { } most
            ? FormattableString.Invariant($"use a rack with a dedendum of at most {most:0.######} modules")
            : null;

    private static string? OtherShift(RingData data) => NearestShift.Advice(data.ProfileShift, x =>
    {
        var form = RingForm.Of(data with { ProfileShift = x });
        return form.TipRadius != form.NominalTipRadius;
    });

    private static bool Exists(RingData data) => NearestWorking.Exists(() => RingForm.Of(data));
}
