using System.Collections.Immutable;
using System.CommandLine;
using GearBlanks.Cli.Arguments;
using GearBlanks.Cli.Output;
using GearBlanks.Cutting.Routes;
using GearBlanks.Verbs;
using GearBlanks.Verbs.Json;

namespace GearBlanks.Cli.Commands;

internal static class CutCommand
{
    private const string About =
        """
        Write a cut file for every gear of a job, an overview of the mechanism in mesh, and a manifest.
        The folder is written whole or not at all; files that a person has edited since are not overwritten.

        Examples:
          gearblanks cut dial.toml --out dial-parts
          gearblanks cut dial.toml --out dial-parts --format dxf --dxf-version r12
          gearblanks cut dial.toml --out dial-parts --format dxf,png
          gearblanks cut dial.toml --out dial-parts --machine co2-laser
          gearblanks cut dial.toml --out dial-parts --kerf 0.18
          gearblanks cut dial.toml --out dial-parts --machine end-mill-1mm --tabs 3 --tab-width 0.6 --lead line --lead-length 0.5
        """;

    public static Command Make(Terminal console)
    {
        var job = new FileArgument("JOB", "The job file.");
        Option<string> folder = new OneWord<string>("--out", "DIR", "The folder to write.", WordReaders.Text) { Required = true };
        var format = new OneWord<ImmutableArray<FileFormat>>(
            "--format", "LIST", "Formats of the parts with commas between: dxf, svg, png (a picture to look at, not to cut by). [default: dxf,svg]",
            WordReaders.Some(("dxf", FileFormat.Dxf), ("svg", FileFormat.Svg), ("png", FileFormat.Png)))
        {
            Otherwise = [FileFormat.Dxf, FileFormat.Svg],
        };
        var overwrite = new Option<bool>("--overwrite-edited") { Description = "Overwrite files that a person has edited since.", Arity = ArgumentArity.Zero };
        Option<string?> machine = new OneWord<string?>("--machine", "NAME", "Machine profile to cut on, instead of the job's.", word => new(word));
        Option<StartPlace?> start = new OneWord<StartPlace?>(
            "--start", "tip|root", "Where contours of teeth start. [default: the machine's]", WordReaders.Choice<StartPlace?>(("tip", StartPlace.Tip), ("root", StartPlace.Root)));
        Option<LeadForm?> lead = new OneWord<LeadForm?>(
            "--lead", "line|arc", "The tool's way in and out, over scrap. [default: the machine's]", WordReaders.Choice<LeadForm?>(("line", LeadForm.Line), ("arc", LeadForm.Arc)));
        Option<double?> leadLength = new OneWord<double?>("--lead-length", "MM", "Length of a line, radius of an arc.", WordReaders.Length(new(0, 100, "mm", IsAbove: true)));
        Option<int?> tabs = new OneWord<int?>("--tabs", "N", "How many tabs hold each part, on tip lands, the rim, or every side of a rack; 0 for none. [default: the machine's]", Whole);
        Option<double?> tabWidth = new OneWord<double?>("--tab-width", "MM", "Width of each tab.", WordReaders.Length(new(0, 100, "mm", IsAbove: true)));
        var command = new Command("cut", About)
        {
            job, folder, machine, SharedOptions.Kerf, start, lead, leadLength, tabs, tabWidth, format, SharedOptions.DxfVersion, SharedOptions.Tolerance, SharedOptions.Pieces, overwrite,
        };
        command.SetAction(parsed => console.Show(
            CutVerb.Run(new CutRequest(
                parsed.GetValue(job)!, parsed.GetValue(folder)!, format.In(parsed), SharedOptions.Output(parsed), parsed.GetValue(overwrite),
                parsed.GetValue(machine), parsed.GetValue(SharedOptions.Kerf),
                new AskedRoute(parsed.GetValue(start), parsed.GetValue(lead), parsed.GetValue(leadLength), parsed.GetValue(tabs), parsed.GetValue(tabWidth)))),
            parsed.GetValue(SharedOptions.Json),
            FileJson.Of, result => CutText.Write(console, result), result => ExitCode.Of(result.Report.Verdict)));
        return command;
    }

    private static Reading<int?> Whole(string word)
    {
        Reading<int> read = WordReaders.WholeNumber(0, RoutePlan.MostTabs)(word);
        return new(read.Value, read.Complaint);
    }
}
