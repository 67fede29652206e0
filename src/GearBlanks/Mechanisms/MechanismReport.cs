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
    /// <summary>Where the hands stand at a date that was asked for; null where none was.</summary>
    public DialReading? Dial { get; init; }

    /// <summary>What stands over what, and how it is put together.</summary>
    public StackReport Stack { get; init; } = StackReport.None;

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
public sealed record BodySpeed(string Sandwich, Fraction? Speed, double? Travel)
{
    /// <summary>Name of the sandwich that carries its axis; null for the frame.</summary>
    public string? Arm { get; init; }

    /// <summary>Turns against the arm per turn of the drive, against the frame where there is no arm; null where the drives do not settle it.</summary>
    public Fraction? AgainstArm { get; init; }
}

/// <summary>A hand's timing.</summary>
/// <param name="Hand">The hand.</param>
/// <param name="Speed">Its turns per turn of the drive; null where it is not driven.</param>
/// <param name="Timing">Its timing; null where it is not driven.</param>
public sealed record HandReport(Hand Hand, Fraction? Speed, HandTiming? Timing)
{
    /// <summary>How far it can be turned while the drives stand still; null where they do not turn it.</summary>
    public LostMotion? LostMotion { get; init; }
}

/// <summary>How far a hand can be turned, from one end to the other, while the drives stand still: the backlash of all meshes on its way.</summary>
/// <param name="WorstCase">All meshes at their ends together, degrees.</param>
/// <param name="RootSumSquare">Root of the sum of the squares, degrees: what to expect where the meshes stand at random.</param>
/// <param name="Meshes">What each mesh takes part in it, degrees, in the order of the mechanism.</param>
/// <param name="MinutesInADegree">Minutes of dial time that one degree of the hand shows.</param>
public sealed record LostMotion(double WorstCase, double RootSumSquare, ImmutableArray<MeshPlay> Meshes, double MinutesInADegree)
{
    /// <summary>The worst case in minutes of dial time.</summary>
    public double WorstCaseMinutes => WorstCase * MinutesInADegree;

    /// <summary>The root of the sum of the squares in minutes of dial time.</summary>
    public double RootSumSquareMinutes => RootSumSquare * MinutesInADegree;
}

/// <summary>What a mesh adds to a hand's lost motion.</summary>
/// <param name="Mesh">Name of the mesh.</param>
/// <param name="Degrees">Degrees at the hand.</param>
public readonly record struct MeshPlay(string Mesh, double Degrees);

/// <summary>Where a hand stands at a date.</summary>
/// <param name="Hand">The hand.</param>
/// <param name="Angle">Degrees clockwise from the dial's zero, exactly, from 0 to below 360; null where the drives do not turn the hand.</param>
/// <param name="Ahead">Degrees by which it is ahead, in its own sense, of a hand that keeps its wanted period exactly; negative where it lags; null where it stands still.</param>
public sealed record HandPosition(Hand Hand, Fraction? Angle, Fraction? Ahead);

/// <summary>Where all hands stand at a date.</summary>
/// <param name="At">The date.</param>
/// <param name="Setting">The date at which they stand at their angles.</param>
/// <param name="Hands">The hands, in the order of the mechanism.</param>
public sealed record DialReading(Moment At, Moment Setting, ImmutableArray<HandPosition> Hands);
