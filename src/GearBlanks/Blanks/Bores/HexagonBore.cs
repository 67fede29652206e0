using System.Collections.Immutable;
using GearBlanks.Curves;
using GearBlanks.Teeth;

namespace GearBlanks.Blanks.Bores;

/// <summary>A regular hexagon.</summary>
public sealed record HexagonBore : Bore
{
    private const int Sides = 6;

    /// <summary>Makes a hexagon.</summary>
    /// <param name="across">Width across flats, mm; positive.</param>
    /// <param name="cornerRadius">Radius in the corners, mm; below half of <paramref name="across"/>.</param>
    /// <param name="angle">Angle of the middle of the first flat, rad.</param>
    /// <exception cref="GearGeometryException">The width is no size, or the corners take all of the flats.</exception>
    public HexagonBore(double across, double cornerRadius = 0, double angle = 0)
        : base(cornerRadius, angle)
    {
        Refusals.RequirePositive("The hexagon's width across flats", across);
        Across = across;
        RequireCorners(across / 2, "flats");
    }

    /// <summary>Width across flats, mm.</summary>
    public double Across { get; }

    /// <inheritdoc/>
    public override double OuterRadius => (((Across / 2) - CornerRadius) / Math.Cos(Math.PI / Sides)) + CornerRadius;

    /// <inheritdoc/>
    public override string Words => FormattableString.Invariant($"hexagon, {Across:0.###} mm across flats");

    internal override (string What, double Width) Narrowest => ("Width of the bore across flats", Across);

    private protected override Outline Upright()
    {
        double inside = (Across / 2) - CornerRadius;
        double half = inside * Math.Tan(Math.PI / Sides);
        Curve flat = new Line(new Point(Across / 2, -half), new Point(Across / 2, half));
        ImmutableArray<Curve> pattern = CornerRadius > 0
            ? [flat, new Arc(new Point(inside, half), CornerRadius, 0, 2 * Math.PI / Sides)]
            : [flat];
        return new Outline(pattern, Sides);
    }
}
