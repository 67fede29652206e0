namespace GearBlanks.Cli.Arguments;

/// <summary>Tells words that look like an option's name from values.</summary>
internal static class OptionLike
{
    /// <summary>True for <c>--json</c> and <c>-j</c>, but not for <c>-0.3</c> or <c>-</c>.</summary>
    public static bool Is(string word) => word.Length > 1 && word[0] == '-' && !char.IsAsciiDigit(word[1]) && word[1] != '.';

    /// <summary>True for a long name, where a value was forgotten.</summary>
    public static bool IsLong(string word) => Is(word) && word.StartsWith("--", StringComparison.Ordinal);
}
