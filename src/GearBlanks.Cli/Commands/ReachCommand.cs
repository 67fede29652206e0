using System.CommandLine;
using GearBlanks.Cli.Arguments;
using GearBlanks.Cli.Output;
using GearBlanks.Verbs;
using GearBlanks.Verbs.Json;

namespace GearBlanks.Cli.Commands;

internal static class ReachCommand
{
    private const string About =
        """
        Tell how far a beam or end mill reaches into the gaps of a job's gears, or of one gear: what stays uncut, whether the mates still run free,
        and the largest tools that would do.

        Examples:
          gearblanks reach dial.toml --tool 0.8
          gearblanks reach dial.toml --machine desktop-mill --json
          gearblanks reach --module 1 --teeth 20 --tool 1
          gearblanks reach dial.toml --tool 1 --out dial-reach
        """;

    public static Command Make(Terminal console)
    {
        var job = new FileArgument("JOB", "The job file; or leave it out and describe one gear.") { Arity = ArgumentArity.ZeroOrOne };
        var gear = new GearOptions();
        Option<double?> tool = new OneWord<double?>(
            "--tool", "D", "Diameter of the beam or mill, mm, up to 100. [default: the machine's mill, else its kerf]", WordReaders.Length(new(0, 100, "mm", IsAbove: true)));
        Option<string?> machine = new OneWord<string?>("--machine", "NAME", "Machine profile to cut on, instead of the job's.", word => new(word));
        Option<string?> folder = new OneWord<string?>(
            "--out", "DIR", "A folder to write: of each gear a picture with one gap magnified, and where anything stays uncut its contours as DXF, for a second tool.", word => new(word));
        var command = new Command("reach", About) { job, tool, machine, folder, SharedOptions.Tolerance, SharedOptions.Pieces, SharedOptions.DxfVersion };
        gear.AddTo(command);
        command.SetAction(parsed => console.Show(
            ReachVerb.Run(new ReachRequest(
                parsed.GetValue(job), gear.AnyIn(parsed) ? gear.Request(parsed, "") : null, parsed.GetValue(tool), parsed.GetValue(machine),
                parsed.GetValue(folder), SharedOptions.Output(parsed))),
            parsed.GetValue(SharedOptions.Json),
            ReachJson.Of, result => ReachText.Write(console, result), result => ExitCode.Of(result.Verdict)));
        return command;
    }
}
