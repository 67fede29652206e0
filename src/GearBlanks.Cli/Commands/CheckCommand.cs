using System.CommandLine;
using GearBlanks.Cli.Arguments;
using GearBlanks.Cli.Output;
using GearBlanks.Trains;
using GearBlanks.Verbs;
using GearBlanks.Verbs.Json;

namespace GearBlanks.Cli.Commands;

internal static class CheckCommand
{
    private const string About =
        """
        Judge every gear, mesh, sandwich and hand of a job: the worst finding first, with what to do.

        Examples:
          gearblanks check dial.toml
          gearblanks check dial.toml --heights
          gearblanks check dial.toml --section "minute wheel"
          gearblanks check dial.toml --json
          gearblanks check dial.toml --at 2027-03-21T12:00:00Z
        """;

    public static Command Make(Terminal console)
    {
        var job = new FileArgument("JOB", "The job file.");
        Option<Moment?> at = new OneWord<Moment?>("--at", "DATE", "Tell where each hand stands at a date, from the job's setting; a date without an offset is UTC.", WordReaders.Date);
        var heights = new Option<bool>("--heights") { Description = "Print what stands at which height, and which tooth faces which gap.", Arity = ArgumentArity.Zero };
        var section = new Option<string[]>("--section")
        {
            Description = "Print everything about a mesh, sandwich, gear or hand; may be given more than once.",
            HelpName = "NAME",
            Arity = ArgumentArity.OneOrMore,
        };
        var command = new Command("check", About) { job, at, heights, section };
        command.SetAction(parsed => console.Show(
            CheckVerb.Run(parsed.GetValue(job)!, parsed.GetValue(at), [.. parsed.GetValue(section) ?? []]), parsed.GetValue(SharedOptions.Json),
            CheckJson.Of, report => CheckText.Write(console, report, parsed.GetValue(heights), parsed.GetValue(section) ?? []), report => ExitCode.Of(report.Verdict)));
        return command;
    }
}
