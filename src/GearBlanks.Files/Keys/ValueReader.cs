using Fractions;
using GearBlanks.Files.Toml;

namespace GearBlanks.Files.Keys;

/// <summary>Reads one value by its key's declaration.</summary>
internal sealed class ValueReader(ProblemList problems, Key key, string full)
{
    private const int LongestText = 500;

    private static readonly Fraction LongestTime = new(86400L * 1000000L);

    public Entry Read(TomlNode node) => new(node.Place, node.Written, Value(node));

    private object? Value(TomlNode node) => key.Kind switch
    {
        KeyKind.Text => Text(node, TextComplaint),
        KeyKind.Name => Text(node, NameRules.Complaint),
        KeyKind.LayerName => Text(node, NameRules.LayerComplaint),
        KeyKind.Choice => Choice(node),
        KeyKind.Flag => node is TomlFlag flag ? flag.Value : Refuse(node, "This is neither true nor false"),
        KeyKind.Count => Count(node),
        KeyKind.Number => node is TomlNumber number ? InRange(node, number.Value) : NotANumber(node),
        KeyKind.Length => Length(node),
        KeyKind.Angle => Angle(node),
        KeyKind.Time => Time(node),
        KeyKind.Date => Date(node),
        KeyKind.ExactAngle => node is TomlNumber angle ? (InRange(node, angle.Value) is double degrees ? Quantities.Exact(node.Written, degrees) : null) : NotANumber(node),
        _ => throw new InvalidOperationException("Tables are read by the key reader."),
    };

    private object? Text(TomlNode node, Func<string, string?> complaint)
    {
        if (node is not TomlText text)
        {
            return Refuse(node, "This is not text in quotes");
        }

        return complaint(text.Value) is { } wrong ? Refuse(node, wrong) : text.Value;
    }

    private static string? TextComplaint(string text) => text switch
    {
        _ when text.Trim().Length == 0 => "The text is empty",
        { Length: > LongestText } => "The text is too long",
        _ when !text.All(c => c is >= ' ' and <= '~') => "The text has characters that not every drawing format can hold",
        _ => null,
    };

    private object? Choice(TomlNode node)
    {
        if (node is TomlText text)
        {
            return key.Choices.Contains(text.Value) ? text.Value : Refuse(node, "This is none of the choices", Nearest.To(text.Value, key.Choices));
        }

        return Refuse(node, "This is not text in quotes");
    }

    private object? Count(TomlNode node)
    {
        if (node is not TomlNumber number)
        {
            return NotANumber(node);
        }

        if (!double.IsInteger(number.Value) || !number.IsWhole)
        {
            var whole = Math.Clamp(Math.Round(number.Value), key.Least, key.Most);
            return Refuse(node, "This is not a whole number", double.IsFinite(whole) ? Key.Written(whole) : null);
        }

        return InRange(node, number.Value) is double value ? (int)value : null;
    }

    private object? Angle(TomlNode node) =>
        node is not TomlNumber number ? NotANumber(node)
        : InRange(node, number.Value) is double degrees ? degrees * Math.PI / 180 : null;

    private object? Length(TomlNode node)
    {
        switch (node)
        {
            case TomlNumber number:
                return InRange(node, number.Value);
            case TomlText text:
                var (value, complaint, nearest) = Quantities.Length(text.Value);
                return value is { } mm ? InRange(node, mm.ToDouble()) : Refuse(node, complaint!, nearest);
            default:
                return Refuse(node, "This is not a length");
        }
    }

    private object? Time(TomlNode node)
    {
        if (node is not TomlText text)
        {
            return Refuse(node, node is TomlNumber ? "A time needs its unit: write it as text" : "This is not a time");
        }

        var (value, complaint, nearest) = Quantities.Time(text.Value);
        return value is not { } seconds ? Refuse(node, complaint!, nearest)
            : seconds.IsPositive && seconds <= LongestTime ? seconds
            : Refuse(node, "This time is out of range");
    }

    private object? Date(TomlNode node)
    {
        if (node is not TomlDate)
        {
            return Refuse(node, node is TomlText text && Dates.Read(text.Value).Value is not null ? "This is text, not a date: leave the quotes out" : "This is not a date");
        }

        var (value, complaint, nearest) = Dates.Read(node.Written);
        return value is { } moment ? moment : Refuse(node, complaint!, nearest);
    }

    private object? InRange(TomlNode node, double value)
    {
        if (!double.IsFinite(value))
        {
            return Refuse(node, "This is not a finite number");
        }

        if (value > key.Most)
        {
            return Refuse(node, "This is too large", Key.Written(key.Most));
        }

        if (value < key.Least || (key.IsAbove && value <= key.Least))
        {
            return Refuse(node, "This is too small", key.IsAbove ? null : Key.Written(key.Least));
        }

        // The zero of "-0.0" would be written as such downstream.
        return value == 0 ? 0.0 : value;
    }

    private object? NotANumber(TomlNode node) => Refuse(
        node, node is TomlText ? "This is text, not a number: leave the quotes out" : "This is not a number");

    private object? Refuse(TomlNode node, string message, string? nearest = null)
    {
        problems.Add(node.Place, full, node.Written, message, key.AllowedOne, nearest);
        return null;
    }
}
