using GearBlanks.Cutting;

namespace GearBlanks.Files.Tests.Readers;

/// <summary>Collects in words how a reading differs from what was drawn; empty where they agree.</summary>
public sealed class Differences
{
    private readonly List<string> _found = [];

    public IReadOnlyList<string> Found => _found;

    public void Add(string difference) => _found.Add(difference);

    public void Expect<T>(string what, T wanted, T read)
    {
        if (!EqualityComparer<T>.Default.Equals(wanted, read))
        {
            Add($"{what}: drawn {wanted}, read {read}");
        }
    }

    public void Expect(string what, double wanted, double read, double tolerance)
    {
        if (!(Math.Abs(wanted - read) <= tolerance))
        {
            Add(FormattableString.Invariant($"{what}: drawn {wanted:F6}, read {read:F6}"));
        }
    }

    public void Expect(string what, Extent wanted, Extent read, double tolerance)
    {
        Expect(what + ", left", wanted.Left, read.Left, tolerance);
        Expect(what + ", bottom", wanted.Bottom, read.Bottom, tolerance);
        Expect(what + ", right", wanted.Right, read.Right, tolerance);
        Expect(what + ", top", wanted.Top, read.Top, tolerance);
    }

    /// <summary>One by one, in order.</summary>
    public void Expect(IReadOnlyList<Shape> wanted, IReadOnlyList<Shape> read, double tolerance)
    {
        Expect("number of shapes", wanted.Count, read.Count);
        for (int i = 0; i < Math.Min(wanted.Count, read.Count); i++)
        {
            string what = $"shape {i + 1} on {wanted[i].Layer}";
            Expect(what + ", layer", wanted[i].Layer, read[i].Layer);
            Expect(what + ", closed", wanted[i].Closed, read[i].Closed);
            Expect(what, wanted[i].Box, read[i].Box, tolerance);

            // A band of the tolerance's width along the box's sides.
            double band = 2 * tolerance * (wanted[i].Box.Width + wanted[i].Box.Height);
            Expect(what + ", area", wanted[i].Area, read[i].Area, band);
        }
    }
}
