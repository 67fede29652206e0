using GearBlanks.Mechanisms;
using Tomlyn;
using Tomlyn.Parsing;

namespace GearBlanks.Files.Toml;

/// <summary>From a TOML text to its tree. A syntax error ends the reading: a tree with holes would only breed false problems.</summary>
internal static class TomlSource
{
    // A backslash, U and eight digits.
    private const int LongestEscape = 10;

    /// <summary>The tree, with duplicates told; null where the text is not TOML.</summary>
    public static TomlTable? Read(string text, string file, ProblemList problems)
    {
        // An editor's byte order mark is no part of the text.
        var bare = text.StartsWith('\uFEFF') ? text[1..] : text;

        // The parser fails over an escape that the end of the text cuts off; over one that the end of the line cuts off it complains.
        var plain = bare.AsSpan(Math.Max(0, bare.Length - LongestEscape)).Contains('\\') ? bare + "\n" : bare;
        if (Nesting.TooDeepAt(plain, file) is { } place)
        {
            problems.Add(place, "", null, "Brackets are nested too deep", $"at most {Nesting.MostText} levels");
            return null;
        }

        try
        {
            return ReadPlain(plain, bare, file, problems);
        }
        catch (TomlException tooDeep)
        {
            // The parser's own guard against deep nesting, should a text slip past ours.
            problems.Add(
                new Place(file, tooDeep.Line ?? 0, tooDeep.Column ?? 0), "", null, $"This is not TOML (TOML: {ProblemList.Shown(tooDeep.Message)})");
            return null;
        }
    }

    private static TomlTable? ReadPlain(string text, string written, string file, ProblemList problems)
    {
        // Duplicates are the tree's matter: the parser's own check also refuses good files, where one table of a list has
        // an inner list under headers and the next one has it in brackets.
        var document = SyntaxParser.Parse(text, file, validate: false);
        if (!document.HasErrors)
        {
            return new TomlTree(file, text, problems).Build(document);
        }

        SyntaxProblems.Tell(document.Diagnostics, file, written, problems);
        return null;
    }
}
