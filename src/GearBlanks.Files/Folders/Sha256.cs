using System.Security.Cryptography;

namespace GearBlanks.Files.Folders;

/// <summary>The SHA-256 hash of FIPS 180-4, as a manifest writes it.</summary>
public static class Sha256
{
    /// <summary>The hash of some bytes as 64 lower-case hexadecimal digits.</summary>
    /// <param name="content">The bytes.</param>
    public static string HexOf(ReadOnlySpan<byte> content) => Convert.ToHexStringLower(SHA256.HashData(content));
}
