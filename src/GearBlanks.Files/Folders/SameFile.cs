namespace GearBlanks.Files.Folders;

/// <summary>Whether two names lead to one file.</summary>
public static class SameFile
{
    /// <summary>True where both, links followed, are one path.</summary>
    public static bool Are(string one, string other) => Real(one) == Real(other);

    // What cannot be looked at is told where it is read or written.
    private static string Real(string name)
    {
        try
        {
            return File.ResolveLinkTarget(name, returnFinalTarget: true)?.FullName ?? Path.GetFullPath(name);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException)
        {
            return name;
        }
    }
}
