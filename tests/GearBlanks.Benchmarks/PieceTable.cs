using System.Text;
using GearBlanks.Curves;
using GearBlanks.Curves.Fitting;
using GearBlanks.Teeth;

namespace GearBlanks.Benchmarks;

/// <summary>How many pieces a flank and a fillet take, beside the fewest that exist with their joints on the curve.</summary>
internal static class PieceTable
{
    private static readonly int[] ToothCounts = [8, 12, 20, 60, 240, 1000];

    public static string Told()
    {
        var text = new StringBuilder("Pieces taken (the least): one flank, one fillet; module 1, type A, within 0.001 mm\n");
        foreach (int teeth in ToothCounts)
        {
            Outline outline = ExternalGear.Create(Gears.Of(teeth)).Outline();
            text.Append(FormattableString.Invariant($"  {teeth,4} teeth"));
            foreach (Pieces kind in (Pieces[])[Pieces.Arcs, Pieces.Chords])
            {
                PieceCounts[] counts = [.. PieceCounts.Of(outline, Gears.Tolerance, kind)];
                text.Append(FormattableString.Invariant($"   {kind}: {Of<Involute>(counts)}, {Of<Trochoid>(counts)}"));
            }

            text.Append('\n');
        }

        return text.ToString();
    }

    private static string Of<TCurve>(PieceCounts[] counts)
        where TCurve : Curve
    {
        PieceCounts count = counts.First(c => c.Curve is TCurve);
        return FormattableString.Invariant($"{count.Pieces} ({count.Least:0.00})");
    }
}
