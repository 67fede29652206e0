using System.CommandLine;
using System.CommandLine.Parsing;
using GearBlanks.Files.Keys;

namespace GearBlanks.Cli.Commands;

/// <summary>Options whose values are numbers, read the same in every culture, each complaint naming the option and what is allowed.</summary>
internal static class NumberOption
{
    /// <summary>A positive length: a number of mm, or a text with its unit such as "1/4 in".</summary>
    public static Option<double?> Length(string name, string unit, string description) =>
        Make(name, unit, description, text => Positive(LengthOf(text)));

    /// <summary>A number.</summary>
    public static Option<double?> Number(string name, string unit, string description, bool positive = false) =>
        Make(name, unit, description, text => positive ? Positive(NumberOf(text)) : NumberOf(text));

    /// <summary>Several lengths, 0 or more.</summary>
    public static Option<double[]?> Lengths(string name, string units, string description) =>
        MakeMany(name, units, description, text => NotNegative(LengthOf(text)));

    /// <summary>Several numbers.</summary>
    public static Option<double[]?> Numbers(string name, string units, string description) => MakeMany(name, units, description, NumberOf);

    /// <summary>A length, 0 or more.</summary>
    public static Option<double?> LengthOrZero(string name, string unit, string description) =>
        Make(name, unit, description, text => NotNegative(LengthOf(text)));

    private static Option<double?> Make(string name, string unit, string description, Func<string, Reading> read) => new(name)
    {
        HelpName = unit,
        Description = description,
        CustomParser = result => Read(name, result, 0, read),
    };

    private static Option<double[]?> MakeMany(string name, string units, string description, Func<string, Reading> read) => new(name)
    {
        HelpName = units,
        Description = description,
        Arity = new ArgumentArity(2, 2),
        AllowMultipleArgumentsPerToken = true,
        CustomParser = result => [.. Enumerable.Range(0, result.Tokens.Count).Select(i => Read(name, result, i, read) ?? 0)],
    };

    private static double? Read(string name, ArgumentResult result, int index, Func<string, Reading> read)
    {
        string text = result.Tokens[index].Value;
        Reading reading = read(text);
        if (reading.Complaint is { } complaint)
        {
            result.AddError($"{name}: \"{text}\" {complaint}");
        }

        return reading.Value;
    }

    private static Reading LengthOf(string text)
    {
        Reading plain = NumberOf(text);
        if (plain.Complaint is null)
        {
            return plain;
        }

        (double? value, string? complaint) = Quantity.Length(text);
        return value is { } length ? new(length, null) : new(null, char.IsAsciiLetter(text.LastOrDefault()) ? $"is not a length: {complaint}" : plain.Complaint);
    }

    private static Reading NumberOf(string text) =>
        Files.Numbers.TryParse(text, out double value)
            ? double.IsFinite(value) ? new(value, null) : new(null, "is not a finite number")
            : new(null, text.Contains(',', StringComparison.Ordinal) ? "is not a number: write a decimal point, not a comma" : "is not a number");

    private static Reading Positive(Reading reading) =>
        reading.Value is <= 0 ? new(null, "is not allowed: it must be greater than 0") : reading;

    private static Reading NotNegative(Reading reading) =>
        reading.Value is < 0 ? new(null, "is not allowed: it must be 0 or more") : reading;

    private readonly record struct Reading(double? Value, string? Complaint);
}
