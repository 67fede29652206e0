using System.Globalization;
using System.Text.RegularExpressions;
using Fractions;
using GearBlanks.Trains;

namespace GearBlanks.Files.Keys;

/// <summary>Reads dates exactly, as TOML writes them (RFC 3339).</summary>
internal static partial class Dates
{
    public const string Allowed = "a date from year 1 on such as 2026-11-01, 2026-11-01T18:30:00Z or 2026-11-01T18:30:00+01:00 (UTC where it has no offset)";

    // Nobody writes more; it keeps exact arithmetic short.
    private const int Longest = 60;

    private const int SecondsInAnHour = 3_600;
    private const int SecondsInAMinute = 60;

    /// <summary>A date, or what is wrong.</summary>
    public static (Moment? Value, string? Complaint, string? Nearest) Read(string text)
    {
        Match match = text.Length > Longest ? Match.Empty : Shape().Match(text);
        if (!match.Success)
        {
            return (null, "This is not a date", null);
        }

        var (year, month, day) = (Number(match, "year"), Number(match, "month"), Number(match, "day"));
        if (year < 1 || month is < 1 or > 12)
        {
            return (null, year < 1 ? "There is no year 0" : "There is no such month", null);
        }

        if (day < 1 || day > Moment.DaysIn(year, month))
        {
            var last = Moment.DaysIn(year, month);
            return (null, "This month has no such day", string.Create(CultureInfo.InvariantCulture, $"{year:0000}-{month:00}-{Math.Clamp(day, 1, last):00}"));
        }

        return WithTime(text, match, year, month, day);
    }

    private static (Moment? Value, string? Complaint, string? Nearest) WithTime(string text, Match match, int year, int month, int day)
    {
        var (hour, minute, second) = (Number(match, "hour"), Number(match, "minute"), Number(match, "second"));
        if (hour > 23 || minute > 59 || second > 59)
        {
            return (null, second == 60 ? "Leap seconds are not counted: seconds go up to 59" : "There is no such time of day", null);
        }

        var (offsetHours, offsetMinutes) = (Number(match, "ahead"), Number(match, "minutes"));
        if (offsetHours > 23 || offsetMinutes > 59)
        {
            return (null, "There is no such offset from UTC", null);
        }

        int? offset = match.Groups["zulu"].Success ? 0
            : !match.Groups["ahead"].Success ? null
            : (match.Groups["sign"].Value == "-" ? -1 : 1) * ((offsetHours * SecondsInAnHour) + (offsetMinutes * SecondsInAMinute));
        var digits = match.Groups["part"].Value;
        var part = digits.Length == 0
            ? Fraction.Zero
            : new Fraction(System.Numerics.BigInteger.Parse(digits, CultureInfo.InvariantCulture), System.Numerics.BigInteger.Pow(10, digits.Length));
        var seconds = (hour * SecondsInAnHour) + (minute * SecondsInAMinute) + second;
        return (Moment.Of(text, year, month, day, part + seconds, offset), null, null);
    }

    private static int Number(Match match, string group) =>
        match.Groups[group].Success ? int.Parse(match.Groups[group].Value, NumberStyles.None, CultureInfo.InvariantCulture) : 0;

    [GeneratedRegex(
        "^(?<year>[0-9]{4})-(?<month>[0-9]{2})-(?<day>[0-9]{2})([Tt ](?<hour>[0-9]{2}):(?<minute>[0-9]{2})(:(?<second>[0-9]{2})(\\.(?<part>[0-9]+))?)?(?<zulu>[Zz])?((?<sign>[+-])(?<ahead>[0-9]{2}):(?<minutes>[0-9]{2}))?)?$",
        RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant)]
    private static partial Regex Shape();
}
