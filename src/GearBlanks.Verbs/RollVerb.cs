using System.Collections.Immutable;
using GearBlanks.Curves;
using GearBlanks.Files.Folders;
using GearBlanks.Files.Rolls;
using GearBlanks.Findings;
using GearBlanks.Mechanisms;
using GearBlanks.Rolling;
using GearBlanks.Teeth;

namespace GearBlanks.Verbs;

/// <summary>A pair to be rolled, as a command line gives it: two drawings and a distance, or a mesh of a job.</summary>
/// <param name="First">The drawing of the gear that drives; null for a job.</param>
/// <param name="Second">The drawing of the other gear; null for a job.</param>
/// <param name="Job">The job file; null for two drawings.</param>
/// <param name="Mesh">Name of the job's mesh; null for the only one.</param>
/// <param name="Distance">Distance of the axes, mm; null for the job's.</param>
/// <param name="How">How it is rolled.</param>
public sealed record RollAsked(string? First, string? Second, string? Job, string? Mesh, double? Distance, RollManner How)
{
    /// <summary>The first gear's axis in its drawing, mm; null to find it from the bore.</summary>
    public Point? FirstCentre { get; init; }

    /// <summary>The second gear's axis in its drawing, mm; null to find it from the bore.</summary>
    public Point? SecondCentre { get; init; }

    /// <summary>Layers or groups of the drawings that are read; none for all of them.</summary>
    public ImmutableArray<string> Layers { get; init; } = [];

    /// <summary>True to roll gears whose pitches do not match.</summary>
    public bool AnyPitch { get; init; }

    /// <summary>True to roll a job's gears as the tool leaves them.</summary>
    public bool AsCut { get; init; }

    /// <summary>Diameter of the tool, mm; null for the machine's.</summary>
    public double? Tool { get; init; }
}

/// <summary>How a pair is rolled.</summary>
/// <param name="WithDoubleFlank">True to roll it without play as well.</param>
/// <param name="Hunting">True to roll until the same teeth meet again.</param>
/// <param name="Eccentricity">How far each gear's teeth are off their axis, mm.</param>
/// <param name="Csv">File for every position; null for none.</param>
/// <param name="Plot">File for the picture; null for none.</param>
public sealed record RollManner(bool WithDoubleFlank, bool Hunting, (double First, double Second) Eccentricity, string? Csv, string? Plot);

/// <summary>A pair, rolled.</summary>
/// <param name="Report">What the roll shows.</param>
/// <param name="Name">What was rolled.</param>
/// <param name="Findings">Findings, worst first.</param>
/// <param name="Cautions">What to mind.</param>
/// <param name="Remarks">What there is to say of what was read.</param>
/// <param name="Files">Files written.</param>
public sealed record RollResult(
    RollReport Report, string Name, ImmutableArray<Finding> Findings, ImmutableArray<string> Cautions, ImmutableArray<string> Remarks, ImmutableArray<string> Files)
{
    /// <summary>The worst level.</summary>
    public Level Verdict => Findings.Select(finding => finding.Level).DefaultIfEmpty(Level.Ok).Max();
}

/// <summary>Rolls two gears against each other.</summary>
public static class RollVerb
{
    private static readonly ImmutableArray<string> Cautions =
    [
        "Not in the roll: bending, load, wear, play of the bores, and what lies across the thickness (taper, lean).",
    ];

    /// <summary>Runs the verb.</summary>
    public static Outcome<RollResult> Run(RollAsked asked)
    {
        ImmutableArray<Problem> problems = [.. RollContradictions.Of(asked)];
        if (problems.Length > 0)
        {
            return problems;
        }

        Outcome<RolledPair> pair = asked.Job is { } job ? RolledPair.OfJob(job, asked) : RolledPair.OfDrawings(asked);
        return pair.Value is null ? pair.Problems : Roll(pair.Value, asked.How);
    }

    private static Outcome<RollResult> Roll(RolledPair pair, RollManner how)
    {
        try
        {
            (double first, double second) = pair.IsTurned ? (how.Eccentricity.Second, how.Eccentricity.First) : how.Eccentricity;
            RollReport report = RollTest.Of(new RollRequest(pair.First, pair.Second, pair.Distance)
            {
                Length = how.Hunting ? RollLength.HuntingPeriod : RollLength.Turn,
                WithDoubleFlank = how.WithDoubleFlank,
                FirstEccentricity = new Vector(first, 0),
                SecondEccentricity = new Vector(second, 0),
            });
            return Write(new RollResult(report, pair.Name, [.. RollCheck.Of(report, pair.Name, pair.Limits)], Cautions, pair.Remarks, []), how);
        }
        catch (GearGeometryException e)
        {
            return CommandLine.Problem(e.ShapeCase.StartsWith("cutter-", StringComparison.Ordinal) ? "--tool" : "roll", e);
        }
    }

    private static Outcome<RollResult> Write(RollResult result, RollManner how)
    {
        (string? File, Func<RollReport, byte[]> Make)[] wanted = [(how.Csv, RollCsv.Write), (how.Plot, report => RollPlot.Write(report, result.Name))];
        foreach ((string? file, Func<RollReport, byte[]> make) in wanted)
        {
            if (file is not null && SingleFile.Write(file, make(result.Report), mustBeNew: false) is { Value: null } failed)
            {
                return failed.Problems;
            }
        }

        return result with { Files = [.. wanted.Select(one => one.File).OfType<string>()] };
    }
}
