using Fractions;

namespace GearBlanks.Trains;

/// <summary>A date with its time of day. Days have 86400 seconds: leap seconds are not counted. Years follow the Gregorian rules throughout.</summary>
/// <param name="Written">As it was written.</param>
/// <param name="Seconds">Seconds since 1970-01-01T00:00:00Z, exactly.</param>
/// <param name="IsTakenForUtc">True where it was written without an offset, and is read as UTC.</param>
public sealed record Moment(string Written, Fraction Seconds, bool IsTakenForUtc)
{
    private const int SecondsInADay = 86_400;

    /// <summary>The moment of a date and a time of day.</summary>
    /// <param name="written">As it was written.</param>
    /// <param name="year">Year, from 1.</param>
    /// <param name="month">Month, 1 to 12.</param>
    /// <param name="day">Day of the month, from 1.</param>
    /// <param name="secondOfDay">Seconds since midnight.</param>
    /// <param name="offset">How far local time is ahead of UTC, seconds; null where it is not said.</param>
    public static Moment Of(string written, int year, int month, int day, Fraction secondOfDay, int? offset) =>
        new(written, (DaysBefore(year, month, day) * (Fraction)SecondsInADay) + secondOfDay - (offset ?? 0), offset is null);

    /// <summary>Days of a month.</summary>
    public static int DaysIn(int year, int month) => month switch
    {
        2 => IsLeap(year) ? 29 : 28,
        4 or 6 or 9 or 11 => 30,
        _ => 31,
    };

    private static bool IsLeap(int year) => year % 4 == 0 && (year % 100 != 0 || year % 400 == 0);

    // Days from 1970-01-01.
    private static int DaysBefore(int year, int month, int day) =>
        DaysBeforeYear(year) - DaysBeforeYear(1970) + Enumerable.Range(1, month - 1).Sum(before => DaysIn(year, before)) + day - 1;

    private static int DaysBeforeYear(int year) => ((year - 1) * 365) + ((year - 1) / 4) - ((year - 1) / 100) + ((year - 1) / 400);
}
