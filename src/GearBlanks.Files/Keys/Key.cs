using System.Collections.Immutable;
using System.Globalization;

namespace GearBlanks.Files.Keys;

/// <summary>What kind of value a key takes.</summary>
internal enum KeyKind
{
    /// <summary>A sentence: printable ASCII.</summary>
    Text,

    /// <summary>A name that can become a file's name.</summary>
    Name,

    /// <summary>A drawing layer's name.</summary>
    LayerName,

    /// <summary>One of a few words.</summary>
    Choice,

    /// <summary>True or false.</summary>
    Flag,

    /// <summary>A whole number.</summary>
    Count,

    /// <summary>A plain number.</summary>
    Number,

    /// <summary>A length: mm, or text with its unit.</summary>
    Length,

    /// <summary>An angle in degrees, read as rad.</summary>
    Angle,

    /// <summary>A time: text with its unit, read as exact seconds.</summary>
    Time,

    /// <summary>A date, with or without a time of day.</summary>
    Date,

    /// <summary>An angle in degrees, kept exactly as written.</summary>
    ExactAngle,

    /// <summary>A table of its own.</summary>
    Table,
}

/// <summary>How many values of its kind a key takes.</summary>
internal enum KeyShape
{
    /// <summary>One.</summary>
    One,

    /// <summary>One, or a list of one or more.</summary>
    OneOrMore,

    /// <summary>A list of exactly two.</summary>
    Pair,

    /// <summary>One, or a list of exactly two; read as a list.</summary>
    OneOrPair,

    /// <summary>A list of one or more.</summary>
    List,
}

/// <summary>The declaration of one key: reading, checking, suggestions and the reference page all come from it.</summary>
/// <param name="Name">As it is written.</param>
/// <param name="Kind">What it takes.</param>
/// <param name="Meaning">One line for the reference page.</param>
internal sealed record Key(string Name, KeyKind Kind, string Meaning)
{
    public KeyShape Shape { get; init; }

    public bool IsRequired { get; init; }

    /// <summary>Least value, in the unit it is written in.</summary>
    public double Least { get; init; } = double.NegativeInfinity;

    /// <summary>Greatest value, in the unit it is written in.</summary>
    public double Most { get; init; } = double.PositiveInfinity;

    /// <summary>True where the least value itself is too small.</summary>
    public bool IsAbove { get; init; }

    /// <summary>The words of a choice.</summary>
    public ImmutableArray<string> Choices { get; init; } = [];

    /// <summary>The keys of a table.</summary>
    public KeyTable? Of { get; init; }

    public Key Required() => this with { IsRequired = true };

    public Key From(double least, double most) => this with { Least = least, Most = most };

    public Key Above(double least, double most) => this with { Least = least, Most = most, IsAbove = true };

    /// <summary>What may be written, in words and in full.</summary>
    public string Allowed => Shaped(AllowedOne);

    /// <summary>What one value may be, in words and in full.</summary>
    public string AllowedOne => Writing(Kind) is { } writing ? $"{BriefOne}: {writing}" : BriefOne;

    /// <summary>What may be written, for a page that explains elsewhere how the kinds are written.</summary>
    public string Brief => Shaped(BriefOne);

    private string BriefOne => Kind switch
    {
        KeyKind.Text => "text",
        KeyKind.Name => "a name",
        KeyKind.LayerName => "a layer name",
        KeyKind.Choice => "one of " + string.Join(", ", Choices.Select(c => $"\"{c}\"")),
        KeyKind.Flag => "true or false",
        KeyKind.Count => $"a whole number{Range("")}",
        KeyKind.Number => $"a number{Range("")}",
        KeyKind.Length => $"a length{Range(" mm")}",
        KeyKind.Angle => $"an angle{Range(" degrees")}",
        KeyKind.Time => "a time over 0 and up to 1000000 d",
        KeyKind.Date => "a date",
        KeyKind.ExactAngle => $"an angle{Range(" degrees")}",
        _ => $"a table: the header [{Of!.Path}], or keys in braces",
    };

    /// <summary>How a kind of value is written; null where that goes without saying.</summary>
    public static string? Writing(KeyKind kind) => kind switch
    {
        KeyKind.Text => "1 to 500 printable ASCII characters in quotes",
        KeyKind.Name => NameRules.Allowed,
        KeyKind.LayerName => NameRules.AllowedLayer,
        KeyKind.Length => "a number of mm, or text with its unit (mm, in, thou) such as \"1/4 in\"",
        KeyKind.Time => "text with its unit (s, min, h, d) such as \"24 h\" or \"1/2 h\"",
        KeyKind.Date => $"{Dates.Allowed}, without quotes",
        _ => null,
    };

    private string Shaped(string one) => Shape switch
    {
        KeyShape.One => one,
        KeyShape.OneOrMore => $"{one}, or a list of them",
        KeyShape.Pair => $"a list of two, each {one}",
        KeyShape.OneOrPair => $"{one}, or a list of two",
        _ when Kind == KeyKind.Table => $"one table or more under the header [[{Of!.Path}]], or a list of tables in braces",
        _ => $"a list of one or more, each {one}",
    };

    private string Range(string unit)
    {
        if (double.IsInfinity(Least) || double.IsInfinity(Most))
        {
            return "";
        }

        var (least, most) = (Written(Least), Written(Most));
        return IsAbove ? $" over {least} and up to {most}{unit}" : $" from {least} to {most}{unit}";
    }

    /// <summary>A number as a person writes it.</summary>
    public static string Written(double value) => value.ToString(CultureInfo.InvariantCulture);
}

/// <summary>The declaration of one table.</summary>
/// <param name="Path">Its full key; empty for the file itself.</param>
/// <param name="Meaning">What it describes.</param>
/// <param name="Keys">Its keys, in the order of the reference page.</param>
internal sealed record KeyTable(string Path, string Meaning, ImmutableArray<Key> Keys)
{
    public Key? Find(string name) => Keys.FirstOrDefault(k => k.Name == name);

    public string Full(string key) => Path.Length == 0 ? key : $"{Path}.{key}";
}
