using GearBlanks.Rolling;

namespace GearBlanks.Files.Rolls;

/// <summary>Every position of a roll as comma-separated values: ASCII with LF, points as decimal signs, the same in every culture.</summary>
public static class RollCsv
{
    private const double DegreesInARadian = 180 / Math.PI;
    private const double ArcsecondsInARadian = 3600 * DegreesInARadian;
    private const double MicrometresInAMillimetre = 1000;
    private const int Decimals = 6;

    /// <summary>The whole file. What does not apply (angles of a rack) or is not there (no contact) is left empty.</summary>
    public static byte[] Write(RollReport report)
    {
        bool isRack = report.Request.Second.Kind == RollKind.Rack;
        ByteText text = new();
        text.Add("turn_degrees,left_arcseconds,right_arcseconds,left_micrometres,right_micrometres,backlash_mm,distance_mm\n"u8);
        foreach (RollPoint point in report.Track)
        {
            (double left, double right) = report.IsLeadingLeft ? (point.Leading, point.Trailing) : (point.Trailing, point.Leading);
            text.Add(point.Turn * DegreesInARadian, Decimals);
            Add(text, isRack ? null : left * ArcsecondsInARadian);
            Add(text, isRack ? null : right * ArcsecondsInARadian);
            Add(text, left * report.ReferenceRadius * MicrometresInAMillimetre);
            Add(text, right * report.ReferenceRadius * MicrometresInAMillimetre);
            Add(text, point.Play * report.WorkingRadius);
            Add(text, point.Distance);
            text.Add("\n"u8);
        }

        return text.ToArray();
    }

    private static void Add(ByteText text, double? value)
    {
        text.Add(","u8);
        if (value is { } number && double.IsFinite(number))
        {
            text.Add(number, Decimals);
        }
    }
}
