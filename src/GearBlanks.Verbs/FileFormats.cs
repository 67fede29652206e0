using System.Collections.Immutable;
using GearBlanks.Cutting;
using GearBlanks.Files.Dxf;
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
}

/// <summary>What a format's files are called and how they are written.</summary>
internal static class FileFormats
{
    /// <summary>A file name's ending, with its point.</summary>
    public static string EndingOf(FileFormat format) => format == FileFormat.Dxf ? ".dxf" : ".svg";

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

        return (null, CommandLine.Problem("--out", file, "The file's name does not say which format it should have", "a name that ends in .dxf or .svg"));
    }

    public static byte[] Write(Drawing drawing, FileFormat format, DxfVersion version) =>
        format == FileFormat.Dxf ? DxfWriter.Write(drawing, version) : SvgWriter.Write(drawing);
}
