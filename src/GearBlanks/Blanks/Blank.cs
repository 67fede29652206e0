using System.Collections.Immutable;
using GearBlanks.Curves;
using GearBlanks.Teeth;

namespace GearBlanks.Blanks;

/// <summary>A gear with all that is cut into its face, in its own frame: centred on the origin, a tooth's centre line on +X.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Gear">Its teeth.</param>
/// <param name="Thickness">Sheet thickness, mm.</param>
/// <param name="Bore">Bore diameter, mm; null for none.</param>
/// <param name="Screws">Its screws; null for none.</param>
/// <param name="Holes">Further holes.</param>
/// <param name="IsDisc">True for a plain turned disc of the tip diameter, whose teeth are milled later.</param>
/// <param name="HasMark">Whether the tooth on +X is marked.</param>
/// <param name="Lettering">What is engraved, parts separated by <see cref="Lettering.LetteringLayout.Break"/>; empty for nothing.</param>
public sealed record Blank(
    string Name,
    ExternalGear Gear,
    double Thickness,
    double? Bore,
    ScrewCircle? Screws,
    ImmutableArray<Circle> Holes,
    bool IsDisc,
    bool HasMark,
    string Lettering)
{
    /// <summary>Every hole with its name, the bore first.</summary>
    public IEnumerable<(string Name, Circle Circle)> NamedHoles()
    {
        if (Bore is { } bore)
        {
            yield return ("bore", new Circle(default, bore / 2));
        }

        foreach (Circle hole in Screws?.Holes() ?? [])
        {
            yield return ("screw hole", hole);
        }

        foreach (Circle hole in Holes)
        {
            yield return ("hole", hole);
        }
    }
}
