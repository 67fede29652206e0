using GearBlanks.Cutting;
using GearBlanks.Cutting.Reach;
using GearBlanks.Files.Dxf;
using GearBlanks.Files.Folders;
using GearBlanks.Files.Svg;
using GearBlanks.Findings;
using GearBlanks.Mechanisms;
using GearBlanks.Mechanisms.Reach;

namespace GearBlanks.Verbs;

/// <summary>The files of <c>reach</c>: a picture of each gear, and what its tool leaves as contours for a second one.</summary>
internal static class ReachFiles
{
    public static Outcome<WrittenFolder> Write(string folder, OutputOptions output, Machine machine, ReachResult result) => FolderWriter.Write(
        folder, [.. result.Gears.SelectMany(gear => FilesOf(gear, machine, output))], Manifest(machine, result), overwriteEdited: false);

    private static IEnumerable<OutputFile> FilesOf(GearReach gear, Machine machine, OutputOptions output)
    {
        string name = gear.Name.Replace(' ', '-');
        yield return new OutputFile($"{name}-reach.svg", ReachWriter.Write(gear));
        if (!gear.Uncut.IsEmpty)
        {
            Drawing corners = CornerDrawing.Of($"{gear.Name}, corners", gear.Uncut, machine.Layers, output.Tolerance, output.Pieces, CornerWords(gear));
            yield return new OutputFile($"{name}-corners.dxf", DxfWriter.Write(corners, output.DxfVersion));
        }
    }

    private static IEnumerable<string> CornerWords(GearReach gear)
    {
        yield return $"{gear.Name}: what a tool of {Words.Mm(gear.Tool)} leaves in its gaps";
        yield return gear.Largest.WholeFillet > 0
            ? $"for a second tool of at most {Words.Mm(Math.Floor(gear.Largest.WholeFillet * 1000) / 1000)}, which may run out into the gap, never into the teeth"
            : "the gaps have sharp inside corners: no round tool takes all of it";
        yield return "nominal contours, kerf not compensated";
    }

    private static ManifestData Manifest(Machine machine, ReachResult result) => new(
        ProgramName.WithVersion,
        [new("mechanism", result.Title ?? "one gear"), new("machine", machine.Name), .. result.Gears.Select(gear => new ManifestInput($"tool of gear {gear.Name}", Words.Mm(gear.Tool)))],
        [.. result.Findings.Where(finding => finding.Level != Level.Ok).Select(finding => $"{LevelWords.Of(finding.Level)}: {finding.Place}: {finding.Message}")],
        LevelWords.Of(result.Verdict));
}
