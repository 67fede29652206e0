using GearBlanks.Mechanisms;

namespace GearBlanks.Files.Drawings;

/// <summary>What is wrong with a drawing, found while it is read; becomes a problem at the reader's edge.</summary>
internal sealed class DrawingException(int line, string? value, string message, string? allowed) : Exception(message)
{
    public Problem In(string file) => new(new Place(file, line, 0), "", value, Message, allowed);
}
