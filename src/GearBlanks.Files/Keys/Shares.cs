using GearBlanks.Files.Toml;

namespace GearBlanks.Files.Keys;

/// <summary>The two shares of a split, which are one whole together.</summary>
internal static class Shares
{
    public const string Key = "split";

    // Shares are written with a few decimals: a third is .333 and .667.
    private const double Tolerance = 0.0011;

    public static void Check(Entries table, ProblemList problems)
    {
        if (table.Items(Key) is [{ Value: double first }, { Value: double second }] && Math.Abs(first + second - 1) > Tolerance)
        {
            table.Refuse(
                problems, Key, "The two shares do not add up to 1", "two numbers from 0 to 1 that add up to 1",
                $"[{Keys.Key.Written(first)}, {Keys.Key.Written(Math.Round(1 - first, 9))}]");
        }
    }
}
