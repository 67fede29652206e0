namespace GearBlanks.Cli.Arguments;

/// <summary>An option that can say what is wrong with its words.</summary>
internal interface IReadsWords
{
    /// <summary>How many words it takes.</summary>
    int Count { get; }

    /// <summary>What is wrong with one word; null where nothing is.</summary>
    Complaint? Explain(string word);
}
