using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using GearBlanks.Mechanisms;

namespace GearBlanks.Files.Drawings;

/// <summary>
/// Reads a gear from a drawing of any origin, DXF or SVG: one closed contour with its holes. Lines and circular arcs stay what they are; splines and ellipses
/// become arcs within 0.0002 mm. Whatever is wrong with the file comes back as a problem.
/// </summary>
public static class DrawingReader
{
    // A gear of a thousand teeth drawn point by point has some megabytes.
    private const int MostBytes = 64 << 20;

    private static ReadOnlySpan<byte> BinaryMark => "AutoCAD Binary DXF"u8;

    /// <summary>Reads the file.</summary>
    /// <param name="file">The file as the user named it.</param>
    /// <param name="choice">What is to be read of it.</param>
    public static Outcome<DrawnGear> Read(string file, DrawingChoice choice)
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(choice);
        try
        {
            byte[] bytes = Bytes(file);
            return Parse(bytes, file, choice);
        }
        catch (DrawingException e)
        {
            return ImmutableArray.Create(e.In(file));
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            return Refused(file, "There is no such file", "the name of a DXF or SVG file");
        }
        catch (UnauthorizedAccessException)
        {
            return Refused(file, "This file may not be read: its permissions forbid it, or it is a folder", "the name of a DXF or SVG file");
        }
        catch (Exception e) when (e is IOException or ArgumentException or NotSupportedException)
        {
            return Refused(file, "This file cannot be read", "the name of a DXF or SVG file");
        }
    }

    /// <summary>Reads a drawing from its bytes.</summary>
    internal static Outcome<DrawnGear> Parse(ReadOnlySpan<byte> bytes, string file, DrawingChoice choice)
    {
        try
        {
            return IsSvg(bytes) ? OfSvg(bytes, choice) : OfDxf(bytes, choice);
        }
        catch (DrawingException e)
        {
            return ImmutableArray.Create(e.In(file));
        }
    }

    private static DrawnGear OfDxf(ReadOnlySpan<byte> bytes, DrawingChoice choice)
    {
        if (bytes.StartsWith(BinaryMark))
        {
            throw new DrawingException(0, null, "This is a binary DXF file", "the drawing saved as ASCII DXF");
        }

        if (bytes.StartsWith("AC10"u8))
        {
            throw new DrawingException(0, null, "This is a DWG file", "the drawing saved as ASCII DXF");
        }

        if (bytes.Contains((byte)0))
        {
            throw new DrawingException(0, null, "This is a binary file, not a drawing", "a drawing saved as DXF (ASCII) or SVG");
        }

        DxfContent content = DxfContent.Of(Encoding.Latin1.GetString(bytes));
        (double unit, string? remark) = DrawnUnits.OfDxf(content.Unit);
        var strokes = new DxfStrokes(content);
        strokes.Read(unit);
        return DrawnPart.Of(strokes.Strokes, choice, [.. remark is null ? Array.Empty<string>() : [remark], .. strokes.Remarks]);
    }

    private static DrawnGear OfSvg(ReadOnlySpan<byte> bytes, DrawingChoice choice)
    {
        SvgContent content = SvgContent.Of(Encoding.UTF8.GetString(bytes).TrimStart('\uFEFF'));
        return DrawnPart.Of(content.Strokes, choice, content.Remarks);
    }

    // XML begins with a bracket; a group code never does.
    private static bool IsSvg(ReadOnlySpan<byte> bytes)
    {
        ReadOnlySpan<byte> rest = bytes.StartsWith((ReadOnlySpan<byte>)[0xEF, 0xBB, 0xBF]) ? bytes[3..] : bytes;
        int first = rest.IndexOfAnyExcept(" \t\r\n"u8);
        return first >= 0 && rest[first] == '<';
    }

    private static byte[] Bytes(string file)
    {
        if (Directory.Exists(file))
        {
            throw new DrawingException(0, null, "This is a folder", "the name of a DXF or SVG file");
        }

        using FileStream stream = File.OpenRead(file);
        if (stream.CanSeek && stream.Length > MostBytes)
        {
            throw TooLarge();
        }

        using var content = new MemoryStream(stream.CanSeek ? (int)stream.Length : 0);
        byte[] buffer = new byte[1 << 16];
        for (int read = stream.Read(buffer); read > 0; read = stream.Read(buffer))
        {
            content.Write(buffer, 0, read);
            if (content.Length > MostBytes)
            {
                throw TooLarge();
            }
        }

        return content.ToArray();
    }

    private static DrawingException TooLarge() => new(
        0, null, "This file is too large to be one gear's drawing", string.Create(CultureInfo.InvariantCulture, $"at most {MostBytes >> 20} MiB: leave out what is not the contour"));

    private static Outcome<DrawnGear> Refused(string file, string message, string allowed) =>
        ImmutableArray.Create(new Problem(new Place(file, 0, 0), "", null, message, allowed));
}
