using System.Collections.Immutable;
using GearBlanks.Findings;
using GearBlanks.Mechanisms;
using GearBlanks.Rolling;
using GearBlanks.Teeth;

namespace GearBlanks.Verbs;

/// <summary>A pair to be rolled, as a command line gives it: two drawings and a distance, or a mesh of a job.</summary>
/// <param name="Job">The job file; null for two drawings.</param>
/// <param name="Mesh">Name of the mesh; null for the only one.</param>
/// <param name="How">How it is rolled.</param>
public sealed record RollAsked(string? Job, string? Mesh, RollManner How);

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
        Outcome<RolledPair> pair = RolledPair.OfJob(asked.Job!, asked.Mesh);
        return pair.Value is null ? pair.Problems : Roll(pair.Value, asked.How);
    }

    private static Outcome<RollResult> Roll(RolledPair pair, RollManner how)
    {
        try
        {
            RollReport report = RollTest.Of(new RollRequest(pair.First, pair.Second, pair.Distance)
            {
                Length = how.Hunting ? RollLength.HuntingPeriod : RollLength.Turn,
                WithDoubleFlank = how.WithDoubleFlank,
                FirstEccentricity = new(how.Eccentricity.First, 0),
                SecondEccentricity = new(how.Eccentricity.Second, 0),
            });
            return new RollResult(report, pair.Name, [.. RollCheck.Of(report, pair.Name)], Cautions, pair.Remarks, []);
        }
        catch (GearGeometryException e)
        {
            return CommandLine.Problem("roll", e);
        }
    }
}
