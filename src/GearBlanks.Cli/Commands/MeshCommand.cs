using System.CommandLine;
using GearBlanks.Cli.Arguments;
using GearBlanks.Cli.Output;
using GearBlanks.Teeth;
using GearBlanks.Verbs;
using GearBlanks.Verbs.Json;

namespace GearBlanks.Cli.Commands;

internal static class MeshCommand
{
    private const string About =
        """
        Work out one pair: distance to backlash, backlash to distance, contact ratio, clearances.
        Without --distance and --backlash: at the distance where these gears, thinning included, have no backlash.

        Examples:
          gearblanks mesh --module 0.8 --teeth 13 87 --profile-shift 0.3 -0.3 --thinning 0.016 0.016 --distance 40
          gearblanks mesh --module 1 --teeth 20 40 --backlash 0.04
          gearblanks mesh --module 1 --teeth 18 54 --ring --distance 18
        """;

    public static Command Make(Terminal console)
    {
        Option<(int First, int Second)?> teeth = new TwoWords<int>(
            "--teeth", "Z1 Z2", "Tooth counts, 4 to 1000.", WordReaders.WholeNumber(GearRanges.LeastTeeth, GearRanges.MostTeeth))
        { Required = true };
        Option<(double? First, double? Second)?> shift = new TwoWords<double?>(
            "--profile-shift", "X1 X2", "Profile shift coefficients, -1 to 1.5. [default: 0 0]", WordReaders.Number(SharedOptions.Shift));
        Option<(double? First, double? Second)?> thinning = new TwoWords<double?>(
            "--thinning", "S1 S2", "Losses of tooth thickness (arc) on the reference circles, mm. [default: 0 0]", WordReaders.Length(SharedOptions.Thinning));
        Option<(double? First, double? Second)?> tips = new TwoWords<double?>(
            "--tip-diameter", "D1 D2", "Tip diameters, mm. [default: d + 2 (haP + x) m]", WordReaders.Length(SharedOptions.Size));
        OneWord<string> rule = SharedOptions.Choice("--tip-rule", "How tip diameters follow where they are not given.", ("rack", "rack"), ("clearance", "clearance"));
        Option<double?> distance = new OneWord<double?>("--distance", "A", "Centre distance, mm.", WordReaders.Length(SharedOptions.Size));
        Option<double?> backlash = new OneWord<double?>(
            "--backlash", "J", "Circumferential backlash that the distance is worked out for, mm.", WordReaders.Length(SharedOptions.SizeOrNone));
        var ring = new Option<bool>("--ring") { Description = "The second gear is a ring.", Arity = ArgumentArity.Zero };
        Option<double?> fillet = new OneWord<double?>(
            "--root-fillet", "R", "Radius of the round between the ring's flank and root circle, mm. [default: the rack's]", WordReaders.Length(SharedOptions.SizeOrNone));
        var command = new Command("mesh", About)
        {
            SharedOptions.Module, SharedOptions.DiametralPitch, teeth, shift, SharedOptions.PressureAngle, SharedOptions.Rack,
            ring, fillet, distance, backlash, tips, rule, thinning,
        };
        command.SetAction(parsed => console.Show(
            MeshVerb.Run(new MeshRequest(
                SharedOptions.GearNumbers(parsed), parsed.GetValue(teeth)!.Value,
                Both(parsed.GetValue(shift)) ?? default, Both(parsed.GetValue(thinning)) ?? default,
                parsed.GetValue(distance), parsed.GetValue(backlash), parsed.GetValue(ring), parsed.GetValue(fillet), Both(parsed.GetValue(tips)), rule.In(parsed) == "clearance")),
            parsed.GetValue(SharedOptions.Json),
            MeshJson.Of, result => MeshText.Write(console, result), result => ExitCode.Of(result.Verdict)));
        return command;
    }

    private static (double First, double Second)? Both((double? First, double? Second)? values) =>
        values is ({ } first, { } second) ? (first, second) : null;
}
