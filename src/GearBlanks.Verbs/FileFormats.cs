using System.Collections.Immutable;
using GearBlanks.Cutting;
using GearBlanks.Files.Dxf;
using GearBlanks.Files.Png;
using GearBlanks.Files.Svg;
using GearBlanks.Mechanisms;

namespace GearBlanks.Verbs;

/// <summary>The formats that a part can be written in.</summary>
public enum FileFormat
{
    /// <summary>DXF.</summary>
    Dxf,

    /// <summary>SVG.</summary>
    Svg,

    /// <summary>PNG: a picture to look at, not to cut by.</summary>
    Png,
}

/// <summary>What a format's files are called and how they are written.</summary>
internal static class FileFormats
{
    /// <summary>A file name's ending, with its point.</summary>
    public static string EndingOf(FileFormat format) => format switch
    {
        FileFormat.Dxf => ".dxf",
        FileFormat.Svg => ".svg",
        FileFormat.Png => ".png",
        _ => throw new ArgumentOutOfRangeException(nameof(format), format, null),
    };

    /// <summary>The format that a file's name asks for, or the problem that it asks for none.</summary>
    public static (FileFormat? Format, ImmutableArray<Problem> Problems) OfFile(string file)
    {
        foreach (FileFormat format in Enum.GetValues<FileFormat>())
        {
            if (file.EndsWith(EndingOf(format), StringComparison.OrdinalIgnoreCase))
            {
                return (format, []);
            }
        }

        return (null, CommandLine.Problem("--out", file, "The file's name does not say which format it should have", "a name that ends in .dxf, .svg or .png"));
    }

    /// <summary>What stands in the way of files of these formats on this machine; nothing where all can be written.</summary>
    /// <param name="formats">The formats.</param>
    /// <param name="option">The option that asks for them.</param>
    /// <param name="value">Its value.</param>
    public static ImmutableArray<Problem> ProblemsOf(IEnumerable<FileFormat> formats, string option, string value) =>
        formats.Contains(FileFormat.Png) && PngLibrary.FindObstacle() is { } obstacle
            ? CommandLine.Problem(option, value, obstacle, "dxf and svg, or install the program whole, with that library beside it")
            : [];

    public static byte[] Write(Drawing drawing, FileFormat format, DxfVersion version) => format switch
    {
        FileFormat.Dxf => DxfWriter.Write(drawing, version),
        FileFormat.Svg => SvgWriter.Write(drawing),
        FileFormat.Png => PngWriter.Write(drawing),
        _ => throw new ArgumentOutOfRangeException(nameof(format), format, null),
    };
}
