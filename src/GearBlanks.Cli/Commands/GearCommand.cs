using System.CommandLine;
using GearBlanks.Cli.Arguments;
using GearBlanks.Cli.Output;
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
        var gear = new GearOptions();
        Option<string> file = new OneWord<string>("--out", "FILE.dxf|FILE.svg|FILE.png", "The file to write; a file of this name is replaced. A PNG is a picture to look at, not to cut by.", WordReaders.Text) { Required = true };
        var command = new Command("gear", About)
        {
            SharedOptions.Kerf, SharedOptions.Tolerance, SharedOptions.Pieces, SharedOptions.DxfVersion, file,
        };
        gear.AddTo(command);
        command.SetAction(parsed => console.Show(
            GearVerb.Run(gear.Request(parsed, parsed.GetValue(file)!)),
            parsed.GetValue(SharedOptions.Json),
            FileJson.Of, result => GearText.Write(console, result), result => ExitCode.Of(result.Verdict)));
        return command;
    }
}
