using System.Numerics;

namespace GearBlanks.Meshing.Builds;

/// <summary>
/// A stream of random bits: xoshiro256**, its state filled by SplitMix64. Sources: D. Blackman and S. Vigna, Scrambled Linear Pseudorandom Number
/// Generators, ACM Transactions on Mathematical Software 47 (2021); G. Steele, D. Lea and C. Flood, Fast Splittable Pseudorandom Number Generators, OOPSLA 2014.
/// </summary>
internal struct RandomStream
{
    private const ulong GoldenGamma = 0x9E3779B97F4A7C15;

    private ulong _s0;
    private ulong _s1;
    private ulong _s2;
    private ulong _s3;

    public RandomStream(ulong s0, ulong s1, ulong s2, ulong s3) => (_s0, _s1, _s2, _s3) = (s0, s1, s2, s3);

    /// <summary>The stream of a number among those of one seed.</summary>
    public static RandomStream Of(ulong seed, ulong number)
    {
        ulong first = seed;
        ulong state = Split(ref first) + number;
        return new RandomStream(Split(ref state), Split(ref state), Split(ref state), Split(ref state));
    }

    /// <summary>The next number of SplitMix64.</summary>
    public static ulong Split(ref ulong state)
    {
        ulong z = state += GoldenGamma;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }

    /// <summary>The next 64 bits.</summary>
    public ulong Next()
    {
        ulong result = BitOperations.RotateLeft(_s1 * 5, 7) * 9;
        ulong t = _s1 << 17;
        _s2 ^= _s0;
        _s3 ^= _s1;
        _s1 ^= _s2;
        _s0 ^= _s3;
        _s2 ^= t;
        _s3 = BitOperations.RotateLeft(_s3, 45);
        return result;
    }

    /// <summary>Fills a row with the next bits.</summary>
    public void Fill(Span<ulong> bits)
    {
        // A copy lives in registers.
        RandomStream copy = this;
        for (int i = 0; i < bits.Length; i++)
        {
            bits[i] = copy.Next();
        }

        this = copy;
    }
}
