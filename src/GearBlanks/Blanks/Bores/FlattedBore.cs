using System.Collections.Immutable;
using GearBlanks.Curves;
using GearBlanks.Teeth;

namespace GearBlanks.Blanks.Bores;

/// <summary>A round bore with one flat (a D) or two parallel ones.</summary>
public sealed record FlattedBore : Bore
{
    /// <summary>Makes a bore with flats.</summary>
    /// <param name="diameter">Diameter of the round, mm; positive.</param>
    /// <param name="flats">1 or 2.</param>
    /// <param name="across">From the flat to the round opposite, or from flat to flat, mm; over 0 and below the diameter.</param>
    /// <param name="cornerRadius">Radius in the corners, mm; below half of <paramref name="across"/>.</param>
    /// <param name="angle">Angle of the middle of the first flat, rad.</param>
    /// <exception cref="ArgumentOutOfRangeException">There are neither one nor two flats.</exception>
    /// <exception cref="GearGeometryException">The flats lie outside of the round, or the corners take all of them.</exception>
    public FlattedBore(double diameter, int flats, double across, double cornerRadius = 0, double angle = 0)
        : base(cornerRadius, angle)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(flats, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(flats, 2);
        Refusals.RequirePositive("The bore's diameter", diameter);
        Refusals.RequirePositive("The bore's size across its flat", across);
        if (across >= diameter)
        {
            throw new GearGeometryException(
                "flat-outside-bore", "The flat does not cut the bore's round: its size across is not below the diameter; size across, mm", across, diameter,
                $"use a size across over 0 and up to {Refusals.Below(diameter)}, or a bore of more than {Findings.Words.Mm(across)}");
        }

        Diameter = diameter;
        Flats = flats;
        Across = across;
        RequireCorners(across / 2, "flat");
    }

    /// <summary>Diameter of the round, mm.</summary>
    public double Diameter { get; }

    /// <summary>How many flats: 1 or 2.</summary>
    public int Flats { get; }

    /// <summary>From the flat to the round opposite, or from flat to flat, mm.</summary>
    public double Across { get; }

    /// <inheritdoc/>
    public override double OuterRadius => Diameter / 2;

    /// <inheritdoc/>
    public override string Words => FormattableString.Invariant($"Ø {Diameter:0.###} mm, {(Flats == 1 ? "flat" : "two flats")}, {Across:0.###} mm across");

    internal override (string What, double Width) Narrowest => ("Width of the bore across its flat", Across);

    // Distance of a flat from the centre, mm; negative where one flat takes more than half of the round.
    private double FlatDistance => Flats == 1 ? Across - (Diameter / 2) : Across / 2;

    private protected override Outline Upright()
    {
        double radius = Diameter / 2;
        double inside = FlatDistance - CornerRadius;
        double aside = Math.Sqrt(((radius - CornerRadius) * (radius - CornerRadius)) - (inside * inside));
        double turn = Math.Atan2(aside, inside);
        ImmutableArray<Curve>.Builder pattern = ImmutableArray.CreateBuilder<Curve>();
        pattern.Add(new Line(new Point(FlatDistance, -aside), new Point(FlatDistance, aside)));
        if (CornerRadius > 0)
        {
            pattern.Add(new Arc(new Point(inside, aside), CornerRadius, 0, turn));
        }

        double step = 2 * Math.PI / Flats;
        pattern.Add(new Arc(default, radius, turn, step - (2 * turn)));
        if (CornerRadius > 0)
        {
            Point next = Point.Polar(radius - CornerRadius, step - turn);
            pattern.Add(new Arc(next, CornerRadius, step - turn, turn));
        }

        return new Outline(pattern.ToImmutable(), Flats);
    }
}
