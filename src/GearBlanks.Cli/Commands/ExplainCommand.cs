using System.CommandLine;
using GearBlanks.Cli.Output;
using GearBlanks.Findings;
using GearBlanks.Verbs;
using GearBlanks.Verbs.Json;

namespace GearBlanks.Cli.Commands;

internal static class ExplainCommand
{
    private const string About =
        """
        Tell what a finding of `check`, `gear` or `mesh` means, how its figure is worked out, and what to change, in the order in which to try it.

        Example:
          gearblanks explain fillet-clearance
        """;

    public static Command Make(Terminal console)
    {
        var finding = new Argument<string>("FINDING") { Description = "The finding's name." };
        var command = new Command("explain", About) { finding };
        command.SetAction(parsed => console.Show(
            ExplainVerb.Run(parsed.GetValue(finding)!), parsed.GetValue(SharedOptions.Json), ExplainJson.Of, one => Write(console, one), _ => ExitCode.Done));
        return command;
    }

    private static void Write(Terminal console, Explanation one)
    {
        console.Say(one.Name);
        console.Say($"  {one.Meaning}");
        console.Say($"  Figure: {one.Formula}.");
        console.Say($"  Source: {one.Source}.");
        console.Say("  What to change:");
        foreach ((string remedy, int i) in one.Remedies.Select((remedy, i) => (remedy, i + 1)))
        {
            console.Say(FormattableString.Invariant($"    {i}. {remedy}"));
        }
    }
}
