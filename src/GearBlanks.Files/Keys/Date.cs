using GearBlanks.Trains;

namespace GearBlanks.Files.Keys;

/// <summary>Dates as jobs write them, such as 2026-11-01T18:30:00Z.</summary>
public static class Date
{
    /// <summary>What may be written, in words.</summary>
    public static string Allowed => Dates.Allowed;

    /// <summary>A date, or what is wrong with the text.</summary>
    public static (Moment? Value, string? Complaint, string? Nearest) Read(string text) => Dates.Read(text);
}
