using System.Collections.Immutable;
using GearBlanks.Curves;
using GearBlanks.Teeth;

namespace GearBlanks.Blanks.Bores;

/// <summary>
/// A round bore with a keyway in the hub. Its depth t2 is measured from the round on the key's centre line, so that d + t2, from the
/// bottom of the keyway to the round opposite, is what a caliper reads (terms of DIN 6885-1 and ISO/R 773; from memory). Only the two
/// corners at its bottom are inner corners; where its sides leave the round the hub has sharp edges.
/// </summary>
public sealed record KeywayBore : Bore
{
    /// <summary>Makes a bore with a keyway.</summary>
    /// <param name="diameter">Diameter of the round d, mm; positive.</param>
    /// <param name="keyWidth">Width of the keyway b, mm; over 0 and below the diameter.</param>
    /// <param name="keyDepth">Depth of the keyway t2, mm; positive.</param>
    /// <param name="cornerRadius">Radius in the two corners at the bottom, mm; below half the width and below the length of the sides.</param>
    /// <param name="angle">Angle of the keyway's middle, rad.</param>
    /// <exception cref="GearGeometryException">The key is wider than the bore, or the corners take more room than there is.</exception>
    public KeywayBore(double diameter, double keyWidth, double keyDepth, double cornerRadius = 0, double angle = 0)
        : base(cornerRadius, angle)
    {
        Refusals.RequirePositive("The bore's diameter", diameter);
        Refusals.RequirePositive("The keyway's width", keyWidth);
        Refusals.RequirePositive("The keyway's depth t2", keyDepth);
        if (keyWidth >= diameter)
        {
            throw new GearGeometryException(
                "key-wider-than-bore", "The keyway is as wide as the bore or wider; its width, mm", keyWidth, diameter,
                $"use a width over 0 and up to {Refusals.Below(diameter)}, or a bore of more than {Findings.Words.Mm(keyWidth)}");
        }

        Diameter = diameter;
        KeyWidth = keyWidth;
        KeyDepth = keyDepth;
        RequireCorners(keyWidth / 2, "keyway's bottom");
        RequireCorners(Bottom - SideStart, "keyway's sides");
    }

    /// <summary>Makes a bore with a keyway whose depth is given as a caliper reads it.</summary>
    /// <param name="diameter">Diameter of the round d, mm; positive.</param>
    /// <param name="keyWidth">Width of the keyway b, mm; over 0 and below the diameter.</param>
    /// <param name="across">From the keyway's bottom to the round opposite, d + t2, mm; over the diameter.</param>
    /// <param name="cornerRadius">Radius in the two corners at the bottom, mm.</param>
    /// <param name="angle">Angle of the keyway's middle, rad.</param>
    /// <exception cref="GearGeometryException">The keyway does not leave the round, or as for the constructor.</exception>
    public static KeywayBore OfAcross(double diameter, double keyWidth, double across, double cornerRadius = 0, double angle = 0) => across > diameter
        ? new KeywayBore(diameter, keyWidth, across - diameter, cornerRadius, angle)
        : throw new GearGeometryException(
            "key-inside-bore", "The keyway does not leave the bore's round: its size across (d + t2) is not over the diameter; size across, mm", across, diameter,
            $"use a size across of {Refusals.Over(diameter)} or more, or give the depth t2 alone");

    /// <summary>Diameter of the round d, mm.</summary>
    public double Diameter { get; }

    /// <summary>Width of the keyway b, mm.</summary>
    public double KeyWidth { get; }

    /// <summary>Depth of the keyway t2, mm.</summary>
    public double KeyDepth { get; }

    /// <summary>From the keyway's bottom to the round opposite, mm: d + t2.</summary>
    public double Across => Diameter + KeyDepth;

    /// <inheritdoc/>
    public override double OuterRadius => new Point(Bottom - CornerRadius, (KeyWidth / 2) - CornerRadius).Radius + CornerRadius;

    /// <inheritdoc/>
    public override string Words => FormattableString.Invariant($"Ø {Diameter:0.###} mm, keyway {KeyWidth:0.###} mm wide, {Across:0.###} mm across");

    internal override (string What, double Width) Narrowest => ("Width of the keyway", KeyWidth);

    // Distances from the centre along the keyway, mm.
    private double Bottom => (Diameter / 2) + KeyDepth;

    private double SideStart => Math.Sqrt((Diameter - KeyWidth) * (Diameter + KeyWidth)) / 2;

    private protected override Outline Upright()
    {
        (double half, double inside) = (KeyWidth / 2, Bottom - CornerRadius);
        double corner = half - CornerRadius;
        double turn = Math.Atan2(half, SideStart);
        ImmutableArray<Curve>.Builder pattern = ImmutableArray.CreateBuilder<Curve>();
        pattern.Add(new Line(new Point(Bottom, -corner), new Point(Bottom, corner)));
        if (CornerRadius > 0)
        {
            pattern.Add(new Arc(new Point(inside, corner), CornerRadius, 0, Math.PI / 2));
        }

        pattern.Add(new Line(new Point(inside, half), new Point(SideStart, half)));
        pattern.Add(new Arc(default, Diameter / 2, turn, 2 * (Math.PI - turn)));
        pattern.Add(new Line(new Point(SideStart, -half), new Point(inside, -half)));
        if (CornerRadius > 0)
        {
            pattern.Add(new Arc(new Point(inside, -corner), CornerRadius, -Math.PI / 2, Math.PI / 2));
        }

        return new Outline(pattern.ToImmutable());
    }
}
