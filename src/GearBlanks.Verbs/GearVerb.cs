using System.Collections.Immutable;
using System.Globalization;
using GearBlanks.Blanks;
using GearBlanks.Blanks.Bores;
using GearBlanks.Cutting;
using GearBlanks.Files.Folders;
using GearBlanks.Files.Profiles;
using GearBlanks.Findings;
using GearBlanks.Mechanisms;
using GearBlanks.Teeth;

namespace GearBlanks.Verbs;

/// <summary>One gear to be drawn, as a command line gives it.</summary>
/// <param name="Numbers">Module and rack.</param>
/// <param name="Shape">What kind of teeth.</param>
/// <param name="Teeth">Tooth count; null for a rack.</param>
/// <param name="ProfileShift">Profile shift coefficient.</param>
/// <param name="TipDiameter">Tip diameter, mm; null for the rack's.</param>
/// <param name="Thinning">Loss of tooth thickness on the reference circle, mm.</param>
/// <param name="Bore">Bore diameter, mm; null for none.</param>
/// <param name="Output">How and how finely it is written.</param>
/// <param name="Out">The file, ending in .dxf, .svg or .png.</param>
/// <param name="Kerf">The kerf to compensate for; null for a nominal file.</param>
public sealed record GearRequest(
    GearNumbers Numbers, ToothShape Shape, int? Teeth, double ProfileShift, double? TipDiameter, double Thinning, double? Bore, OutputOptions Output, string Out, AskedKerf? Kerf = null)
{
    /// <summary>Round or chamfer at the tip's corners; null for sharp ones.</summary>
    public TipForm? Tip { get; init; }
}

/// <summary>One gear, drawn.</summary>
/// <param name="Gear">Its teeth.</param>
/// <param name="Findings">Findings, worst first.</param>
/// <param name="File">The file written.</param>
/// <param name="Cautions">What to mind when it is cut.</param>
/// <param name="Remarks">What there is to say of the part.</param>
/// <param name="Written">What the file carries of the kerf, and what the gear measures when it is cut.</param>
public sealed record GearResult(
    Toothing Gear, ImmutableArray<Finding> Findings, string File, ImmutableArray<string> Cautions, ImmutableArray<string> Remarks, WrittenGear Written)
{
    /// <summary>The worst level.</summary>
    public Level Verdict => Findings.Select(finding => finding.Level).DefaultIfEmpty(Level.Ok).Max();

    /// <summary>True where the file is a picture to look at, not to cut by.</summary>
    public bool IsPicture => FileFormats.OfFile(File).Format == FileFormat.Png;
}

/// <summary>Draws one gear.</summary>
public static class GearVerb
{
    /// <summary>Runs the verb: writes the file whole or not at all.</summary>
    public static Outcome<GearResult> Run(GearRequest request)
    {
        ProfileFinder profiles = ProfileFinder.BesideJob("");
        Outcome<RackChoice> choice = RackChoice.Of(request.Numbers);
        Outcome<Limits> limits = profiles.Limits(DefaultNames.Limits, CommandLine.Place);
        Outcome<Machine> machine = profiles.Machine(DefaultNames.Machine, CommandLine.Place);
        (FileFormat? format, ImmutableArray<Problem> unknown) = FileFormats.OfFile(request.Out);
        ImmutableArray<Problem> coarse = choice.Value is { } chosen ? request.Output.ProblemsAt(chosen.Module) : [];
        ImmutableArray<Problem> unable = format is { } asked ? FileFormats.ProblemsOf([asked], "--out", request.Out) : [];
        ImmutableArray<Problem> problems = [.. choice.Problems, .. limits.Problems, .. machine.Problems, .. unknown, .. unable, .. coarse, .. request.Shape.ProblemsWith(request)];
        if (problems.Length > 0)
        {
            return problems;
        }

        try
        {
            return Write(request, choice.Value!, limits.Value!, machine.Value!, format!.Value);
        }
        catch (GearGeometryException e)
        {
            return CommandLine.Problem(e.ShapeCase.StartsWith("kerf-", StringComparison.Ordinal) ? "--kerf" : "gear", e);
        }
    }

    private static Outcome<GearResult> Write(GearRequest request, RackChoice choice, Limits limits, Machine machine, FileFormat format)
    {
        Toothing gear = request.Shape.Make(request, choice);
        string name = string.Create(CultureInfo.InvariantCulture, $"{GearWords.KindOf(gear)} z {gear.Teeth} m {gear.Module:0.####}");

        // The sheet's thickness is not known here, so a wall fails only where nothing is left of it.
        var blank = new Blank(name, gear, 0, new Cutouts { Bore = request.Bore is { } bore ? new RoundBore(bore) : null }, []);
        ImmutableArray<Finding> findings = [.. ToothCheck.Of(gear, "gear", limits).Concat(WallCheck.Of(blank, "gear", limits))
            .OrderByDescending(finding => finding.Level)];
        (Part part, WrittenGear gearAsWritten) = WrittenGear.Of(blank, null, machine, request.Kerf);
        Drawing drawing = PartDrawing.Of(
            part, machine.Layers, request.Output.Tolerance, request.Output.Pieces,
            GearWords.Of(blank, null, null, gearAsWritten.Kerf, findings, findings.Max(finding => finding.Level)));
        Outcome<WrittenFile> written = SingleFile.Write(request.Out, FileFormats.Write(drawing, format, request.Output.DxfVersion), mustBeNew: false);
        return written.Value is null
            ? written.Problems
            : new GearResult(gear, findings, request.Out, [.. machine.Cautions, .. WrittenGear.Cautions([gearAsWritten])], part.Remarks, gearAsWritten);
    }
}
