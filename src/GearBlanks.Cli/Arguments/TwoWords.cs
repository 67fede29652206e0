using System.CommandLine;

namespace GearBlanks.Cli.Arguments;

/// <summary>An option that takes two words, one for each gear.</summary>
internal sealed class TwoWords<T> : Option<(T First, T Second)?>, IReadsWords
{
    private readonly Func<string, Reading<T>> _read;

    /// <inheritdoc cref="OneWord{T}"/>
    public TwoWords(string name, string wordNames, string description, Func<string, Reading<T>> read)
        : base(name)
    {
        _read = read;
        HelpName = wordNames;
        Description = description;
        Arity = new ArgumentArity(2, 2);
        AllowMultipleArgumentsPerToken = true;
        CustomParser = result =>
        {
            Reading<T>[] readings = [.. result.Tokens.Select(token => read(token.Value))];
            if (readings.Any(reading => reading.Complaint is not null))
            {
                result.AddError(name);
            }

            return readings is [var first, var second] ? (first.Value!, second.Value!) : null;
        };
    }

    public int Count => 2;

    public Complaint? Explain(string word) => _read(word).Complaint;
}
