using System.CommandLine;
using GearBlanks.Cli.Arguments;
using GearBlanks.Cli.Output;
using GearBlanks.Verbs;
using GearBlanks.Verbs.Json;

namespace GearBlanks.Cli.Commands;

internal static class RollCommand
{
    private const string About =
        """
        Roll two gears against each other before they are cut: how evenly they turn, their backlash all the way round, and what is in the way.

        Examples:
          gearblanks roll --job dial.toml --mesh tide
        """;

    private static readonly NumberRange OffCentre = new(0, 10, "mm");

    public static Command Make(Terminal console)
    {
        Option<string?> job = new OneWord<string?>("--job", "JOB", "A job file: one of its meshes is rolled.", word => new(word));
        Option<string?> mesh = new OneWord<string?>("--mesh", "NAME", "The mesh of the job. [default: the only one]", word => new(word));
        var twice = new Option<bool>("--double") { Description = "Also roll without play: how the distance gives way.", Arity = ArgumentArity.Zero };
        var hunting = new Option<bool>("--hunting") { Description = "Roll until the same two teeth meet again. [default: until each gear has turned once]", Arity = ArgumentArity.Zero };
        Option<(double? First, double? Second)?> eccentricity = new TwoWords<double?>(
            "--eccentricity", "EA EB", "How far each gear's teeth stand off the centre of their bore, mm, towards +X of the drawing. [default: 0 0]", WordReaders.Length(OffCentre));
        var command = new Command("roll", About) { job, mesh, twice, hunting, eccentricity };
        command.SetAction(parsed => console.Show(
            RollVerb.Run(new RollAsked(
                parsed.GetValue(job), parsed.GetValue(mesh),
                new RollManner(parsed.GetValue(twice), parsed.GetValue(hunting), parsed.GetValue(eccentricity) is ({ } first, { } second) ? (first, second) : default, null, null))),
            parsed.GetValue(SharedOptions.Json),
            RollJson.Of, result => RollText.Write(console, result), result => ExitCode.Of(result.Verdict)));
        return command;
    }
}
