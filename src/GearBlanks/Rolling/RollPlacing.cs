using GearBlanks.Curves;

namespace GearBlanks.Rolling;

/// <summary>
/// How two gears stand to one another: the first one's axis at the origin, the second one's on the X axis, contact about +X. Turns counter-clockwise; of a rack
/// its way against +Y stands for the turn.
/// </summary>
internal sealed class RollPlacing
{
    private readonly double _zero;

    /// <summary>Places a pair so that a tooth of the second one stands in the gap of the first one nearest to +X.</summary>
    /// <param name="first">One; no rack.</param>
    /// <param name="second">The other.</param>
    public RollPlacing(RollGear first, RollGear second)
    {
        First = first;
        Second = second;
        IsInternal = first.Kind == RollKind.Ring || second.Kind == RollKind.Ring;
        double perTooth = second.Pitch / first.Pitch;
        Ratio = IsInternal ? perTooth : -perTooth;
        Gap = (int)Math.Round((-first.Middles[0] / first.Pitch) - 0.5);
        double gap = GapMiddle(Wrapped(Gap, first.Teeth));
        Tooth = second.Kind == RollKind.Rack ? RollSpan.EndTeeth : 0;
        double facing = second.Kind == RollKind.External && !IsInternal ? Math.PI : 0;
        _zero = facing + (gap * Ratio) - second.Middles[Tooth];
    }

    public RollGear First { get; }

    public RollGear Second { get; }

    /// <summary>True for a ring and its pinion.</summary>
    public bool IsInternal { get; }

    /// <summary>The second one's turn for each rad of the first one's; of a rack mm.</summary>
    public double Ratio { get; }

    /// <summary>The first one's gap that lies nearest to +X: the number of the tooth before it, counted on without end from its first tooth; may be negative.</summary>
    public int Gap { get; }

    /// <summary>The second one's tooth that stands in it.</summary>
    public int Tooth { get; }

    /// <summary>The second one's turn that goes with a turn of the first one.</summary>
    public double TurnFor(double turn) => _zero + (Ratio * turn);

    /// <summary>How the first one stands.</summary>
    /// <param name="turn">Its turn, rad.</param>
    /// <param name="centre">How far its centre lies from its axis while it stands at 0.</param>
    public static Motion FirstAt(double turn, Vector centre) => Motion.Shift(centre).Then(Motion.Turn(turn));

    /// <summary>How the second one stands.</summary>
    /// <param name="turn">Its turn, rad; of a rack its way, mm.</param>
    /// <param name="distance">Distance of the axes, mm.</param>
    /// <param name="centre">How far its centre lies from its axis while it stands at 0.</param>
    public Motion SecondAt(double turn, double distance, Vector centre) => Second.Kind == RollKind.Rack
        ? Motion.TurnStep(1, 4).Then(Motion.Shift(new Vector(SecondAxis(distance).X, -turn)))
        : Motion.Shift(centre).Then(Motion.Turn(turn)).Then(Motion.Shift(SecondAxis(distance) - default(Point)));

    /// <summary>Place of the second one's axis.</summary>
    public Point SecondAxis(double distance) => new(Second.Kind == RollKind.Ring ? -distance : distance, 0);

    /// <summary>Number of the second one's tooth in a gap of the first one; null where a rack has none.</summary>
    public int? ToothIn(int gap)
    {
        int tooth = Tooth + (IsInternal ? gap - Gap : Gap - gap);
        int teeth = Second.Teeth;
        return Second.Kind == RollKind.Rack
            ? tooth >= 0 && tooth < teeth ? tooth : null
            : Wrapped(tooth, teeth);
    }

    /// <summary>The number, from 0, of a tooth counted on without end.</summary>
    public static int Wrapped(int tooth, int teeth) => tooth % teeth is var rest && rest < 0 ? rest + teeth : rest;

    /// <summary>Half the angle about the first one's axis within which its tips can reach the second one, rad; null where they cannot.</summary>
    /// <param name="distance">Distance of the axes, mm.</param>
    public double? Reach(double distance)
    {
        (double tip, double mate) = (First.TipRadius, Second.TipRadius);
        return Second.Kind switch
        {
            RollKind.Rack => Half((distance - mate) / tip),
            RollKind.Ring => Half(((mate * mate) - (tip * tip) - (distance * distance)) / (2 * tip * distance)),
            _ when IsInternal => Half(Cosine(distance, tip, mate)),
            _ => ReachWithin(distance, tip, mate),
        };
    }

    /// <summary>Half the angle about one axis within which points up to a radius can come within a mate's beside it, rad; null where none can.</summary>
    /// <param name="distance">Distance of the axes, mm.</param>
    /// <param name="radius">The radius, mm.</param>
    /// <param name="mate">The mate's, mm.</param>
    public static double? ReachWithin(double distance, double radius, double mate) => (radius * radius) + (mate * mate) < distance * distance
        ? Half(Cosine(distance, radius, mate))
        : Math.Asin(Math.Min(1, mate / distance));

    // Of the angle at which two circles cross.
    private static double Cosine(double distance, double radius, double mate) =>
        ((radius * radius) + (distance * distance) - (mate * mate)) / (2 * radius * distance);

    private static double? Half(double cosine) => cosine >= 1 ? null : cosine <= -1 ? Math.PI : Math.Acos(cosine);

    // Between a tooth and the next, rad in (-pi, pi].
    private double GapMiddle(int tooth)
    {
        double middle = First.Middles[tooth] + (First.Pitch / 2);
        return middle - (2 * Math.PI * Math.Round(middle / (2 * Math.PI)));
    }
}
