using System.Collections.Immutable;
using System.CommandLine;
using System.CommandLine.Parsing;
using GearBlanks.Cli.Arguments;
using GearBlanks.Files.Keys;
using GearBlanks.Mechanisms;
using GearBlanks.Verbs;

namespace GearBlanks.Cli.Commands;

/// <summary>What is wrong with a command line, as problems.</summary>
internal sealed class ParseProblems
{
    private readonly ParseResult _parsed;
    private readonly Command _command;
    private readonly ImmutableArray<Option> _options;

    private ParseProblems(ParseResult parsed)
    {
        _parsed = parsed;
        _command = parsed.CommandResult.Command;
        _options = [.. OptionsOf(parsed.CommandResult)];
    }

    public static ImmutableArray<Problem> Of(ParseResult parsed) => new ParseProblems(parsed).Find();

    // A misspelt name makes the words behind it look wrong too: only the first cause is told.
    private ImmutableArray<Problem> Find()
    {
        ImmutableArray<Problem>[] causes =
        [
            [.. UnknownNames()],
            [.. ForgottenValues()],
            [.. WrongWords().Concat(WordsTooMany()).Concat(MissingNames())],
            [.. _parsed.Errors.Select(error => new Problem(CommandLine.Place, "", null, error.Message.TrimEnd('.')))],
        ];
        return causes.First(cause => cause.Length > 0);
    }

    private IEnumerable<Problem> UnknownNames()
    {
        IEnumerable<string> words = _parsed.UnmatchedTokens.Concat(Arguments().SelectMany(argument => argument.Tokens).Select(token => token.Value));
        foreach (string word in words.Where(OptionLike.Is))
        {
            yield return new Problem(
                CommandLine.Place, "", word, $"There is no such option of {NameOf(_command)}", string.Join(", ", _options.Select(option => option.Name)),
                Nearest.To(word, _options.Select(option => option.Name)));
        }

        if (_command is RootCommand)
        {
            string[] verbs = [.. _command.Subcommands.Select(verb => verb.Name)];
            string? word = _parsed.UnmatchedTokens.FirstOrDefault(word => !OptionLike.Is(word));
            yield return new Problem(
                CommandLine.Place, "", word, word is null ? "No verb is given" : "There is no such verb", string.Join(", ", verbs),
                word is null ? null : Nearest.To(word, verbs));
        }
    }

    private IEnumerable<Problem> ForgottenValues() =>
        from result in Results()
        where result.Option.Arity.MinimumNumberOfValues > 0
        let words = result.Tokens.Select(token => token.Value).ToArray()
        where words.Length == 0 || words.Any(OptionLike.IsLong)
        select new Problem(CommandLine.Place, result.Option.Name, null, "Its value is missing", ValuesOf(result.Option));

    private IEnumerable<Problem> WrongWords()
    {
        foreach (OptionResult result in Results())
        {
            if (result.Option is not IReadsWords reader)
            {
                continue;
            }

            string[] words = [.. result.Tokens.Select(token => token.Value)];
            if (words.Length != reader.Count)
            {
                yield return new Problem(
                    CommandLine.Place, result.Option.Name, string.Join(' ', words), words.Length < reader.Count ? "A value is missing" : "There are too many values",
                    ValuesOf(result.Option));
            }

            foreach (string word in words.Distinct())
            {
                if (reader.Explain(word) is { } complaint)
                {
                    yield return new Problem(CommandLine.Place, result.Option.Name, word, complaint.Message, complaint.Allowed, complaint.Nearest);
                }
            }
        }
    }

    private IEnumerable<Problem> WordsTooMany() => _parsed.UnmatchedTokens
        .Where(word => !OptionLike.Is(word))
        .Select(word => OptionBefore(word) is { } option
            ? new Problem(CommandLine.Place, option.Name, word, "This is one value too many", ValuesOf(option))
            : new Problem(CommandLine.Place, "", word, "This is one word too many", $"see gearblanks {_command.Name} --help"));

    private IEnumerable<Problem> MissingNames() => Arguments()
        .Where(argument => argument.Tokens.Count == 0 && argument.Argument.Arity.MinimumNumberOfValues > 0)
        .Select(argument => new Problem(CommandLine.Place, argument.Argument.Name, null, "It is missing", Lowered(argument.Argument.Description)))
        .Concat(_options
            .Where(option => option.Required && !Results().Any(result => result.Option == option))
            .Select(option => new Problem(CommandLine.Place, option.Name, null, "It is missing", $"{option.Name} {option.HelpName}")));

    private IEnumerable<OptionResult> Results() =>
        _options.Select(_parsed.GetResult).OfType<OptionResult>().Where(result => !result.Implicit);

    private IEnumerable<ArgumentResult> Arguments() => _command.Arguments.Select(_parsed.GetResult).OfType<ArgumentResult>();

    // The option whose values a word seems to be one more of.
    private Option? OptionBefore(string word) => _parsed.Tokens
        .TakeWhile(token => token.Value != word)
        .Select(token => _options.FirstOrDefault(option => option is IReadsWords && option.Name == token.Value))
        .OfType<Option>()
        .LastOrDefault();

    private static string ValuesOf(Option option) => $"{option.Name} {option.HelpName}";

    private static string? Lowered(string? sentence) => sentence is { Length: > 0 } ? char.ToLowerInvariant(sentence[0]) + sentence[1..].TrimEnd('.') : null;

    private static string NameOf(Command command) => command is RootCommand ? "gearblanks" : command.Name;

    private static IEnumerable<Option> OptionsOf(CommandResult command) =>
        command.Command.Options.Concat(command.Parent is CommandResult parent ? OptionsOf(parent).Where(option => option.Recursive) : []);
}
