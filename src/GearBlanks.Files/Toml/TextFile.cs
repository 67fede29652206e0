using System.Text;
using GearBlanks.Files.Keys;
using GearBlanks.Mechanisms;

namespace GearBlanks.Files.Toml;

/// <summary>Reads a small text file whole; whatever stands in the way becomes a problem.</summary>
internal static class TextFile
{
    // A job is some kilobytes; what is larger is not one, and would only be slow to refuse later.
    private const int MostBytes = 1 << 20;

    /// <summary>The text; null where it cannot be had.</summary>
    public static string? Read(string file, ProblemList problems)
    {
        try
        {
            if (string.IsNullOrWhiteSpace(file))
            {
                return Refuse(file, problems, "No file name is given");
            }

            return Directory.Exists(file)
                ? Refuse(file, problems, "This is a directory", "a job file, such as dial.toml")
                : Decode(Bytes(file), file, problems);
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            return Refuse(file, problems, "There is no such file", null, Neighbour(file));
        }
        catch (UnauthorizedAccessException)
        {
            return Refuse(file, problems, "This file may not be read: its permissions forbid it");
        }
        catch (Exception e) when (e is IOException or ArgumentException or NotSupportedException)
        {
            return Refuse(file, problems, $"This file cannot be read ({ProblemList.Shown(e.Message)})");
        }
    }

    private static byte[]? Bytes(string file)
    {
        using var stream = File.OpenRead(file);
        var buffer = new byte[stream.CanSeek && stream.Length > 0 && stream.Length < MostBytes ? (int)stream.Length + 1 : MostBytes + 1];
        var length = stream.ReadAtLeast(buffer, buffer.Length, throwOnEndOfStream: false);
        return length > MostBytes ? null : buffer[..length];
    }

    private static string? Decode(byte[]? bytes, string file, ProblemList problems)
    {
        if (bytes is null)
        {
            return Refuse(file, problems, "This file is too large to be a job or a profile", "at most 1 MiB");
        }

        if (bytes is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..])
        {
            return Refuse(file, problems, "This file is UTF-16 text", "UTF-8 text: save it again with that encoding");
        }

        var zero = Array.IndexOf(bytes, (byte)0);
        if (zero >= 0)
        {
            return Refuse(file, problems, "This is a binary file, not text", "UTF-8 text");
        }

        try
        {
            return new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(bytes);
        }
        catch (DecoderFallbackException e)
        {
            var line = bytes.AsSpan(0, Math.Clamp(e.Index, 0, bytes.Length)).Count((byte)'\n') + 1;
            problems.Add(new Place(file, line, 0), "", null, "This line is not UTF-8 text", "UTF-8 text: save it again with that encoding");
            return null;
        }
    }

    private static string? Refuse(string file, ProblemList problems, string message, string? allowed = null, string? nearest = null)
    {
        problems.Add(new Place(file ?? "", 0, 0), "", null, message, allowed, nearest);
        return null;
    }

    // A file of a similar name in the same place.
    private static string? Neighbour(string file)
    {
        try
        {
            var folder = Path.GetDirectoryName(file) is { Length: > 0 } given ? given : ".";
            var names = Directory.EnumerateFiles(folder, "*.toml").Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal);
            return Nearest.To(Path.GetFileName(file), names);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException)
        {
            return null;
        }
    }
}
