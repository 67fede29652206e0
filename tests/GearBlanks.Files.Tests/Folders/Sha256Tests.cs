using System.Text;
using GearBlanks.Files.Folders;

namespace GearBlanks.Files.Tests.Folders;

public class Sha256Tests
{
    // NIST, "Secure Hash Standard" example values (csrc.nist.gov, Cryptographic Standards and Guidelines, Example Values: SHA256), from memory.
    [Theory]
    [InlineData("abc", "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad")]
    [InlineData("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq", "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1")]
    public void Published_messages_have_their_published_hashes(string message, string hash) =>
        Assert.Equal(hash, Sha256.HexOf(Encoding.ASCII.GetBytes(message)));

    [Fact]
    public void Every_length_around_the_blocks_agrees_with_the_runtime()
    {
        byte[] content = [.. Enumerable.Range(0, 1000).Select(i => (byte)(i * i + 7 * i))];
        for (var length = 0; length <= content.Length; length++)
        {
            var expected = Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(content.AsSpan(0, length)));
            Assert.Equal(expected, Sha256.HexOf(content.AsSpan(0, length)));
        }
    }
}
