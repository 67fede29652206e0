using System.Globalization;
using System.Text.RegularExpressions;
using GearBlanks.Files.Tests.Readers;

namespace GearBlanks.Files.Tests.Png;

/// <summary>A picture as GDAL reads it, through libpng: three bytes a pixel.</summary>
internal sealed partial class GdalPicture
{
    private readonly byte[] _bytes;

    private GdalPicture(int width, int height, byte[] bytes)
    {
        Width = width;
        Height = height;
        _bytes = bytes;
    }

    public int Width { get; }

    public int Height { get; }

    public static GdalPicture Read(string file)
    {
        ReaderProcess.Output info = ReaderProcess.Run("gdalinfo", file);
        Assert.True(info.ExitCode == 0, info.Errors);
        Match size = SizeLine().Match(info.Text);
        (int width, int height) = (Number(size.Groups[1].Value), Number(size.Groups[2].Value));

        // ENVI files are bare pixels, with a text beside them.
        string pixels = Path.ChangeExtension(file, ".pixels");
        ReaderProcess.Output made = ReaderProcess.Run("gdal_translate", "-q", "-of", "ENVI", "-co", "INTERLEAVE=BIP", "-b", "1", "-b", "2", "-b", "3", file, pixels);
        Assert.True(made.ExitCode == 0, made.Errors);
        byte[] bytes = File.ReadAllBytes(pixels);
        Assert.Equal(3 * width * height, bytes.Length);
        return new GdalPicture(width, height, bytes);
    }

    public (byte Red, byte Green, byte Blue) At(int x, int y)
    {
        int start = 3 * ((y * Width) + x);
        return (_bytes[start], _bytes[start + 1], _bytes[start + 2]);
    }

    /// <summary>How much ink a pixel has: 0 for white, 1 for black.</summary>
    public double Ink(int x, int y)
    {
        (byte red, byte green, byte blue) = At(x, y);
        return 1 - ((red + green + blue) / (3 * 255.0));
    }

    private static int Number(string text) => int.Parse(text, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^Size is (\d+), (\d+)", RegexOptions.Multiline)]
    private static partial Regex SizeLine();
}
