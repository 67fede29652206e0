using GearBlanks.Findings;
using GearBlanks.Teeth;

namespace GearBlanks.Meshing.Accuracy;

/// <summary>What ISO 1328-1:2013 covers. Source: its clause 1, as read in a public catalogue's abstract.</summary>
internal static class GradeRange
{
    /// <summary>How a figure that no standard backs is marked.</summary>
    public const string Outside = "outside ISO 1328-1";

    /// <summary>One quantity outside its range; null where the standard covers the gear.</summary>
    /// <param name="gear">The gear.</param>
    /// <param name="faceWidth">Its face width: the thickness of the sheet, mm.</param>
    public static GradeMiss? Of(Gear gear, double faceWidth) =>
        Miss("tooth count", "", gear.Teeth, 5, 1000)
        ?? Miss("reference diameter", "mm", 2 * gear.ReferenceRadius, 5, 15000)
        ?? Miss("module", "mm", gear.Module, 0.5, 70)
        ?? Miss("face width", "mm", faceWidth, 4, 1200);

    private static GradeMiss? Miss(string quantity, string unit, double value, double least, double most) =>
        value < least ? new GradeMiss(quantity, unit, value, least) : value > most ? new GradeMiss(quantity, unit, value, most) : null;
}

/// <summary>A quantity outside the standard's range.</summary>
/// <param name="Quantity">What it is called.</param>
/// <param name="Unit">Its unit; empty for a count.</param>
/// <param name="Value">Its value.</param>
/// <param name="Bound">The bound it is beyond.</param>
internal sealed record GradeMiss(string Quantity, string Unit, double Value, double Bound)
{
    public override string ToString() =>
        $"{Quantity} {Words.Figure(Value, Unit)}, {(Value < Bound ? "below" : "above")} {Words.Figure(Bound, Unit)}";
}
