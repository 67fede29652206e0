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
}
