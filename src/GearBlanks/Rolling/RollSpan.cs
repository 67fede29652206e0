using GearBlanks.Teeth;

namespace GearBlanks.Rolling;

/// <summary>The positions of a roll: so many for each pitch of the first gear, over whole pitches.</summary>
/// <param name="PerPitch">Positions for each pitch.</param>
/// <param name="Pitches">Pitches rolled.</param>
internal readonly record struct RollSpan(int PerPitch, int Pitches)
{
    /// <summary>Teeth at each end of a rack that are not rolled over: their neighbours would be missing.</summary>
    public const int EndTeeth = 3;

    // 0.1 degree, or finer where teeth are small.
    private const int PositionsATurn = 3600;
    private const int LeastPerPitch = 60;

    // Flat arrays of some hundred megabytes at the most.
    private const int MostPositions = 5_000_000;

    /// <summary>How many positions there are.</summary>
    public int Count => (PerPitch * Pitches) + 1;

    /// <summary>What is to be rolled.</summary>
    /// <param name="first">The one that drives.</param>
    /// <param name="second">The other.</param>
    /// <param name="length">How far.</param>
    /// <exception cref="GearGeometryException">The way is too long, or a rack too short.</exception>
    public static RollSpan Of(RollGear first, RollGear second, RollLength length)
    {
        int perPitch = Math.Max(LeastPerPitch, (PositionsATurn + first.Teeth - 1) / first.Teeth);
        if (second.Kind == RollKind.Rack)
        {
            int free = second.Teeth - (2 * EndTeeth);
            return free >= 1
                ? new RollSpan(perPitch, free)
                : throw new GearGeometryException("rack-too-short", "The rack has too few teeth to roll over; teeth", second.Teeth, (2 * EndTeeth) + 1, "give it more teeth: three at either end are not rolled over");
        }

        long pitches = length switch
        {
            RollLength.FirstTurn => first.Teeth,
            RollLength.Turn => Math.Max(first.Teeth, second.Teeth),
            _ => (long)first.Teeth * second.Teeth / (long)System.Numerics.BigInteger.GreatestCommonDivisor(first.Teeth, second.Teeth),
        };
        return (perPitch * pitches) + 1 <= MostPositions
            ? new RollSpan(perPitch, (int)pitches)
            : throw new GearGeometryException("roll-too-long", "Until the same teeth meet again there are too many positions; positions", perPitch * pitches, MostPositions, "roll one turn");
    }

    /// <summary>Turn of the first gear at a position, rad.</summary>
    public double TurnAt(int position, int teeth) => 2 * Math.PI * position / ((double)PerPitch * teeth);
}

/// <summary>How far a pair is rolled.</summary>
public enum RollLength
{
    /// <summary>Until each gear has turned at least once.</summary>
    Turn,

    /// <summary>One turn of the gear that drives.</summary>
    FirstTurn,

    /// <summary>Until the same two teeth meet again.</summary>
    HuntingPeriod,
}
