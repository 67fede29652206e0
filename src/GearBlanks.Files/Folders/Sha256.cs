using System.Buffers.Binary;
using System.Numerics;
using System.Runtime.CompilerServices;

namespace GearBlanks.Files.Folders;

/// <summary>
/// The SHA-256 hash of FIPS 180-4. The runtime's own one loads a cryptographic library first, which takes longer than
/// all the hashing here and need not be installed where a native program runs.
/// </summary>
public static class Sha256
{
    private const int BlockBytes = 64;
    private const int LengthBytes = 8;

    // The first 32 bits of the fractional parts of the cube roots of the first 64 primes.
    private static ReadOnlySpan<uint> Constants =>
    [
        0x428A2F98, 0x71374491, 0xB5C0FBCF, 0xE9B5DBA5, 0x3956C25B, 0x59F111F1, 0x923F82A4, 0xAB1C5ED5,
        0xD807AA98, 0x12835B01, 0x243185BE, 0x550C7DC3, 0x72BE5D74, 0x80DEB1FE, 0x9BDC06A7, 0xC19BF174,
        0xE49B69C1, 0xEFBE4786, 0x0FC19DC6, 0x240CA1CC, 0x2DE92C6F, 0x4A7484AA, 0x5CB0A9DC, 0x76F988DA,
        0x983E5152, 0xA831C66D, 0xB00327C8, 0xBF597FC7, 0xC6E00BF3, 0xD5A79147, 0x06CA6351, 0x14292967,
        0x27B70A85, 0x2E1B2138, 0x4D2C6DFC, 0x53380D13, 0x650A7354, 0x766A0ABB, 0x81C2C92E, 0x92722C85,
        0xA2BFE8A1, 0xA81A664B, 0xC24B8B70, 0xC76C51A3, 0xD192E819, 0xD6990624, 0xF40E3585, 0x106AA070,
        0x19A4C116, 0x1E376C08, 0x2748774C, 0x34B0BCB5, 0x391C0CB3, 0x4ED8AA4A, 0x5B9CCA4F, 0x682E6FF3,
        0x748F82EE, 0x78A5636F, 0x84C87814, 0x8CC70208, 0x90BEFFFA, 0xA4506CEB, 0xBEF9A3F7, 0xC67178F2,
    ];

    /// <summary>The hash of some bytes as 64 lower-case hexadecimal digits.</summary>
    /// <param name="content">The bytes.</param>
    public static string HexOf(ReadOnlySpan<byte> content)
    {
        // The first 32 bits of the fractional parts of the square roots of the first eight primes.
        Span<uint> state = [0x6A09E667, 0xBB67AE85, 0x3C6EF372, 0xA54FF53A, 0x510E527F, 0x9B05688C, 0x1F83D9AB, 0x5BE0CD19];
        var whole = content.Length / BlockBytes * BlockBytes;
        for (var start = 0; start < whole; start += BlockBytes)
        {
            Mix(state, content.Slice(start, BlockBytes));
        }

        MixEnd(state, content[whole..], content.Length);
        Span<byte> hash = stackalloc byte[4 * state.Length];
        for (var i = 0; i < state.Length; i++)
        {
            BinaryPrimitives.WriteUInt32BigEndian(hash[(4 * i)..], state[i]);
        }

        return Convert.ToHexStringLower(hash);
    }

    // The rest is followed by a one bit, zeros, and the length in bits at the very end of a block.
    private static void MixEnd(Span<uint> state, ReadOnlySpan<byte> rest, long contentLength)
    {
        Span<byte> end = stackalloc byte[2 * BlockBytes];
        end.Clear();
        rest.CopyTo(end);
        end[rest.Length] = 0x80;
        var length = rest.Length + 1 + LengthBytes <= BlockBytes ? BlockBytes : 2 * BlockBytes;
        BinaryPrimitives.WriteInt64BigEndian(end[(length - LengthBytes)..], 8 * contentLength);
        for (var start = 0; start < length; start += BlockBytes)
        {
            Mix(state, end.Slice(start, BlockBytes));
        }
    }

    [SkipLocalsInit]
    private static void Mix(Span<uint> state, ReadOnlySpan<byte> block)
    {
        Span<uint> words = stackalloc uint[BlockBytes];
        Spread(words, block);
        var (a, b, c, d) = (state[0], state[1], state[2], state[3]);
        var (e, f, g, h) = (state[4], state[5], state[6], state[7]);

        // Eight rounds bring every variable back to its place, so nothing has to be moved.
        for (var i = 0; i < words.Length; i += 8)
        {
            Round(a, b, c, ref d, e, f, g, ref h, words[i]);
            Round(h, a, b, ref c, d, e, f, ref g, words[i + 1]);
            Round(g, h, a, ref b, c, d, e, ref f, words[i + 2]);
            Round(f, g, h, ref a, b, c, d, ref e, words[i + 3]);
            Round(e, f, g, ref h, a, b, c, ref d, words[i + 4]);
            Round(d, e, f, ref g, h, a, b, ref c, words[i + 5]);
            Round(c, d, e, ref f, g, h, a, ref b, words[i + 6]);
            Round(b, c, d, ref e, f, g, h, ref a, words[i + 7]);
        }

        (state[0], state[1], state[2], state[3]) = (state[0] + a, state[1] + b, state[2] + c, state[3] + d);
        (state[4], state[5], state[6], state[7]) = (state[4] + e, state[5] + f, state[6] + g, state[7] + h);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Round(uint a, uint b, uint c, ref uint d, uint e, uint f, uint g, ref uint h, uint word)
    {
        h += Turned(e, 6, 11, 25) + ((e & f) ^ (~e & g)) + word;
        d += h;
        h += Turned(a, 2, 13, 22) + ((a & b) ^ (a & c) ^ (b & c));
    }

    // The block's words and those that follow from them, each with its constant added.
    private static void Spread(Span<uint> words, ReadOnlySpan<byte> block)
    {
        for (var i = 0; i < 16; i++)
        {
            words[i] = BinaryPrimitives.ReadUInt32BigEndian(block[(4 * i)..]);
        }

        for (var i = 16; i < words.Length; i++)
        {
            var (early, late) = (words[i - 15], words[i - 2]);
            words[i] = words[i - 16] + words[i - 7]
                + (BitOperations.RotateRight(early, 7) ^ BitOperations.RotateRight(early, 18) ^ (early >> 3))
                + (BitOperations.RotateRight(late, 17) ^ BitOperations.RotateRight(late, 19) ^ (late >> 10));
        }

        for (var i = 0; i < words.Length; i++)
        {
            words[i] += Constants[i];
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static uint Turned(uint word, int first, int second, int third) =>
        BitOperations.RotateRight(word, first) ^ BitOperations.RotateRight(word, second) ^ BitOperations.RotateRight(word, third);
}
