using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using GearBlanks.Blanks;
using GearBlanks.Cutting;
using GearBlanks.Cutting.Routes;
using GearBlanks.Files.Folders;
using GearBlanks.Files.Jobs;
using GearBlanks.Files.Svg;
using GearBlanks.Findings;
using GearBlanks.Mechanisms;
using GearBlanks.Teeth;

namespace GearBlanks.Verbs;

/// <summary>A job whose parts are to be written.</summary>
/// <param name="JobFile">The job file's name.</param>
/// <param name="Folder">The folder that the files go to.</param>
/// <param name="Formats">The formats each part is written in; at least one.</param>
/// <param name="Output">How and how finely they are written.</param>
/// <param name="OverwriteEdited">True to overwrite files that a person has edited since.</param>
/// <param name="Machine">Name of the machine to cut on; null for the job's.</param>
/// <param name="Kerf">The kerf to compensate for; null for the machine's.</param>
/// <param name="Route">What is asked of contours; null for the machine's own.</param>
public sealed record CutRequest(
    string JobFile, string Folder, ImmutableArray<FileFormat> Formats, OutputOptions Output, bool OverwriteEdited, string? Machine = null, AskedKerf? Kerf = null, AskedRoute? Route = null);

/// <summary>What was written.</summary>
/// <param name="Report">The check of the mechanism.</param>
/// <param name="Folder">The folder.</param>
/// <param name="Files">Names of the files in it.</param>
/// <param name="Remarks">What was left out of parts and why, and what happened to a person's own files.</param>
/// <param name="Cautions">What to mind when the parts are cut.</param>
/// <param name="Gears">What each gear's files carry of the kerf, and what the gear measures when it is cut.</param>
public sealed record CutResult(
    MechanismReport Report, string Folder, ImmutableArray<string> Files, ImmutableArray<string> Remarks, ImmutableArray<string> Cautions,
    ImmutableArray<WrittenGear> Gears);

/// <summary>Writes a cut file for every gear of a job, the overview and the manifest: read, resolve, compute, write.</summary>
public static class CutVerb
{
    private const string OverviewFile = "overview.svg";

    /// <summary>Runs the verb: the folder is written whole or not at all.</summary>
    public static Outcome<CutResult> Run(CutRequest request)
    {
        if (FileFormats.ProblemsOf(request.Formats, "--format", "png") is [_, ..] unable)
        {
            return unable;
        }

        Outcome<JobText> text = JobReader.ReadText(request.JobFile);
        if (text.Value is null)
        {
            return text.Problems;
        }

        Outcome<MechanismReport> checkedJob = CheckVerb.Run(text.Value, request.Machine);
        if (checkedJob.Value is not { } report)
        {
            return checkedJob.Problems;
        }

        if (request.Output.ProblemsAt(report.Mechanism.Gears.Select(gear => gear.Blank.Gear.Module).DefaultIfEmpty(double.MaxValue).Min()) is [_, ..] coarse)
        {
            return coarse;
        }

        Outcome<RoutePlan> asked = request.Route?.On(report.Mechanism.Machine) ?? report.Mechanism.Machine.Route;
        if (asked.Value is not { } route)
        {
            return asked.Problems;
        }

        // Parts and overview do not know of one another, so they are made and drawn side by side; their order stays the job's.
        var overview = Task.Run(() => new OutputFile(OverviewFile, OverviewWriter.Write(report)));
        Outcome<CutPart>[] made = [.. report.Mechanism.Gears.AsParallel().AsOrdered().Select(gear => Make(gear, report, request.Kerf))];

        // Every gear that the beam does not fit is told at once.
        if (made.SelectMany(part => part.Problems).Distinct().ToImmutableArray() is [_, ..] unfit)
        {
            return unfit;
        }

        CutPart[] cutParts = [.. made.Select(part => part.Value!)];
        try
        {
            report = CutReach.With(report, cutParts.Select(part => part.Written));
        }
        catch (GearGeometryException e)
        {
            return CommandLine.Problem("machine", e);
        }

        DrawnPart[] parts = [.. cutParts.AsParallel().AsOrdered().Select(part => Draw(part, report, request, route))];
        List<OutputFile> files = [.. parts.SelectMany(part => part.Files), overview.GetAwaiter().GetResult()];
        if (TakenName(files) is { } taken)
        {
            return CommandLine.Problem("--out", taken, "A gear's file would have the name of another file of the folder", "another name for the gear");
        }

        ImmutableArray<WrittenGear> gears = [.. cutParts.Select(part => part.Written)];
        ImmutableArray<string> remarks = [.. cutParts.Zip(parts).SelectMany(part => part.First.Part.Remarks.Concat(part.Second.Remarks).Select(remark => $"{part.First.Written.Name}: {remark}"))];
        Outcome<WrittenFolder> written = FolderWriter.Write(
            request.Folder, files, Manifest(request, text.Value, report, remarks, gears, route), request.OverwriteEdited);
        return written.Value is { } folder
            ? new CutResult(report, request.Folder, folder.Files, [.. remarks, .. folder.Notes], [.. Cautions(report.Mechanism), .. WrittenGear.Cautions(gears)], gears)
            : written.Problems;
    }

    private static Outcome<CutPart> Make(MountedGear gear, MechanismReport report, AskedKerf? kerf)
    {
        Blank blank = report.Mechanism.MarksFacingTeeth ? gear.Blank with { FacingTeeth = report.Stack.TeethToMark(gear) } : gear.Blank;
        try
        {
            (Part part, WrittenGear written) = WrittenGear.Of(blank, gear.Material?.Name, report.Mechanism.Machine, kerf);
            return new CutPart(gear, part, written);
        }
        catch (GearGeometryException e)
        {
            string option = kerf is null ? "machine" : "--kerf";
            return report.Mechanism.Machine.ToolDiameter is not null && e.ShapeCase.StartsWith("kerf-closes-", StringComparison.Ordinal)
                ? CommandLine.Problem(option, null, e.Message.TrimEnd('.'), "a tool that fits every gear: gearblanks reach tells the largest")
                : CommandLine.Problem(option, e);
        }
    }

    private static DrawnPart Draw(CutPart part, MechanismReport report, CutRequest request, RoutePlan route)
    {
        MountedGear gear = part.Gear;
        Machine machine = report.Mechanism.Machine;
        GearKerf kerf = part.Written.Kerf;
        double width = Math.Max(kerf.Kerf?.X ?? 0, kerf.Kerf?.Y ?? 0);
        Drawing closed = PartDrawing.Of(part.Part, machine.Layers, request.Output.Tolerance, request.Output.Pieces, []);
        (Drawing routed, ImmutableArray<string> remarks, string words) = Router.Of(
            closed, gear.Toothing, route, kerf.IsCompensated ? width : 0, kerf.IsShops ? machine.ToolDiameter ?? 0 : width);
        Drawing drawing = PartDrawing.WithWords(
            routed, closed, GearWords.Of(gear.Blank, report.Mechanism.Title, gear.Material, kerf, FindingsOn(gear, report), report.Verdict, words));
        string name = gear.Name.Replace(' ', '-');
        return new DrawnPart(
            [.. request.Formats.Select(format => new OutputFile(
                name + FileFormats.EndingOf(format), FileFormats.Write(drawing, format, request.Output.DxfVersion)))],
            remarks);
    }

    // A gear's file answers for the gear, for every mesh and sandwich that it is part of, and for the axes that its meshes share.
    private static IEnumerable<Finding> FindingsOn(MountedGear gear, MechanismReport report)
    {
        HashSet<string> places = [.. report.Mechanism.Meshes
            .Where(mesh => mesh.First == gear || mesh.Second == gear)
            .SelectMany(mesh => (string[])[Places.Mesh(mesh.Name), Places.Axes(mesh.First.Axis.Name, mesh.Second.Axis.Name)])
            .Append(Places.Gear(gear.Name))
            .Append(Places.Sandwich(gear.Sandwich))];
        return report.Findings.Where(finding => places.Contains(finding.Place));
    }

    private static string? TakenName(IEnumerable<OutputFile> files) => files
        .Select(file => file.Name)
        .Append(FolderWriter.ManifestName)
        .GroupBy(name => name, StringComparer.OrdinalIgnoreCase)
        .FirstOrDefault(group => group.Count() > 1)?.Key;

    private static ManifestData Manifest(CutRequest request, JobText job, MechanismReport report, ImmutableArray<string> remarks, ImmutableArray<WrittenGear> gears, RoutePlan route) => new(
        ProgramName.WithVersion,
        [
            new("job", Path.GetFileName(request.JobFile)),
            new("job-sha256", Sha256.HexOf(Encoding.UTF8.GetBytes(job.Text))),
            new("mechanism", report.Mechanism.Title),
            new("limits", report.Mechanism.Limits.Name),
            new("machine", report.Mechanism.Machine.Name),
            new("kerf", WrittenGear.KerfOfAll(gears)),
            .. route.Words.Length == 0 ? (ManifestInput[])[] : [new("contours", route.Words)],
            new("tolerance", Words.Mm(request.Output.Tolerance)),
            new("pieces", request.Output.Pieces.ToString().ToLowerInvariant()),
            new("dxf-version", request.Output.DxfVersion.ToString().ToLowerInvariant()),
            .. report.Mechanism.Gears.Select(gear => new ManifestInput($"gear {gear.Name}", Numbers(gear.Blank))),
            .. gears.SelectMany(gear => (ManifestInput[])[new($"gear {gear.Name} kerf", gear.Kerf.Words), new($"gear {gear.Name} as cut", gear.SizesInWords)]),
        ],
        [.. report.Findings.Where(finding => finding.Level != Level.Ok).Select(finding => $"{LevelWords.Of(finding.Level)}: {finding.Place}: {finding.Message}"), .. remarks],
        LevelWords.Of(report.Verdict));

    private static string Numbers(Blank blank) => string.Create(
        CultureInfo.InvariantCulture,
        $"z {blank.Gear.Teeth}, m {blank.Gear.Module:R} mm, rack {blank.Gear.Data.Rack.Name}, x {blank.Gear.Data.ProfileShift:R}, thinning {blank.Gear.Data.Thinning:R} mm, {Tip(blank.Gear)}");

    private static string Tip(Toothing teeth) => teeth switch
    {
        RackBar rack => string.Create(CultureInfo.InvariantCulture, $"length {rack.Length:R} mm, tip height {rack.TipHeight:R} mm, back {rack.Data.BackHeight:R} mm"),
        RingGear ring => string.Create(CultureInfo.InvariantCulture, $"tip diameter {2 * ring.NominalTipRadius:R} mm, ring, rim diameter {2 * ring.RimRadius:R} mm, root fillet {ring.RootFilletRadius:R} mm"),
        Gear gear => string.Create(CultureInfo.InvariantCulture, $"tip diameter {2 * gear.NominalTipRadius:R} mm"),
        _ => "",
    };

    private static ImmutableArray<string> Cautions(Mechanism mechanism) =>
    [
        .. mechanism.Machine.Cautions
            .Concat(mechanism.Gears.Select(gear => gear.Material).OfType<Material>().SelectMany(material => material.Cautions))
            .Distinct(),
    ];

    private sealed record DrawnPart(ImmutableArray<OutputFile> Files, ImmutableArray<string> Remarks);

    private sealed record CutPart(MountedGear Gear, Part Part, WrittenGear Written);
}
