using System.Collections.Immutable;
using System.Globalization;
using GearBlanks.Cutting;
using GearBlanks.Files.Keys;
using GearBlanks.Mechanisms;
using GearBlanks.Trains;

namespace GearBlanks.Cli.Arguments;

/// <summary>Readers of single words, the same in every culture.</summary>
internal static class WordReaders
{
    private static readonly string[] NotFinite = ["nan", "inf", "infinity"];

    public static Func<string, Reading<int>> WholeNumber(int least, int most)
    {
        var range = new NumberRange(least, most);
        return word =>
            int.TryParse(word, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out int value) ? new(value, range.Judge(value))
            : Decimal(word).Value is { } number ? new(0, double.IsInteger(number) ? range.Judge(number) : new("This is not a whole number", "a whole number " + range.InWords))
            : new(0, new(ComplaintOf(word), "a whole number " + range.InWords));
    }

    public static Func<string, Reading<double?>> Number(NumberRange range) => word => Judged(Decimal(word), range);

    /// <summary>A number of mm, or text with its unit such as "1/4 in".</summary>
    public static Func<string, Reading<double?>> Length(NumberRange range) => word =>
    {
        Reading<double?> plain = Decimal(word);
        if (plain.Complaint is null || !IsWithUnit(word))
        {
            return Judged(plain, range);
        }

        (double? value, string? complaint) = Quantity.Length(word);
        return complaint is null ? Judged(new(value), range) : new(null, new(complaint, range.InWords + ", or text with its unit (mm, in, thou) such as \"1/4 in\""));
    };

    public static Func<string, Reading<T>> Choice<T>(params (string Word, T Meaning)[] choices) => word =>
    {
        int at = Array.FindIndex(choices, choice => choice.Word == word);
        string[] words = [.. choices.Select(choice => choice.Word)];
        return at >= 0 ? new(choices[at].Meaning) : new(default, new("This is none of the choices", string.Join(", ", words), Nearest.To(word, words)));
    };

    /// <summary>Some of the choices with commas between, none twice; in the order of the choices, whatever order they are written in.</summary>
    public static Func<string, Reading<ImmutableArray<T>>> Some<T>(params (string Word, T Meaning)[] choices)
    {
        string[] words = [.. choices.Select(choice => choice.Word)];
        string allowed = "one or more of " + string.Join(", ", words) + ", each once, with commas between";
        return word =>
        {
            string[] named = word.Split(',');
            string? complaint =
                named.FirstOrDefault(name => !words.Contains(name)) is { } unknown ? Unknown(unknown)
                : named.GroupBy(name => name).FirstOrDefault(group => group.Count() > 1) is { } twice ? $"\"{twice.Key}\" is named twice"
                : null;
            return complaint is null
                ? new([.. choices.Where(choice => named.Contains(choice.Word)).Select(choice => choice.Meaning)])
                : new([], new(complaint, allowed, NearestList(named, words)));
        };
    }

    /// <summary>One width, or two with a comma between; 0 for none.</summary>
    public static Reading<AskedKerf?> Kerf(string word)
    {
        var range = new NumberRange(0, Cutting.Kerf.Greatest, "mm");
        string[] parts = word.Split(',');
        Reading<double?>[] widths = [.. parts.Select(part => Length(range)(part.Trim()))];
        if (parts.Length > 2)
        {
            return new(null, new("These are more than two widths", $"one width, or two with a comma between, each {range.InWords}"));
        }

        if (widths.Select(width => width.Complaint).FirstOrDefault(complaint => complaint is not null) is { } wrong)
        {
            return new(null, wrong with { Nearest = parts.Length == 1 ? wrong.Nearest : null });
        }

        (double x, double y) = (widths[0].Value!.Value, widths[^1].Value!.Value);
        return (x, y) switch
        {
            (0, 0) => new(new AskedKerf(null)),
            _ when Math.Max(x, y) > Cutting.Kerf.GreatestRatio * Math.Min(x, y) => new(
                null, new("The two widths are too unlike for one beam", $"at most {Cutting.Kerf.GreatestRatio:0} times as wide one way as the other")),
            _ => new(new AskedKerf(new Kerf(x, y))),
        };
    }

    public static Reading<string> Text(string word) => new(word);

    public static Reading<Moment?> Date(string word)
    {
        (Moment? value, string? complaint, string? nearest) = Files.Keys.Date.Read(word);
        return value is not null ? new(value) : new(null, new(complaint!, Files.Keys.Date.Allowed, nearest));
    }

    private static string Unknown(string name) =>
        name.Length == 0 ? "A word is missing" : $"\"{name}\" is none of the choices";

    // Each word's nearest, once; null where none of them is near anything.
    private static string? NearestList(IEnumerable<string> named, string[] words)
    {
        string list = string.Join(',', named.Select(name => Nearest.To(name.Trim(), words)).OfType<string>().Distinct());
        return list.Length == 0 ? null : list;
    }

    private static Reading<double?> Decimal(string word) =>
        Files.Numbers.TryParse(word, out double value) ? new(value == 0 ? 0 : value) : new(null, new(ComplaintOf(word), null));

    private static Reading<double?> Judged(Reading<double?> reading, NumberRange range) => reading.Complaint is { } complaint
        ? new(null, complaint with { Allowed = range.InWords })
        : new(reading.Value, range.Judge(reading.Value!.Value));

    private static bool IsWithUnit(string word) => (char.IsLetter(word.LastOrDefault()) || word.Contains('/', StringComparison.Ordinal)) && !IsNotFinite(word);

    private static bool IsNotFinite(string word) => NotFinite.Contains(word.TrimStart('-', '+'), StringComparer.OrdinalIgnoreCase)
        || double.TryParse(word, NumberStyles.Float, CultureInfo.InvariantCulture, out _);

    private static string ComplaintOf(string word) =>
        IsNotFinite(word) ? "This is not a finite number"
        : word.Contains(',', StringComparison.Ordinal) ? "This is not a number: write a decimal point, not a comma"
        : "This is not a number";
}
