using System.CommandLine;
using GearBlanks.Cli.Arguments;
using GearBlanks.Cli.Output;
using GearBlanks.Trains.Closing;
using GearBlanks.Verbs;
using GearBlanks.Verbs.Json;

namespace GearBlanks.Cli.Commands;

internal static class ShiftCommand
{
    private const string About =
        """
        Find the profile shifts with which every mesh of a job has its wanted backlash at the distance the frame has, within all limits.
        Where there are none: what stands in the way, and what would work. Thinning stays as the job gives it.

        Examples:
          gearblanks shift dial.toml
          gearblanks shift dial.toml --rule equal-sliding --hold "day wheel"
          gearblanks shift dial.toml --write
        """;

    public static Command Make(Terminal console)
    {
        var job = new FileArgument("JOB", "The job file.");
        OneWord<ShiftRule> rule = SharedOptions.Choice(
            "--rule", "How sums of profile shifts are split: equal lands at the tips, equal specific sliding, all on the wheel, or all on the pinion.",
            ("equal-land", ShiftRule.EqualLand), ("equal-sliding", ShiftRule.EqualSliding), ("wheel", ShiftRule.Wheel), ("pinion", ShiftRule.Pinion));
        var hold = new Option<string[]>("--hold") { Description = "A gear that keeps its profile shift; may be given more than once.", HelpName = "GEAR", Arity = ArgumentArity.OneOrMore };
        var shorten = new Option<bool>("--shorten-tips") { Description = "Shorten tips that reach too deep into the mate's roots.", Arity = ArgumentArity.Zero };
        var module = new Option<bool>("--change-module") { Description = "Where no profile shifts suit gears in mesh, give all of them the nearest module that works, in steps of 0.005 mm.", Arity = ArgumentArity.Zero };
        var write = new Option<bool>("--write") { Description = "Put the numbers into the job file; comments and layout stay.", Arity = ArgumentArity.Zero };
        var command = new Command("shift", About) { job, rule, hold, shorten, module, write };
        command.SetAction(parsed => console.Show(
            ShiftVerb.Run(new ShiftRequest(
                parsed.GetValue(job)!, rule.In(parsed), [.. parsed.GetValue(hold) ?? []], parsed.GetValue(shorten), parsed.GetValue(write))
            {
                ChangesModule = parsed.GetValue(module),
            }),
            parsed.GetValue(SharedOptions.Json),
            ShiftJson.Of, result => ShiftText.Write(console, result), result => ExitCode.Of(result.Verdict)));
        return command;
    }
}
