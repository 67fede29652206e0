namespace GearBlanks.Files.Keys;

/// <summary>Finds the name somebody most likely meant.</summary>
public static class Nearest
{
    /// <summary>The nearest of the names, the first of equally near ones; null where none is near: more than a third of the letters differ.</summary>
    public static string? To(string written, IEnumerable<string> names)
    {
        var (best, bestDistance) = ((string?)null, int.MaxValue);
        var folded = Fold(written);
        foreach (var name in names)
        {
            var most = Math.Max(folded.Length, name.Length) / 3;
            if (Math.Abs(folded.Length - name.Length) > most)
            {
                continue;
            }

            var distance = Distance(folded, Fold(name));
            if (distance <= most && distance < bestDistance)
            {
                (best, bestDistance) = (name, distance);
            }
        }

        return best;
    }

    /// <summary>
    /// Fewest insertions, deletions, replacements and swaps of neighbours that turn one text into the other, each place edited once
    /// (optimal string alignment).
    /// </summary>
    internal static int Distance(string a, string b)
    {
        var (before, previous, current) = (new int[b.Length + 1], new int[b.Length + 1], new int[b.Length + 1]);
        for (var j = 0; j <= b.Length; j++)
        {
            previous[j] = j;
        }

        for (var i = 1; i <= a.Length; i++)
        {
            current[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var replaced = previous[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                current[j] = Math.Min(replaced, Math.Min(previous[j], current[j - 1]) + 1);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                {
                    current[j] = Math.Min(current[j], before[j - 2] + 1);
                }
            }

            (before, previous, current) = (previous, current, before);
        }

        return previous[b.Length];
    }

    // Case and the choice of separator are the commonest slips and cost nothing.
    private static string Fold(string name) => name.ToLowerInvariant().Replace('_', '-').Replace(' ', '-');
}
