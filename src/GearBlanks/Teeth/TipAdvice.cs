namespace GearBlanks.Teeth;

/// <summary>What to change so that teeth get the land they want at their tips, tried before it is said.</summary>
internal sealed record TipAdvice(Toothing Teeth, double Wanted)
{
    private const int Decimals = 2;

    private TipForm Form => Teeth.Data.Tip ?? TipForm.Plain;

    /// <summary>The advice.</summary>
    public string Sentence()
    {
        string[] ways = [.. new[] { SmallerCorner(), ShorterTip() }.Where(way => way is not null).Select(way => way!)];
        string first = string.Join(", or ", ways);
        return ways.Length == 0
            ? Teeth is ExternalGear ? "Lower the profile shift or the thinning." : "Lower the thinning, or take less off the tips."
            : $"{char.ToUpperInvariant(first[0])}{first[1..]}{(Teeth is ExternalGear ? ", or lower the profile shift" : "")}.";
    }

    private string? SmallerCorner() =>
        Form.Round > 0 ? Most(Form.Round, round => Form with { Round = round }, "round radius")
        : Form.Chamfer > 0 ? Most(Form.Chamfer, chamfer => Form with { Chamfer = chamfer }, "chamfer")
        : null;

    private string? Most(double asked, Func<double, TipForm> with, string what) =>
        NearestWorking.Of(value => HasLand(Teeth.Data with { Tip = with(value) }), asked, 0, asked) is { } most
            ? FormattableString.Invariant($"use a tip {what} of at most {most:0.######} mm")
            : null;

    private string? ShorterTip()
    {
        (double tip, double form, string what) = Teeth switch
        {
            Gear gear => (2 * gear.TipRadius, 2 * gear.FormRadius, "diameter"),
            RackBar bar => (bar.TipHeight, bar.FormHeight, "height"),
            _ => throw new InvalidOperationException("Teeth of an unknown kind."),
        };
        return NearestWorking.Of(value => HasLand(Teeth.Data.WithTip(value)), tip, form, tip, Decimals) is { } shorter
            ? FormattableString.Invariant($"{(shorter < tip ? "lower" : "raise")} the tip {what} to {shorter:0.######} mm")
            : null;
    }

    private bool HasLand(ToothData data)
    {
        try
        {
            return Toothing.Of(data) is { IsPointed: false } teeth && teeth.TipThickness >= Wanted;
        }
        catch (GearGeometryException)
        {
            return false;
        }
    }
}
