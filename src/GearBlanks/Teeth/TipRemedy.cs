namespace GearBlanks.Teeth;

/// <summary>What to change so that a tip's form fits, tried before it is said.</summary>
/// <param name="Form">The form asked for.</param>
/// <param name="FlankStart">Where the flank begins at the fillet: diameter, mm, or a rack's height.</param>
/// <param name="Tip">Where the tip lies, in the same way.</param>
/// <param name="At">What the two are called: diameter or height.</param>
/// <param name="Build">Throws where a form does not fit under a tip.</param>
internal sealed record TipRemedy(TipForm Form, double FlankStart, double Tip, string At, Action<TipForm, double> Build)
{
    /// <summary>The refusal with a piece of advice; where nothing near works, without.</summary>
    public GearGeometryException For(GearGeometryException refusal) => refusal.ShapeCase switch
    {
        "tip-round-too-wide" => AtMost(refusal, "round radius", round => Form with { Round = round }),
        "chamfer-too-wide" => AtMost(refusal, "chamfer", chamfer => Form with { Chamfer = chamfer }),
        "relief-too-deep" => AtMost(refusal, "relief", amount => Form with { Relief = Form.Relief! with { Amount = amount } }),
        "relief-out-of-range" => With(refusal, refusal.Limit, OtherStart()),
        _ => With(refusal, refusal.Limit, SmallerCorner()),
    };

    private static GearGeometryException With(GearGeometryException refusal, double limit, string? remedy) =>
        new(refusal.ShapeCase, refusal.What, refusal.Value, limit, remedy);

    private static string Words(string what, double most) => FormattableString.Invariant($"use a tip {what} of at most {most:0.######} mm");

    private GearGeometryException AtMost(GearGeometryException refusal, string what, Func<double, TipForm> with)
    {
        double? most = Most(refusal.Value, with);
        return With(refusal, most ?? 0, most is { } value ? Words(what, value) : OtherTip());
    }

    private string? SmallerCorner() => Form.Round > 0
        ? Most(Form.Round, round => Form with { Round = round }) is { } round ? Words("round radius", round) : null
        : Most(Form.Chamfer, chamfer => Form with { Chamfer = chamfer }) is { } chamfer ? Words("chamfer", chamfer) : null;

    private double? Most(double asked, Func<double, TipForm> with) => NearestWorking.Of(value => Fits(with(value), Tip), asked, 0, asked);

    private string? OtherTip() => NearestWorking.Of(tip => Fits(Form, tip), Tip, FlankStart, Tip) is { } tip
        ? FormattableString.Invariant($"use a tip {At} of {(tip < Tip ? "at most" : "at least")} {tip:0.######} mm")
        : null;

    private string? OtherStart() => NearestWorking.Of(
        start => Fits(Form with { Relief = Form.Relief! with { Start = start } }, Tip), Form.Relief!.Start, FlankStart, Tip) is { } start
        ? FormattableString.Invariant($"start the relief at a {At} of {start:0.######} mm")
        : "leave the relief out, or take less off the tip's corners";

    private bool Fits(TipForm form, double tip) => NearestWorking.Exists(() => Build(form, tip));
}
