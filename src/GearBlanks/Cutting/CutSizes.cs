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

/// <summary>What a cut part measures once the beam has taken its width: predicted from geometry, for a beam and sheet that are as stated.</summary>
/// <param name="Tip">Tip diameter, mm; of a rack the height of the tips over its back.</param>
/// <param name="Root">
/// Root diameter, mm, of a rack the height of its root over the back; null for a plain disc. Off from what is drawn where the beam does not reach the root.
/// </param>
/// <param name="ToothThickness">Tooth thickness (arc) on the reference circle or line, mm; null for a plain disc.</param>
/// <param name="Bore">Width through the bore where it is narrowest, mm; null without a bore.</param>
/// <param name="Rim">Rim diameter of a ring, length of a rack, mm; null for other gears.</param>
public sealed record CutSizes(SizeRange Tip, SizeRange? Root, SizeRange? ToothThickness, SizeRange? Bore, SizeRange? Rim)
{
    // mm: what a beam nudged by rounding makes of a root.
    private const double Rounding = 1e-5;

    /// <summary>The sizes of a part that is cut as drawn: by a shop that compensates itself.</summary>
    public static CutSizes AsDrawn(Blank blank) => new(
        SizeRange.Of(TipOf(blank)),
        blank.IsDisc ? null : SizeRange.Of(RootOf(blank.Gear)),
        blank.IsDisc ? null : SizeRange.Of(blank.Gear.ToothThickness),
        blank.Cutouts.Bore is { } bore ? SizeRange.Of(bore.Narrowest.Width) : null,
        blank.Gear switch
        {
            RingGear ring => SizeRange.Of(2 * ring.RimRadius),
            RackBar rack => SizeRange.Of(rack.Length),
            _ => null,
        });

    /// <summary>The sizes of a part whose file is compensated for the beam that cuts it: as drawn, but for roots that the beam does not reach.</summary>
    /// <param name="blank">The part's blank.</param>
    /// <param name="written">Its part, compensated for <paramref name="kerf"/>.</param>
    /// <param name="kerf">The kerf.</param>
    public static CutSizes Compensated(Blank blank, Part written, Kerf kerf)
    {
        CutSizes drawn = AsDrawn(blank);
        return drawn.Root is not { } root ? drawn : drawn with
        {
            Root = kerf.IsEqual ? SizeRange.Of(Reached(root.Least, RootAsCut(blank.Gear, written, kerf.X))) : Widened(blank.Gear, root.Least, written.Unreached),
        };
    }

    /// <summary>The sizes of a part whose nominal file is followed by the middle of a beam: thinner teeth, shorter tips, a larger bore.</summary>
    /// <remarks>A flank moved by k / 2 turns by k / (2 rb), so the tooth loses k / cos(alpha) of arc on the reference circle.</remarks>
    /// <param name="blank">The part's blank.</param>
    /// <param name="kerf">The kerf.</param>
    public static CutSizes Uncompensated(Blank blank, Kerf kerf)
    {
        CutSizes drawn = AsDrawn(blank);
        double cosine = Math.Cos(blank.Gear.PressureAngle);

        // A ring's teeth stand in a hole, and holes grow.
        int teeth = blank.Gear is RingGear ? 1 : -1;
        return new CutSizes(
            Changed(drawn.Tip, kerf, (size, width) => Pointed(blank, size + (teeth * width), width)),
            drawn.Root is { } root ? Changed(root, kerf, (size, width) => size + (teeth * width)) : null,
            drawn.ToothThickness is { } thickness ? Changed(thickness, kerf, (size, width) => size - (width / cosine)) : null,
            drawn.Bore is { } bore ? Changed(bore, kerf, (size, width) => size + width) : null,
            drawn.Rim is { } rim ? Changed(rim, kerf, (size, width) => size - width) : null);
    }

    private static double TipOf(Blank blank) => blank.Gear switch
    {
        RackBar rack => rack.TipHeight + rack.Data.BackHeight,
        Gear gear => 2 * (blank.IsDisc ? gear.NominalTipRadius : gear.TipRadius),
        _ => throw new ArgumentException("Teeth are round or a rack's.", nameof(blank)),
    };

    private static double RootOf(Toothing teeth) => teeth is RackBar rack ? rack.RootHeight + rack.Data.BackHeight : 2 * ((Gear)teeth).RootRadius;

    // At the deepest point of a gap two curves of the beam's path meet, or one begins: there the beam reaches half a kerf further in.
    private static double RootAsCut(Toothing teeth, Part written, double kerf) => teeth switch
    {
        RackBar rack => RackRootAsCut(rack, written) - (kerf / 2),
        RingGear => (2 * written.Holes[0].Pattern.Max(curve => curve.StartPoint.Radius)) + kerf,
        _ => (2 * written.Outside.Pattern.Min(curve => curve.StartPoint.Radius)) - kerf,
    };

    // Neither at the back nor about the corners of the ends.
    private static double RackRootAsCut(RackBar rack, Part written) => rack.Data.BackHeight + written.Outside.Pattern
        .Select(curve => curve.StartPoint)
        .Where(point => point.Y > (rack.RootHeight - rack.Data.BackHeight) / 2 && Math.Abs(point.X) <= rack.Length / 2)
        .Min(point => point.Y);

    private static double Reached(double drawn, double cut) => Math.Abs(cut - drawn) < Rounding ? drawn : cut;

    private static SizeRange Widened(Toothing teeth, double root, double unreached) => teeth switch
    {
        RackBar => new SizeRange(root, root + unreached),
        RingGear => new SizeRange(root - (2 * unreached), root),
        _ => new SizeRange(root, root + (2 * unreached)),
    };

    private static SizeRange Changed(SizeRange size, Kerf kerf, Func<double, double, double> change)
    {
        (double one, double other) = (change(size.Least, kerf.X), change(size.Least, kerf.Y));
        return new SizeRange(Math.Min(one, other), Math.Max(one, other));
    }

    // Thinner teeth may come to a point before the tip circle does.
    private static double Pointed(Blank blank, double circle, double width)
    {
        if (blank.IsDisc || blank.Gear is not ExternalGear gear)
        {
            return circle;
        }

        double half = (gear.ToothThickness / (2 * gear.ReferenceRadius)) + InvoluteFunction.Inv(gear.PressureAngle) - (width / (2 * gear.BaseRadius));
        return half <= 0 ? 0 : Math.Min(circle, 2 * gear.BaseRadius / Math.Cos(InvoluteFunction.Inverse(half)));
    }
}
