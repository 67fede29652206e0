namespace GearBlanks.Files.Folders;

/// <summary>
/// The hidden names beside an output that say what state it is in, so that the next run can tidy up after a crash.
/// Under a new name lies what is being made: nothing in it is the only copy of anything. Under an old name lies a whole
/// folder: the former one, or for an instant the new one just before it takes its place.
/// </summary>
internal static class TemporaryNames
{
    private const int RandomDigits = 16;

    public static string New(OutputPath path) => Make(path, ".new-");

    public static string Old(OutputPath path) => Make(path, ".old-");

    /// <summary>What former runs left under new names.</summary>
    public static IReadOnlyList<string> AllNew(OutputPath path) => All(path, ".new-");

    /// <summary>What former runs left under old names.</summary>
    public static IReadOnlyList<string> AllOld(OutputPath path) => All(path, ".old-");

    private static string Make(OutputPath path, string middle) =>
        Path.Join(path.Parent, $".{path.Name}{middle}{Guid.NewGuid().ToString("N")[..RandomDigits]}");

    private static List<string> All(OutputPath path, string middle)
    {
        var start = "." + path.Name + middle;
        var options = new EnumerationOptions { AttributesToSkip = 0, IgnoreInaccessible = false, MatchType = MatchType.Simple };
        return [.. Directory.EnumerateFileSystemEntries(path.Parent, "*", options)
            .Where(entry => IsMade(Path.GetFileName(entry), start))
            .Order(StringComparer.Ordinal)];
    }

    private static bool IsMade(string name, string start) =>
        name.Length == start.Length + RandomDigits
        && name.StartsWith(start, StringComparison.Ordinal)
        && name.Skip(start.Length).All(char.IsAsciiHexDigitLower);
}
