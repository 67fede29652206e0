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
        IEnumerable<Problem> unknown = parsed.UnmatchedTokens.Select(token => new Problem(
            CommandLine.Place, "", token,
            token.StartsWith('-') ? "There is no such option" : parsed.CommandResult.Command is RootCommand ? "There is no such verb" : "There is one argument too many",
            null, Nearest.To(token, token.StartsWith('-') ? known : parsed.CommandResult.Command.Subcommands.Select(verb => verb.Name))));
        IEnumerable<Problem> others = parsed.Errors
            .Where(error => !parsed.UnmatchedTokens.Any(token => error.Message.Contains($"'{token}'", StringComparison.Ordinal)))
            .Select(error => new Problem(CommandLine.Place, "", null, error.Message.TrimEnd('.')));
        return [.. unknown.Concat(others)];
    }

    private static IEnumerable<Option> Options(CommandResult command) =>
        command.Command.Options.Concat(command.Parent is CommandResult parent ? Options(parent) : []);
}
