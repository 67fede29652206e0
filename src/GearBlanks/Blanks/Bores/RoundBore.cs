using GearBlanks.Curves;
using GearBlanks.Teeth;

namespace GearBlanks.Blanks.Bores;

/// <summary>A round bore.</summary>
public sealed record RoundBore : Bore
{
    /// <summary>Makes a round bore.</summary>
    /// <param name="diameter">Diameter, mm; positive.</param>
    /// <exception cref="GearGeometryException">The diameter is no size.</exception>
    public RoundBore(double diameter)
        : base(0, 0)
    {
        Refusals.RequirePositive("The bore's diameter", diameter);
        Diameter = diameter;
    }

    /// <summary>Diameter, mm.</summary>
    public double Diameter { get; }

    /// <inheritdoc/>
    public override double OuterRadius => Diameter / 2;

    /// <inheritdoc/>
    public override string Words => FormattableString.Invariant($"Ø {Diameter:0.###} mm");

    internal override (string What, double Width) Narrowest => ("Diameter of the bore", Diameter);

    private protected override Outline Upright() => Curves.Outline.Of(new Circle(default, Diameter / 2));
}
