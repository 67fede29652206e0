using SkiaSharp;

namespace GearBlanks.Files.Png;

/// <summary>Skia's library, which lies beside the program and draws pictures. It is loaded here and in <see cref="PngWriter"/>, and by nothing else.</summary>
public static class PngLibrary
{
    private const string Missing = "Pictures cannot be drawn: the library libSkiaSharp is missing beside the program, or does not fit it or this system";

    /// <summary>What stands in the way of pictures on this machine, a sentence without its full stop; null where nothing does.</summary>
    public static string? FindObstacle()
    {
        try
        {
            return SkiaSharpVersion.CheckNativeLibraryCompatible(throwIfIncompatible: false) ? null : Missing;
        }
        catch (Exception e) when (e is TypeInitializationException or TypeLoadException or BadImageFormatException)
        {
            // Skia's bindings wrap whatever goes wrong with their library, a missing one and a strange one alike.
            return Missing;
        }
    }
}
