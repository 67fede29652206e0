using GearBlanks.Mechanisms;

namespace GearBlanks.Files.Drawings;

/// <summary>What is wrong with a drawing, found while it is read; becomes a problem at the reader's edge.</summary>
internal sealed class DrawingException(int line, string? value, string message, string? allowed) : Exception(message)
{
    /// <summary>The attribute or option that is wrong; empty where there is none.</summary>
    public string Key { get; init; } = "";

    /// <summary>The nearest that works; null where there is none.</summary>
    public string? Nearest { get; init; }

    public Problem In(string file) => new(new Place(file, line, 0), Key, value, Message, allowed, Nearest);
}
