using System.Globalization;
using System.Text.RegularExpressions;

namespace GearBlanks.Tests;

/// <summary>Reads advice as a person would, so that tests can follow it.</summary>
internal static class Advice
{
    /// <summary>The number that the words around it ask for; <c>#</c> stands for it.</summary>
    public static double Number(string? advice, string words)
    {
        string pattern = Regex.Escape(words).Replace("\\#", "([-+]?[0-9.]*[0-9])", StringComparison.Ordinal);
        Match match = Regex.Match(advice ?? "", pattern);
        Assert.True(match.Success, $"\"{advice}\" does not say \"{words}\".");
        return double.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture);
    }

    /// <summary>All numbers of a sentence.</summary>
    public static double[] NumbersIn(string advice) =>
        [.. Regex.Matches(advice, "[0-9.]*[0-9]").Select(match => double.Parse(match.Value, CultureInfo.InvariantCulture))];
}
