using SkiaSharp;

namespace GearBlanks.Files.Png;

/// <summary>Skia's library, which lies beside the program and draws pictures. It is loaded here and in <see cref="PngWriter"/>, and by nothing else.</summary>
public static class PngLibrary
{
    /// <summary>What stands in the way of pictures on this machine, a sentence without its full stop; null where nothing does.</summary>
    public static string? FindObstacle()
    {
        try
        {
            return SkiaSharpVersion.CheckNativeLibraryCompatible(throwIfIncompatible: false)
                ? null
                : "Pictures cannot be drawn: the library libSkiaSharp beside the program is of another version";
        }
        catch (Exception e) when (e is DllNotFoundException or EntryPointNotFoundException or BadImageFormatException)
        {
            return "Pictures cannot be drawn: the library libSkiaSharp is missing beside the program, or is not for this system";
        }
    }
}
