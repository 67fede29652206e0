using GearBlanks.Findings;

namespace GearBlanks.Cli.Output;

/// <summary>Findings for people: the worst first, each with what to do.</summary>
internal static class FindingText
{
    /// <summary>The verdict in one line, then every finding that is not ok.</summary>
    public static void WriteSummary(Terminal console, string title, IReadOnlyCollection<Finding> findings)
    {
        Level verdict = findings.Select(finding => finding.Level).DefaultIfEmpty(Level.Ok).Max();
        console.Say($"{title}: {LevelWords.Of(verdict)} ({Count(findings, Level.Fails)}, {Count(findings, Level.Tight)}, {Count(findings, Level.Ok)})");
        foreach (Finding finding in findings.Where(finding => finding.Level != Level.Ok))
        {
            console.Say($"  {LevelWords.Of(finding.Level),-5}  {finding.Place}: {finding.Name}");
            console.Say($"         {finding.Message}");
            if (finding.Advice is { } advice)
            {
                console.Say($"         {advice}");
            }
        }
    }

    /// <summary>A verdict for a table: a sign beside the word, so that it needs no colour.</summary>
    public static string Marked(Level level) => level switch
    {
        Level.Ok => "ok",
        Level.Tight => "[bold]! tight[/]",
        _ => "[bold]X fails[/]",
    };

    private static string Count(IReadOnlyCollection<Finding> findings, Level level) =>
        $"{findings.Count(finding => finding.Level == level)} {LevelWords.Of(level)}";
}
