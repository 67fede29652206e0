using System.Collections.Immutable;
using Fractions;
using GearBlanks.Findings;
using GearBlanks.Mechanisms.Conditions;
using GearBlanks.Trains;

namespace GearBlanks.Mechanisms;

/// <summary>What the check of a whole mechanism says.</summary>
/// <param name="Mechanism">The mechanism.</param>
/// <param name="Findings">All findings, worst first; equals in the order gears, meshes, sandwiches, hands.</param>
/// <param name="Speeds">Each sandwich's speed as an exact fraction of the drive's, in the order of the sandwiches; empty without a drive.</param>
/// <param name="Hands">Each hand's timing; empty without a drive.</param>
public sealed record MechanismReport(
    Mechanism Mechanism, ImmutableArray<Finding> Findings, ImmutableArray<BodySpeed> Speeds, ImmutableArray<HandReport> Hands)
{
    /// <summary>What its conditions make of it; null where none are asked for.</summary>
    public ConditionsReport? Conditions { get; init; }

    /// <summary>The worst level of all findings.</summary>
    public Level Verdict => Worst(Findings);

    /// <summary>The worst level of the findings on one place.</summary>
    public Level VerdictOn(string place) => Worst(Findings.Where(finding => finding.Place == place));

    private static Level Worst(IEnumerable<Finding> findings) => findings.Select(finding => finding.Level).DefaultIfEmpty(Level.Ok).Max();
}

/// <summary>A sandwich's speed.</summary>
/// <param name="Sandwich">Its name.</param>
/// <param name="Speed">Turns per turn of the drive, positive in the drive's sense; null where it is not driven or slides.</param>
/// <param name="Travel">Of a rack, mm along its direction per counter-clockwise turn of the drive; null for what turns, and where it is not driven.</param>
public sealed record BodySpeed(string Sandwich, Fraction? Speed, double? Travel);

/// <summary>A hand's timing.</summary>
/// <param name="Hand">The hand.</param>
/// <param name="Speed">Its turns per turn of the drive; null where it is not driven.</param>
/// <param name="Timing">Its timing; null where it is not driven.</param>
public sealed record HandReport(Hand Hand, Fraction? Speed, HandTiming? Timing);
