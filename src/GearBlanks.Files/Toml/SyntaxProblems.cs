using System.Text.RegularExpressions;
using GearBlanks.Mechanisms;
using Tomlyn.Syntax;

namespace GearBlanks.Files.Toml;

/// <summary>Says in plain words what the parser found, one problem a line: the later ones in a line follow from the first.</summary>
internal static partial class SyntaxProblems
{
    private const int Most = 20;
    private const string Unknown = "This is not TOML";

    // What the parser's text contains -> what it means to somebody who writes a job.
    private static readonly (string Contains, string Meaning)[] Meanings =
    [
        ("Unable to parse integer", "This whole number is too large to read"),
        ("Unable to parse", "This value cannot be read"),
        ("while expecting a value", "A value is missing after the ="),
        ("for a value", "This is no value: text stands in quotes, numbers have a point and no comma"),
        ("Expecting `=`", "A key needs = and a value after it"),
        ("newline in a string", "A text in quotes is not closed on its line"),
        ("End-Of-File", "A text in quotes is not closed"),
        ("escape", "A backslash in a text in double quotes starts an escape: write \\\\ or use single quotes"),
        ("while parsing inline table", "A table in braces is broken here or just before: a comma between two keys, quotes around a text, or the closing } is missing"),
        ("closing `]`", "A list is not closed with ], or a comma is missing"),
        ("closing `}`", "A table in braces is not closed with }, or a comma is missing"),
        ("Missing a `,`", "A comma is missing between two items, or there is one too many"),
        ("closebracket", "A header is not closed with its brackets"),
        ("expecting token `newline`", "Something follows that does not belong to this line: one key a line"),
    ];

    public static void Tell(DiagnosticsBag diagnostics, string file, string text, ProblemList problems)
    {
        var lines = text.Split('\n');
        var firsts = diagnostics
            .Where(d => d.Kind == DiagnosticMessageKind.Error)
            .GroupBy(d => d.Span.Start.Line)
            .OrderBy(g => g.Key)
            .Select(g => g.MinBy(d => d.Span.Start.Column)!);
        // After the first one, a complaint without a meaning of its own is about a sound line that the parser lost its way in.
        var told = firsts.Where((d, i) => i == 0 || MeaningOf(d.Message) != Unknown).Take(Most);
        foreach (var problem in told)
        {
            // The parser may stop in the line after the last one.
            var (row, column) = (Math.Clamp(problem.Span.Start.Line, 0, lines.Length - 1), problem.Span.Start.Column);
            var line = lines[row].TrimEnd();
            var meaning = FollowsDecimalComma(line, column) ? "A decimal comma is not read: write a point" : MeaningOf(problem.Message);
            problems.Add(
                new Place(file, row + 1, column + 1), KeyOf(line), ValueOf(line),
                $"{meaning} (TOML: {ProblemList.Shown(problem.Message)})");
        }
    }

    /// <summary>Whether the parser stopped at, or just behind, a number such as 30,5.</summary>
    public static bool FollowsDecimalComma(string line, int column) =>
        DecimalComma().Matches(line).Any(number => column >= number.Index && column <= number.Index + number.Length);

    public static string MeaningOf(string message)
    {
        foreach (var (contains, meaning) in Meanings)
        {
            if (message.Contains(contains, StringComparison.Ordinal))
            {
                return meaning;
            }
        }

        return Unknown;
    }

    private static string KeyOf(string line)
    {
        var equals = line.IndexOf('=', StringComparison.Ordinal);
        var key = equals < 0 ? "" : line[..equals].Trim();
        return key.All(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_' or '.') ? key : "";
    }

    // What stands behind the key; the whole line where there is none.
    private static string? ValueOf(string line)
    {
        var value = (KeyOf(line).Length == 0 ? line : line[(line.IndexOf('=', StringComparison.Ordinal) + 1)..]).Trim();
        return value.Length == 0 ? null : value;
    }

    [GeneratedRegex(@"(?<==\s*[+-]?\d+),\d+(?=\s*(,|\}|#|$))")]
    private static partial Regex DecimalComma();
}
