using System.CommandLine;

namespace GearBlanks.Cli.Arguments;

/// <summary>An option that takes one word.</summary>
internal sealed class OneWord<T> : Option<T>, IReadsWords
{
    private readonly Func<string, Reading<T>> _read;

    /// <summary>What holds where the option is not given. Not the parser's own default, which help would show as it is called in the code.</summary>
    public T? Otherwise { get; init; }

    /// <summary>The option's value on a command line.</summary>
    public T? In(ParseResult parsed) => parsed.GetResult(this) is null ? Otherwise : parsed.GetValue(this);

    /// <param name="name">Its name, with dashes.</param>
    /// <param name="wordName">What help calls the word.</param>
    /// <param name="description">What help says.</param>
    /// <param name="read">Reads the word.</param>
    public OneWord(string name, string wordName, string description, Func<string, Reading<T>> read)
        : base(name)
    {
        _read = read;
        HelpName = wordName;
        Description = description;
        Arity = ArgumentArity.ExactlyOne;
        CustomParser = result =>
        {
            string word = result.Tokens[0].Value;
            Reading<T> reading = read(word);
            if (reading.Complaint is not null || OptionLike.IsLong(word))
            {
                // What is wrong is told by ParseProblems, which asks again.
                result.AddError(name);
            }

            return reading.Value;
        };
    }

    public int Count => 1;

    public Complaint? Explain(string word) => _read(word).Complaint;
}
