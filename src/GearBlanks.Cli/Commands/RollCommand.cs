using System.CommandLine;
using GearBlanks.Cli.Arguments;
using GearBlanks.Cli.Output;
using GearBlanks.Curves;
using GearBlanks.Verbs;
using GearBlanks.Verbs.Json;

namespace GearBlanks.Cli.Commands;

internal static class RollCommand
{
    private const string About =
        """
        Roll two gears against each other before they are cut: how evenly they turn, their backlash all the way round, and what is in the way.
        Drawings are DXF or SVG files from anywhere, one part in each; the first one drives, but a rack is always driven.
        A rack lies as it may; the distance counts to the line on which its teeth and gaps are equally wide, or to the line through its --centre.

        Examples:
          gearblanks roll wheel.dxf pinion.svg --distance 40 --plot roll.svg
          gearblanks roll wheel.dxf wheel-as-scanned.dxf --distance 48 --double --hunting --csv roll.csv
          gearblanks roll --job dial.toml --mesh "day to first lay" --eccentricity 0.02 0.02
          gearblanks roll --job dial.toml --mesh "day to first lay" --as-cut --tool 0.8
        """;

    private static readonly NumberRange OffCentre = new(0, 10, "mm");
    private static readonly NumberRange Anywhere = new(-100_000, 100_000, "mm");

    public static Command Make(Terminal console)
    {
        var first = new FileArgument("A", "The drawing of the gear that drives.") { Arity = ArgumentArity.ZeroOrOne };
        var second = new FileArgument("B", "The drawing of the other gear.") { Arity = ArgumentArity.ZeroOrOne };
        Option<double?> distance = new OneWord<double?>("--distance", "MM", "Distance of the axes; to a rack from the axis to its reference line. [default: the job's]", WordReaders.Length(SharedOptions.Size));
        Option<(double? First, double? Second)?> firstCentre = Centre("--centre-a", "A");
        Option<(double? First, double? Second)?> secondCentre = Centre("--centre-b", "B");
        var layers = new Option<string[]>("--layer") { Description = "A layer (SVG: a group) of the drawings that is read, the others are not; may be given more than once. [default: all]", HelpName = "NAME", Arity = ArgumentArity.OneOrMore };
        var anyPitch = new Option<bool>("--any-pitch") { Description = "Roll gears whose pitches do not match.", Arity = ArgumentArity.Zero };
        var asCut = new Option<bool>("--as-cut") { Description = "Roll a job's gears as the tool leaves them.", Arity = ArgumentArity.Zero };
        Option<double?> tool = new OneWord<double?>(
            "--tool", "D", "Diameter of the beam or mill, mm, up to 100. [default: the machine's mill, else its kerf]", WordReaders.Length(new(0, 100, "mm", IsAbove: true)));
        Option<string?> csv = new OneWord<string?>("--csv", "FILE.csv", "Write every position.", word => new(word));
        Option<string?> plot = new OneWord<string?>("--plot", "FILE.svg", "Draw the roll, and the worst contact magnified.", word => new(word));
        Option<string?> job = new OneWord<string?>("--job", "JOB", "A job file: one of its meshes is rolled.", word => new(word));
        Option<string?> mesh = new OneWord<string?>("--mesh", "NAME", "The mesh of the job. [default: the only one]", word => new(word));
        var twice = new Option<bool>("--double") { Description = "Also roll without play: how the distance gives way.", Arity = ArgumentArity.Zero };
        var hunting = new Option<bool>("--hunting") { Description = "Roll until the same two teeth meet again. [default: until each gear has turned once]", Arity = ArgumentArity.Zero };
        Option<(double? First, double? Second)?> eccentricity = new TwoWords<double?>(
            "--eccentricity", "EA EB", "How far each gear's teeth stand off the centre of their bore, mm, towards +X of the drawing. [default: 0 0]", WordReaders.Length(OffCentre));
        var command = new Command("roll", About)
        {
            first, second, distance, job, mesh, twice, hunting, eccentricity, firstCentre, secondCentre, layers, anyPitch, asCut, tool, csv, plot,
        };
        command.SetAction(parsed => console.Show(
            RollVerb.Run(new RollAsked(
                parsed.GetValue(first), parsed.GetValue(second), parsed.GetValue(job), parsed.GetValue(mesh), parsed.GetValue(distance),
                new RollManner(
                    parsed.GetValue(twice), parsed.GetValue(hunting), parsed.GetValue(eccentricity) is ({ } one, { } other) ? (one, other) : default,
                    parsed.GetValue(csv), parsed.GetValue(plot)))
            {
                FirstCentre = PointOf(parsed.GetValue(firstCentre)),
                SecondCentre = PointOf(parsed.GetValue(secondCentre)),
                Layers = [.. parsed.GetValue(layers) ?? []],
                AnyPitch = parsed.GetValue(anyPitch),
                AsCut = parsed.GetValue(asCut),
                Tool = parsed.GetValue(tool),
            }),
            parsed.GetValue(SharedOptions.Json),
            RollJson.Of, result => RollText.Write(console, result), result => ExitCode.Of(result.Verdict)));
        return command;
    }

    private static TwoWords<double?> Centre(string name, string gear) => new(
        name, "X Y", $"Axis of {gear} in its drawing's own coordinates, mm; of a rack a point of its reference line. [default: the middle of its bore; a rack's line of equal teeth and gaps]", WordReaders.Length(Anywhere));

    private static Point? PointOf((double? First, double? Second)? words) => words is ({ } x, { } y) ? new Point(x, y) : null;
}
