using GearBlanks.Blanks;
using GearBlanks.Curves;
using GearBlanks.Curves.Offsets;
using GearBlanks.Findings;
using GearBlanks.Teeth;

namespace GearBlanks.Cutting;

/// <summary>
/// Moves a part's contours so that what the beam leaves is the part: the outside half a kerf outward, every hole half a kerf inward. Exact:
/// parallels of lines, arcs, involutes and fillets, arcs about corners, trimmed where they cross.
/// </summary>
public static class Compensation
{
    // Bisections of the greatest kerf that works: to a few micrometres.
    private const int Halvings = 10;

    // mm: less that stays uncut in hollow corners is not worth a word.
    private const double WorthTelling = 0.005;

    /// <summary>The compensated part; its engraving stays as it is.</summary>
    /// <param name="part">The part, nominal.</param>
    /// <param name="kerf">The width of the cut.</param>
    /// <param name="isMilled">True where an end mill makes it, which is then called so.</param>
    /// <exception cref="InvalidOperationException">The part is compensated already: nothing is ever compensated twice.</exception>
    /// <exception cref="GearGeometryException">The beam does not fit through a gap or a hole: kerf-closes-gap, kerf-closes-hole.</exception>
    public static Part Of(Part part, Kerf kerf, bool isMilled = false)
    {
        if (part.IsCompensated)
        {
            throw new InvalidOperationException($"{part.Name} is compensated already.");
        }

        OffsetOutline outside = Offset(part, part.Outside, kerf, isMilled, outward: true);
        OffsetOutline[] holes = [.. part.Holes.Select(hole => Offset(part, hole, kerf, isMilled, outward: false))];
        double unreached = holes.Append(outside).Max(offset => offset.Unreached) * Math.Max(kerf.X, kerf.Y) / 2;
        return part with
        {
            Outside = outside.Shape!,
            Holes = [.. holes.Select(hole => hole.Shape!)],
            Remarks = unreached < WorthTelling ? part.Remarks : part.Remarks.Add(
                $"In hollow corners the {Named(isMilled)} of {kerf} stays up to {Words.Mm(Math.Ceiling(unreached * 1000) / 1000)} off the outline and leaves its own round."),
            IsCompensated = true,
            Unreached = unreached,
        };
    }

    private static OffsetOutline Offset(Part part, Outline outline, Kerf kerf, bool isMilled, bool outward)
    {
        var beam = new Beam(kerf.X / 2, kerf.Y / 2);
        OffsetOutline offset = OutlineOffset.Of(outline, beam, outward);
        if (offset.Shape is not null)
        {
            return offset;
        }

        double greatest = GreatestShare(outline, beam, outward) * Math.Max(kerf.X, kerf.Y);
        (string shapeCase, string what) = offset.Loss == OffsetLoss.All
            ? ("kerf-closes-hole", "A hole")
            : ("kerf-closes-gap", outward ? "A gap of the outside" : "A hole or a gap of it");
        throw new GearGeometryException(
            shapeCase, $"{what} of {part.Name} is too narrow for the {Named(isMilled)} to cut its sides; {(isMilled ? "diameter" : "kerf")}, mm", Math.Max(kerf.X, kerf.Y), greatest,
            $"use {(isMilled ? "an" : "a")} {Named(isMilled)} of at most {Words.Mm(Math.Floor(greatest * 1000) / 1000)}, or make it wider");
    }

    private static string Named(bool isMilled) => isMilled ? "end mill" : "beam";

    // The greatest share of the beam's width that still goes through.
    private static double GreatestShare(Outline outline, Beam beam, bool outward)
    {
        (double works, double fails) = (0, 1.0);
        for (int i = 0; i < Halvings; i++)
        {
            double middle = (works + fails) / 2;
            (works, fails) = OutlineOffset.Of(outline, beam.Times(middle), outward).Shape is null ? (works, middle) : (middle, fails);
        }

        return works;
    }
}
