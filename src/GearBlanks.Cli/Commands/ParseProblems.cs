using System.Collections.Immutable;
using System.CommandLine;
using System.CommandLine.Parsing;
using GearBlanks.Files.Keys;
using GearBlanks.Mechanisms;
using GearBlanks.Verbs;

namespace GearBlanks.Cli.Commands;

/// <summary>What the command line's own parser complains of, as problems.</summary>
internal static class ParseProblems
{
    public static ImmutableArray<Problem> Of(ParseResult parsed)
    {
        string[] known = [.. Options(parsed.CommandResult).Select(option => option.Name)];
        // Behind an unknown verb nothing can be judged.
        bool withoutVerb = parsed.CommandResult.Command is RootCommand && parsed.UnmatchedTokens is [not ['-', ..], ..];
        IEnumerable<Problem> unknown = parsed.UnmatchedTokens.Take(withoutVerb ? 1 : int.MaxValue).Select(token => new Problem(
            CommandLine.Place, "", token,
            token.StartsWith('-') ? "There is no such option" : parsed.CommandResult.Command is RootCommand ? "There is no such verb" : "There is one argument too many",
            null, Nearest.To(token, token.StartsWith('-') ? known : parsed.CommandResult.Command.Subcommands.Select(verb => verb.Name))));
        IEnumerable<Problem> others = parsed.Errors
            .Where(error => !withoutVerb && !parsed.UnmatchedTokens.Any(token => error.Message.Contains($"'{token}'", StringComparison.Ordinal)))
            .Select(error => new Problem(CommandLine.Place, "", null, Plain(error, parsed)));
        return [.. unknown.Concat(others)];
    }

    // The parser's own words do not say what to do.
    private static string Plain(ParseError error, ParseResult parsed) => error.SymbolResult switch
    {
        OptionResult { Option: { Arity.MinimumNumberOfValues: > 0, HelpName: { } values } option } result
            when result.Tokens.Count < option.Arity.MinimumNumberOfValues && !error.Message.StartsWith(option.Name, StringComparison.Ordinal)
            => result.IdentifierToken is null ? $"{option.Name} is missing: it takes {values}" : $"{option.Name} takes {values}{(option.Arity.MinimumNumberOfValues > 1 ? ", a space between them" : "")}",
        CommandResult { Command: RootCommand root } when root.Subcommands.Any() && parsed.UnmatchedTokens.Count == 0
            => $"A verb is missing: {string.Join(", ", root.Subcommands.Select(verb => verb.Name))}; gearblanks --help explains them",
        ArgumentResult { Tokens.Count: 0, Argument: var argument }
            => $"{argument.Name} is missing: gearblanks {parsed.CommandResult.Command.Name} {argument.Name}",
        _ => error.Message.TrimEnd('.'),
    };

    private static IEnumerable<Option> Options(CommandResult command) =>
        command.Command.Options.Concat(command.Parent is CommandResult parent ? Options(parent) : []);
}
