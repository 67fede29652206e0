namespace GearBlanks.Files.Keys;

/// <summary>Which names can become a file's name on any system without leading out of its folder.</summary>
internal static class NameRules
{
    public const string Allowed =
        "1 to 64 ASCII letters, digits, spaces, - _ . + in quotes, starting with a letter or digit, not ending in a point or space";

    public const string AllowedLayer = "1 to 31 ASCII letters, digits, - and _ in quotes";

    private const int Longest = 64;

    private const int LongestLayer = 31;

    /// <summary>What is wrong with a name; null where nothing is.</summary>
    public static string? Complaint(string name) => name switch
    {
        "" => "The name is empty",
        { Length: > Longest } => "The name is too long",
        _ when !char.IsAsciiLetterOrDigit(name[0]) => "The name does not start with a letter or digit",
        _ when !name.All(IsAllowed) => "The name has a character that is not allowed",
        _ when name[^1] is '.' or ' ' => "The name ends in a point or a space",
        _ when IsDevice(name) => "Windows keeps this name for a device, so no file can have it",
        _ => null,
    };

    /// <summary>What is wrong with a layer's name; null where nothing is.</summary>
    public static string? LayerComplaint(string name) =>
        name.Length is 0 or > LongestLayer || !name.All(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_')
            ? "This cannot be a layer's name in every drawing format"
            : null;

    /// <summary>Two names with the same fold would give the same file on some system.</summary>
    public static string Fold(string name) => name.ToLowerInvariant().Replace(' ', '-');

    private static bool IsAllowed(char c) => char.IsAsciiLetterOrDigit(c) || c is ' ' or '-' or '_' or '.' or '+';

    private static bool IsDevice(string name)
    {
        var stem = name.Split('.')[0].TrimEnd().ToLowerInvariant();
        return stem is "con" or "prn" or "aux" or "nul"
            || (stem.Length == 4 && (stem.StartsWith("com", StringComparison.Ordinal) || stem.StartsWith("lpt", StringComparison.Ordinal))
                && char.IsAsciiDigit(stem[3]));
    }
}
