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
        Draw one gear, ring or rack: a gear centred on the origin, a tooth's centre line on +X; a rack's reference line on the X axis.

        Examples:
          gearblanks gear --module 0.8 --teeth 24 --profile-shift 0.3 --thinning 0.016 --bore 4 --out wheel.dxf
          gearblanks gear --diametral-pitch 32 --teeth 40 --rack ansi-b6-7 --bore "1/4 in" --out wheel.svg
          gearblanks gear --module 1 --teeth 60 --ring --rim-diameter 75 --out ring.dxf
          gearblanks gear --module 1 --rack-length 120 --back-height 6 --out rack.dxf
        """;

    public static Command Make(Terminal console)
    {
        var teeth = new OneWord<int>("--teeth", "Z", "Tooth count, 4 to 1000; a rack takes none.", WordReaders.WholeNumber(GearRanges.LeastTeeth, GearRanges.MostTeeth));
        var ring = new Option<bool>("--ring") { Description = "A ring gear: its teeth point inward.", Arity = ArgumentArity.Zero };
        Option<double?> rim = new OneWord<double?>("--rim-diameter", "D", "Outer diameter of a ring's rim, mm.", WordReaders.Length(SharedOptions.Size));
        Option<double?> fillet = new OneWord<double?>(
            "--root-fillet", "R", "Radius of the round between a ring's flank and root circle, mm. [default: the rack's]", WordReaders.Length(SharedOptions.SizeOrNone));
        Option<double?> length = new OneWord<double?>("--rack-length", "L", "A straight rack of this length, mm.", WordReaders.Length(SharedOptions.Size));
        Option<double?> back = new OneWord<double?>("--back-height", "H", "Distance of a rack's back from its reference line, mm.", WordReaders.Length(SharedOptions.Size));
        Option<double?> shift = new OneWord<double?>("--profile-shift", "X", "Profile shift coefficient, -1 to 1.5. [default: 0]", WordReaders.Number(SharedOptions.Shift));
        Option<double?> tip = new OneWord<double?>("--tip-diameter", "D", "Tip diameter, mm. [default: the rack's]", WordReaders.Length(SharedOptions.Size));
        Option<double?> thinning = new OneWord<double?>(
            "--thinning", "MM", "Loss of tooth thickness (arc) on the reference circle. [default: 0]", WordReaders.Length(SharedOptions.Thinning));
        Option<double?> bore = new OneWord<double?>("--bore", "D", "Bore diameter, mm. [default: none]", WordReaders.Length(SharedOptions.Size));
        Option<string> file = new OneWord<string>("--out", "FILE.dxf|FILE.svg|FILE.png", "The file to write; a file of this name is replaced. A PNG is a picture to look at, not to cut by.", WordReaders.Text) { Required = true };
        var command = new Command("gear", About)
        {
            SharedOptions.Module, SharedOptions.DiametralPitch, teeth, ring, rim, fillet, length, back, SharedOptions.PressureAngle, shift, SharedOptions.Rack, tip, thinning, bore, SharedOptions.Kerf,
            SharedOptions.Tolerance, SharedOptions.Pieces, SharedOptions.DxfVersion, file,
        };
        command.SetAction(parsed => console.Show(
            GearVerb.Run(new GearRequest(
                SharedOptions.GearNumbers(parsed),
                new ToothShape(parsed.GetValue(ring), parsed.GetValue(rim), parsed.GetValue(fillet), parsed.GetValue(length), parsed.GetValue(back)),
                parsed.GetResult(teeth) is null ? null : parsed.GetValue(teeth), parsed.GetValue(shift) ?? 0, parsed.GetValue(tip),
                parsed.GetValue(thinning) ?? 0, parsed.GetValue(bore), SharedOptions.Output(parsed), parsed.GetValue(file)!,
                parsed.GetValue(SharedOptions.Kerf))),
            parsed.GetValue(SharedOptions.Json),
            FileJson.Of, result => GearText.Write(console, result), result => ExitCode.Of(result.Verdict)));
        return command;
    }
}
