using GearBlanks.Findings;

namespace GearBlanks.Meshing;

/// <summary>The least number of steps that brings a miss to nothing, by secants: what is looked for is nearly straight in whatever is changed.</summary>
internal static class LeastSteps
{
    // Every so many secants the bracket is halved, so that a bent figure cannot hold one end fast.
    private const int Halving = 4;

    /// <summary>The steps; null where none of them brings it to nothing, or the first one already makes it worse or leaves it.</summary>
    /// <param name="atZero">The miss without a step; positive.</param>
    /// <param name="most">The most steps.</param>
    /// <param name="missAt">The miss after so many steps, nothing where it is not above zero; null where there is no such thing, as then with more steps.</param>
    public static int? Of(double atZero, int most, Func<int, double?> missAt)
    {
        (int Steps, double Miss) low = (0, atZero);
        (int Steps, double Miss)? high = null;
        int next = 1;
        for (int tries = 1; low.Steps + 1 < (high?.Steps ?? most + 1); tries++)
        {
            next = Math.Clamp(next, low.Steps + 1, high?.Steps - 1 ?? most);
            if (missAt(next) is not { } miss)
            {
                most = next - 1;
                next = (low.Steps + next) / 2;
                continue;
            }

            if (high is null && miss > Limit.Rounding && miss >= low.Miss)
            {
                return null;
            }

            (int Steps, double Miss) before = low;
            (low, high) = miss > Limit.Rounding ? ((next, miss), high) : (low, (next, miss));
            next = high is not { } enough ? low.Steps + Secant(low, before, most)
                : tries % Halving == 0 || double.IsInfinity(enough.Miss) ? (low.Steps + enough.Steps) / 2
                : low.Steps + Secant(low, enough, enough.Steps);
        }

        return high?.Steps;
    }

    // Steps from one end to where the straight line through both comes to zero.
    private static int Secant((int Steps, double Miss) from, (int Steps, double Miss) other, int most) =>
        (int)Math.Min(most, Math.Ceiling(from.Miss * (other.Steps - from.Steps) / (from.Miss - other.Miss)));
}
