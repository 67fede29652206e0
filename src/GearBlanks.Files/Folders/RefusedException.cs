namespace GearBlanks.Files.Folders;

/// <summary>Something that a person has to put right before anything can be written; nothing was changed.</summary>
internal sealed class RefusedException(string message, string allowed, string? value = null) : Exception(message)
{
    public string Allowed { get; } = allowed;

    public string? Value { get; } = value;
}
