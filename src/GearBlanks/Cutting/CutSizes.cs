using GearBlanks.Blanks;
using GearBlanks.Teeth;

namespace GearBlanks.Cutting;

/// <summary>A size that may differ with the direction it is measured in, mm.</summary>
/// <param name="Least">The least.</param>
/// <param name="Greatest">The greatest; equal to the least where the beam is equally wide in every direction.</param>
public readonly record struct SizeRange(double Least, double Greatest)
{
    internal static SizeRange Of(double size) => new(size, size);
}

/// <summary>What a cut gear measures once the beam has taken its width: predicted from geometry, for a beam and sheet that are as stated.</summary>
/// <param name="TipDiameter">Tip diameter, mm.</param>
/// <param name="RootDiameter">Root diameter, mm; null for a plain disc. Greater than drawn where the beam does not reach the root.</param>
/// <param name="ToothThickness">Tooth thickness (arc) on the reference circle, mm; null for a plain disc.</param>
/// <param name="Bore">Bore diameter, mm; null without a bore.</param>
public sealed record CutSizes(SizeRange TipDiameter, SizeRange? RootDiameter, SizeRange? ToothThickness, SizeRange? Bore)
{
    // mm: what a beam nudged by rounding makes of a root.
    private const double Rounding = 1e-5;

    /// <summary>The sizes of a gear that is cut as drawn: by a shop that compensates itself.</summary>
    public static CutSizes AsDrawn(Blank blank) => new(
        SizeRange.Of(2 * (blank.IsDisc ? blank.Gear.NominalTipRadius : blank.Gear.TipRadius)),
        blank.IsDisc ? null : SizeRange.Of(2 * blank.Gear.RootRadius),
        blank.IsDisc ? null : SizeRange.Of(blank.Gear.ToothThickness),
        blank.Bore is { } bore ? SizeRange.Of(bore) : null);

    /// <summary>The sizes of a gear whose file is compensated for the beam that cuts it: as drawn, but for roots that the beam does not reach.</summary>
    /// <param name="blank">The gear.</param>
    /// <param name="written">Its part, compensated for <paramref name="kerf"/>.</param>
    /// <param name="kerf">The kerf.</param>
    public static CutSizes Compensated(Blank blank, Part written, Kerf kerf)
    {
        CutSizes drawn = AsDrawn(blank);
        if (blank.IsDisc)
        {
            return drawn;
        }

        return drawn with { RootDiameter = kerf.IsEqual ? SizeRange.Of(Root(blank, written, kerf.X)) : new SizeRange(2 * blank.Gear.RootRadius, (2 * blank.Gear.RootRadius) + (2 * written.Unreached)) };
    }

    // At the deepest point of a gap two curves of the beam's path meet, or one begins: there the beam reaches half a kerf further in.
    private static double Root(Blank blank, Part written, double kerf)
    {
        double drawn = 2 * blank.Gear.RootRadius;
        double cut = (2 * written.Outside.Pattern.Min(curve => curve.StartPoint.Radius)) - kerf;
        return Math.Abs(cut - drawn) < Rounding ? drawn : cut;
    }

    /// <summary>The sizes of a gear whose nominal file is followed by the middle of a beam: thinner teeth, a smaller tip, a larger bore.</summary>
    /// <remarks>A flank moved by k / 2 turns by k / (2 rb), so the tooth loses k / cos(alpha) of arc on the reference circle.</remarks>
    /// <param name="blank">The gear.</param>
    /// <param name="kerf">The kerf.</param>
    public static CutSizes Uncompensated(Blank blank, Kerf kerf)
    {
        CutSizes drawn = AsDrawn(blank);
        ExternalGear gear = blank.Gear;
        (double least, double greatest) = (Math.Min(kerf.X, kerf.Y), Math.Max(kerf.X, kerf.Y));
        return new CutSizes(
            new SizeRange(Tip(greatest), Tip(least)),
            blank.IsDisc ? null : new SizeRange((2 * gear.RootRadius) - greatest, (2 * gear.RootRadius) - least),
            blank.IsDisc ? null : new SizeRange(gear.ToothThickness - (greatest / Math.Cos(gear.PressureAngle)), gear.ToothThickness - (least / Math.Cos(gear.PressureAngle))),
            blank.Bore is { } bore ? new SizeRange(bore + least, bore + greatest) : null);

        // Thinner teeth may come to a point before the tip circle does.
        double Tip(double width)
        {
            double circle = drawn.TipDiameter.Least - width;
            double half = (gear.ToothThickness / (2 * gear.ReferenceRadius)) + InvoluteFunction.Inv(gear.PressureAngle) - (width / (2 * gear.BaseRadius));
            return blank.IsDisc ? circle : half <= 0 ? 0 : Math.Min(circle, 2 * gear.BaseRadius / Math.Cos(InvoluteFunction.Inverse(half)));
        }
    }
}
