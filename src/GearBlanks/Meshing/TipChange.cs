using GearBlanks.Findings;
using GearBlanks.Teeth;

namespace GearBlanks.Meshing;

/// <summary>Shorter tips, in the words of each kind: a smaller tip diameter, a ring's greater one, a rack's smaller tip height.</summary>
internal static class TipChange
{
    // The tip keeps this share of the way to the form circle.
    private const double KeptFlank = 0.01;

    // mm, of a tip diameter or a rack's tip height.
    private const double Grid = 0.01;

    /// <summary>The sentence for a tip shorter by a length, mm.</summary>
    public static string By(Toothing one, string name, double shorter)
    {
        string by = Words.Mm(Math.Ceiling((one is RackBar ? 1 : 2) * shorter * 1000) / 1000);
        return $"{Verb(one, isInSentence: false)} of {name} by {by}.";
    }

    /// <summary>The start of a sentence for the longest tip with room, on the grid of hundredths that people type in; null where no tip has.</summary>
    /// <param name="one">Whose tip changes.</param>
    /// <param name="name">Its name.</param>
    /// <param name="room">Room with a changed tip, mm; enough where it is not negative. The shorter the tip the more there is.</param>
    public static string? To(Toothing one, string name, Func<Toothing, double> room)
    {
        (double tip, double form) = Ends(one);

        // A step less than the flank has: the grid may take one more.
        int most = (int)((1 - KeptFlank) * Math.Abs(tip - form) / Grid) - 1;
        return LeastSteps.Of(-room(one), most, Miss) is { } steps ? $"{Verb(one, isInSentence: false)} of {name} to {Words.Mm(Shortened(one, steps * Grid))}" : null;

        double? Miss(int steps)
        {
            try
            {
                return -room(Toothing.Of(one.Data.WithTip(Shortened(one, steps * Grid))));
            }
            catch (GearGeometryException)
            {
                return null;
            }
        }
    }

    /// <summary>What is done to the tip.</summary>
    public static string Verb(Toothing one, bool isInSentence)
    {
        string verb = one switch
        {
            RackBar => "Lower the tip height",
            RingGear => "Raise the tip diameter",
            _ => "Lower the tip diameter",
        };
        return isInSentence ? char.ToLowerInvariant(verb[0]) + verb[1..] : verb;
    }

    /// <summary>Tip diameter, of a rack tip height, shorter by at least a length, mm, on the grid of hundredths.</summary>
    public static double Shortened(Toothing one, double by)
    {
        double tip = Ends(one).Tip;
        return OnGrid(one, one is RingGear ? tip + by : tip - by);
    }

    private static (double Tip, double Form) Ends(Toothing one) => one switch
    {
        RackBar rack => (rack.TipHeight, rack.FormHeight),
        _ => (2 * ((Gear)one).TipRadius, 2 * ((Gear)one).FormRadius),
    };

    // On the grid of hundredths, rounded to the safe side, so that typing it in is enough.
    private static double OnGrid(Toothing one, double tip) =>
        one is RingGear ? Math.Ceiling((tip * 100) + 1e-3) / 100 : Math.Floor((tip * 100) - 1e-3) / 100;
}
