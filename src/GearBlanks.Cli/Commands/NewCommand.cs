using System.CommandLine;
using GearBlanks.Cli.Arguments;
using GearBlanks.Cli.Output;
using GearBlanks.Verbs;
using GearBlanks.Verbs.Json;

namespace GearBlanks.Cli.Commands;

internal static class NewCommand
{
    private const string About =
        """
        Write a first job file, commented, to be changed into your own.

        Example:
          gearblanks new dial.toml
        """;

    public static Command Make(Terminal console)
    {
        var file = new FileArgument("FILE", "The job file to write; it must not exist yet.");
        var command = new Command("new", About) { file };
        command.SetAction(parsed => console.Show(
            NewVerb.Run(parsed.GetValue(file)!), parsed.GetValue(SharedOptions.Json),
            _ => FileJson.OfTemplate(parsed.GetValue(file)!),
            _ => console.Say($"Wrote {parsed.GetValue(file)}. Next: gearblanks check {parsed.GetValue(file)}"),
            _ => ExitCode.Done));
        return command;
    }
}
