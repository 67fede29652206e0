using System.Collections.Immutable;
using GearBlanks.Curves;

namespace GearBlanks.Rolling;

/// <summary>What a roll shows. Angles are the second gear's, rad; of a rack its way, mm.</summary>
/// <param name="Request">What was rolled.</param>
/// <param name="Positions">Positions solved.</param>
/// <param name="Leading">Transmission error while the first one's counter-clockwise sides drive; in a ring its clockwise ones.</param>
/// <param name="Trailing">The same of the other sides.</param>
/// <param name="Backlash">Angular backlash that the flanks leave: least, mean, greatest.</param>
/// <param name="WorkingRadius">Radius of the second one's working circle, mm; 1 for a rack, so that a turn times it is a length in either case.</param>
/// <param name="LostAt">Turn of the first one, rad, at which nothing touches any more; null where something always does.</param>
/// <param name="Interference">The deepest; null where there is none.</param>
/// <param name="DoubleFlank">The roll without play; null where it was not asked for.</param>
/// <param name="Worst">The worst contact: where the deepest interference is, else where the second one lags or leads most.</param>
/// <param name="Track">Every position.</param>
public sealed record RollReport(
    RollRequest Request, int Positions, Deviation Leading, Deviation Trailing, RollRange Backlash, double WorkingRadius, double? LostAt,
    RollInterference? Interference, DoubleFlank? DoubleFlank, ContactView Worst, ImmutableArray<RollPoint> Track)
{
    /// <summary>True where the counter-clockwise stop is on left flanks: seen tip upward, a left flank is the counter-clockwise one outside, and in a ring the clockwise one.</summary>
    public bool IsLeadingLeft => Request.Second.Kind != RollKind.Ring;

    /// <summary>Transmission error while the first one's left flanks touch (ISO 21771: the left one seen tip upward).</summary>
    public Deviation Left => IsLeadingLeft ? Leading : Trailing;

    /// <summary>The same of its right flanks.</summary>
    public Deviation Right => IsLeadingLeft ? Trailing : Leading;

    /// <summary>How many mm of arc or way a rad of the second one is where lengths are given: on its reference circle where it is known, else on its working circle.</summary>
    public double ReferenceRadius => Request.Second.ReferenceRadius ?? WorkingRadius;

    /// <summary>True where nothing is in the way, something always touches, and there is play all the way.</summary>
    public bool Runs => Interference is null && LostAt is null && Backlash.Least >= 0;
}

/// <summary>Least, mean and greatest over a roll.</summary>
public readonly record struct RollRange(double Least, double Mean, double Greatest);

/// <summary>One position of a roll.</summary>
/// <param name="Turn">Turn of the first gear, rad.</param>
/// <param name="Leading">How far the second one leads, rad (of a rack mm), stopped counter-clockwise: against an even ratio.</param>
/// <param name="Trailing">The same stopped clockwise.</param>
/// <param name="Play">The play that flanks leave, rad (of a rack mm).</param>
/// <param name="Distance">Distance without play, mm; null where it was not asked for.</param>
public readonly record struct RollPoint(double Turn, double Leading, double Trailing, double Play, double? Distance);

/// <summary>Material in the way.</summary>
/// <param name="Kind">Whether a tip digs into a fillet, a tip into a root circle, or the teeth do not fit their gaps.</param>
/// <param name="Depth">
/// How deep along the normal, mm, the flanks carrying; where a tooth is wider than its gap, by how much along the normal of its flanks.
/// </param>
/// <param name="Turn">Turn of the first gear, rad.</param>
/// <param name="Tooth">Number of the first gear's tooth, counted from 1 counter-clockwise.</param>
/// <param name="FirstRadius">Radius on the first gear, mm.</param>
/// <param name="SecondRadius">Radius on the second gear, mm; of a rack the height.</param>
public sealed record RollInterference(RollObstacle Kind, double Depth, double Turn, int Tooth, double FirstRadius, double SecondRadius)
{
    /// <summary>Turn of the second one at which it is this deep, rad; of a rack its way, mm.</summary>
    internal double SecondTurn { get; init; }

    /// <summary>Where it is.</summary>
    internal Point Place { get; init; }
}

/// <summary>What is in the way.</summary>
public enum RollObstacle
{
    /// <summary>A tip digs into the other one's fillet.</summary>
    Fillet,

    /// <summary>A tip reaches below the other one's root circle.</summary>
    Root,

    /// <summary>A tooth is wider than the gap it stands in.</summary>
    Flanks,
}

/// <summary>The roll without play.</summary>
/// <param name="Distance">Deviation of the distance, mm: the radial composite deviation of the pair.</param>
/// <param name="Least">The least distance at which the pair turns, mm; in a ring the greatest. Nothing is left of the backlash there at the narrowest place.</param>
public sealed record DoubleFlank(Deviation Distance, double Least);
