using System.CommandLine;
using GearBlanks.Cli.Arguments;
using GearBlanks.Cli.Output;
using GearBlanks.Teeth;
using GearBlanks.Verbs;
using GearBlanks.Verbs.Json;

namespace GearBlanks.Cli.Commands;

internal static class GearCommand
{
    private const string About =
        """
        Draw one gear: centred on the origin, a tooth's centre line on +X.

        Examples:
          gearblanks gear --module 0.8 --teeth 24 --profile-shift 0.3 --thinning 0.016 --bore 4 --out wheel.dxf
          gearblanks gear --diametral-pitch 32 --teeth 40 --rack ansi-b6-7 --bore "1/4 in" --out wheel.svg
        """;

    public static Command Make(Terminal console)
    {
        Option<int> teeth = new OneWord<int>("--teeth", "Z", "Tooth count, 4 to 1000.", WordReaders.WholeNumber(GearRanges.LeastTeeth, GearRanges.MostTeeth)) { Required = true };
        Option<double?> shift = new OneWord<double?>("--profile-shift", "X", "Profile shift coefficient, -1 to 1.5. [default: 0]", WordReaders.Number(SharedOptions.Shift));
        Option<double?> tip = new OneWord<double?>("--tip-diameter", "D", "Tip diameter, mm. [default: the rack's]", WordReaders.Length(SharedOptions.Size));
        Option<double?> thinning = new OneWord<double?>(
            "--thinning", "MM", "Loss of tooth thickness (arc) on the reference circle. [default: 0]", WordReaders.Length(SharedOptions.Thinning));
        Option<double?> bore = new OneWord<double?>("--bore", "D", "Bore diameter, mm. [default: none]", WordReaders.Length(SharedOptions.Size));
        Option<string> file = new OneWord<string>("--out", "FILE.dxf|FILE.svg", "The file to write; a file of this name is replaced.", WordReaders.Text) { Required = true };
        var command = new Command("gear", About)
        {
            SharedOptions.Module, SharedOptions.DiametralPitch, teeth, SharedOptions.PressureAngle, shift, SharedOptions.Rack, tip, thinning, bore, SharedOptions.Kerf,
            SharedOptions.Tolerance, SharedOptions.Pieces, SharedOptions.DxfVersion, file,
        };
        command.SetAction(parsed => console.Show(
            GearVerb.Run(new GearRequest(
                SharedOptions.GearNumbers(parsed), parsed.GetValue(teeth), parsed.GetValue(shift) ?? 0, parsed.GetValue(tip),
                parsed.GetValue(thinning) ?? 0, parsed.GetValue(bore), SharedOptions.Output(parsed), parsed.GetValue(file)!,
                parsed.GetValue(SharedOptions.Kerf))),
            parsed.GetValue(SharedOptions.Json),
            FileJson.Of, result => GearText.Write(console, result), result => ExitCode.Of(result.Verdict)));
        return command;
    }
}
