using GearBlanks.Mechanisms;
using Tomlyn.Syntax;

namespace GearBlanks.Files.Toml;

/// <summary>Says in plain words what the parser found, one problem a line: the later ones in a line follow from the first.</summary>
internal static class SyntaxProblems
{
    private const int Most = 20;

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
        ("closing `]`", "A list is not closed with ], or a comma is missing"),
        ("closing `}`", "A table in braces is not closed with }, or a comma is missing"),
        ("Missing a `,`", "A comma is missing between two items, or there is one too many"),
        ("closebracket", "A header is not closed with its brackets"),
        ("expecting token `newline`", "Something follows that does not belong to this line: one key a line"),
    ];

    public static void Tell(DiagnosticsBag diagnostics, string file, string text, ProblemList problems)
    {
        var lines = text.Split('\n');
        var told = diagnostics
            .Where(d => d.Kind == DiagnosticMessageKind.Error)
            .GroupBy(d => d.Span.Start.Line)
            .OrderBy(g => g.Key)
            .Take(Most);
        foreach (var group in told)
        {
            var first = group.MinBy(d => d.Span.Start.Column)!;
            var line = group.Key >= 0 && group.Key < lines.Length ? lines[group.Key].Trim() : "";
            problems.Add(
                new Place(file, group.Key + 1, first.Span.Start.Column + 1), KeyOf(line), line.Length == 0 ? null : line,
                $"{MeaningOf(first.Message)} (TOML: {ProblemList.Shown(first.Message)})");
        }
    }

    public static string MeaningOf(string message)
    {
        foreach (var (contains, meaning) in Meanings)
        {
            if (message.Contains(contains, StringComparison.Ordinal))
            {
                return meaning;
            }
        }

        return "This is not TOML";
    }

    private static string KeyOf(string line)
    {
        var equals = line.IndexOf('=', StringComparison.Ordinal);
        var key = equals < 0 ? "" : line[..equals].Trim();
        return key.All(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_' or '.') ? key : "";
    }
}
