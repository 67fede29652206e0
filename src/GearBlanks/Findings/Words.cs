using System.Globalization;

namespace GearBlanks.Findings;

/// <summary>Numbers in sentences for people: the same in every culture.</summary>
public static class Words
{
    // Finer than the rounding that a limit allows.
    private const int MostDecimals = 10;

    /// <summary>A figure to three decimals (more where it is small, zero only where it is zero but for rounding) with its unit.</summary>
    public static string Figure(double value, string unit)
    {
        // Less than 1e-9 is rounding, as where limits are judged.
        if (Math.Abs(value) is > 1e-9 and < 5e-7)
        {
            return $"{(value > 0 ? "less than 0.000001" : "between -0.000001 and 0")}{(unit.Length == 0 ? "" : " " + unit)}";
        }

        string digits = Math.Abs(value) is > 0 and < 0.01 ? "0.######" : "0.###";
        string number = value.ToString(digits, CultureInfo.InvariantCulture);
        return (number == "-0" ? "0" : number) + (unit.Length == 0 ? "" : " " + unit);
    }

    /// <summary>A figure to as many decimals as tell it from the other one, so that nothing reads as beyond itself.</summary>
    internal static string FigureBeside(double other, double value, string unit)
    {
        string words = Figure(value, unit);
        for (int decimals = 4; decimals <= MostDecimals && words == Figure(other, unit); decimals++)
        {
            words = value.ToString("0." + new string('#', decimals), CultureInfo.InvariantCulture) + (unit.Length == 0 ? "" : " " + unit);
        }

        return words;
    }

    /// <summary>A length, mm.</summary>
    public static string Mm(double value) => Figure(value, "mm");

    /// <summary>A change with its sign, to two decimals, rounded away from zero so that making it is enough.</summary>
    public static string Change(double value)
    {
        double rounded = Math.Sign(value) * Math.Ceiling((Math.Abs(value) * 100) - 1e-9) / 100;
        return rounded.ToString("+0.00;-0.00;0", CultureInfo.InvariantCulture);
    }

    /// <summary>A time in the unit that suits its size, from seconds to days.</summary>
    /// <param name="seconds">The time, seconds; at least 0.</param>
    public static string Time(double seconds)
    {
        (double size, string unit) = seconds switch
        {
            < 2 * 60 => (1, "seconds"),
            < 2 * 3_600 => (60, "minutes"),
            < 2 * 86_400 => (3_600, "hours"),
            _ => (86_400.0, "days"),
        };
        return (seconds / size).ToString("0.#", CultureInfo.InvariantCulture) + " " + unit;
    }

    /// <summary>A length, mm, rounded up to hundredths so that making it is enough, but not for the last bits of a double.</summary>
    internal static double RoundedUp(double value) => Math.Ceiling((value * 100) - 1e-8) / 100;

    /// <summary>A list in a sentence: "a, b and c".</summary>
    public static string List(IReadOnlyList<string> items) => items.Count switch
    {
        0 => "",
        1 => items[0],
        _ => string.Join(", ", items.Take(items.Count - 1)) + " and " + items[^1],
    };
}
