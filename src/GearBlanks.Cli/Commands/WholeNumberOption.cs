using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;

namespace GearBlanks.Cli.Commands;

/// <summary>Options whose values are whole numbers.</summary>
internal static class WholeNumberOption
{
    public static Option<int> One(string name, string unit, string description) => new(name)
    {
        HelpName = unit,
        Description = description,
        Required = true,
        CustomParser = result => Read(name, result, 0),
    };

    public static Option<int[]> Two(string name, string units, string description) => new(name)
    {
        HelpName = units,
        Description = description,
        Required = true,
        Arity = new ArgumentArity(2, 2),
        AllowMultipleArgumentsPerToken = true,
        CustomParser = result => [.. Enumerable.Range(0, result.Tokens.Count).Select(i => Read(name, result, i))],
    };

    private static int Read(string name, ArgumentResult result, int index)
    {
        string text = result.Tokens[index].Value;
        if (!int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out int value))
        {
            result.AddError($"{name}: \"{text}\" is not a whole number");
        }

        return value;
    }
}
