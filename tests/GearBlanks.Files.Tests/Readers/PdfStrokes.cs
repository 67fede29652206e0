using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;
using GearBlanks.Cutting;

namespace GearBlanks.Files.Tests.Readers;

/// <summary>
/// The stroked paths of a one-page PDF, in points, Y upwards: where a reader has put the lines' middles, stroke width left out.
/// Knows what drawings need: q, Q, cm, m, l, c, h, colours and the painting operators.
/// </summary>
public sealed partial class PdfStrokes
{
    private readonly List<Stroke> _paths = [];
    private readonly List<double> _operands = [];
    private readonly Stack<double[]> _saved = [];
    private double[] _matrix = [1, 0, 0, 1, 0, 0];
    private (double X, double Y) _at;
    private Extent _box = Extent.Nothing;
    private bool _closed;
    private string _colour = "";

    private PdfStrokes(double width, double height) => (Width, Height) = (width, height);

    /// <summary>One path: closed or not, its middle line's box in points, and the numbers of its colour.</summary>
    public sealed record Stroke(bool Closed, Extent Box, string Colour);

    /// <summary>The page's width, pt.</summary>
    public double Width { get; }

    /// <summary>The page's height, pt.</summary>
    public double Height { get; }

    /// <summary>The paths in the order they are drawn.</summary>
    public IReadOnlyList<Stroke> Paths => _paths;

    public static PdfStrokes Read(string file)
    {
        byte[] bytes = File.ReadAllBytes(file);
        string text = Encoding.Latin1.GetString(bytes);
        Match page = MediaBox().Match(text);
        PdfStrokes strokes = new(Number(page.Groups[1].Value), Number(page.Groups[2].Value));
        foreach (Match stream in Streams().Matches(text))
        {
            strokes.Draw(Inflated(bytes.AsSpan(stream.Index + stream.Length)));
        }

        return strokes;
    }

    private static string Inflated(ReadOnlySpan<byte> compressed)
    {
        using ZLibStream stream = new(new MemoryStream(compressed.ToArray()), CompressionMode.Decompress);
        using StreamReader reader = new(stream, Encoding.Latin1);
        return reader.ReadToEnd();
    }

    private void Draw(string content)
    {
        foreach (string token in content.Split((char[])[' ', '\n', '\r'], StringSplitOptions.RemoveEmptyEntries))
        {
            if (Numbers.TryParse(token, out double number))
            {
                _operands.Add(number);
            }
            else
            {
                Do(token);
                _operands.Clear();
            }
        }
    }

    private void Do(string operation)
    {
        switch (operation)
        {
            case "q":
                _saved.Push(_matrix);
                break;
            case "Q":
                _matrix = _saved.Pop();
                break;
            case "cm":
                _matrix = Product([.. _operands], _matrix);
                break;
            case "m" or "l":
                _at = Placed(0);
                Cover(_at);
                break;
            case "c":
                CoverCubic(_at, Placed(0), Placed(2), Placed(4));
                _at = Placed(4);
                break;
            case "h":
                _closed = true;
                break;
            case "S":
                _paths.Add(new Stroke(_closed, _box, _colour));
                Forget();
                break;
            case "RG" or "SCN":
                _colour = string.Join(' ', _operands);
                break;
            case "n" or "f" or "f*":
                Forget();
                break;
        }
    }

    // A move alone after closing, as cairo leaves it, adds a point that is there already.
    private void Forget() => (_box, _closed) = (Extent.Nothing, false);

    private void Cover((double X, double Y) p) => _box = _box.With(new Extent(p.X, p.Y, p.X, p.Y));

    private void CoverCubic((double X, double Y) a, (double X, double Y) b, (double X, double Y) c, (double X, double Y) d)
    {
        Cover(d);
        foreach (double t in Extrema(a.X, b.X, c.X, d.X).Concat(Extrema(a.Y, b.Y, c.Y, d.Y)))
        {
            Cover((Cubic(t, a.X, b.X, c.X, d.X), Cubic(t, a.Y, b.Y, c.Y, d.Y)));
        }
    }

    private static double Cubic(double t, double a, double b, double c, double d)
    {
        double s = 1 - t;
        return (s * s * s * a) + (3 * s * s * t * b) + (3 * s * t * t * c) + (t * t * t * d);
    }

    // Where the derivative, p t^2 + q t + r, vanishes.
    private static IEnumerable<double> Extrema(double a, double b, double c, double d)
    {
        (double p, double q, double r) = (d - a + (3 * (b - c)), 2 * (a - (2 * b) + c), b - a);
        double root = Math.Sqrt(Math.Max(0, (q * q) - (4 * p * r)));
        double[] candidates = [2 * r / (-q - root), 2 * r / (-q + root)];
        return candidates.Where(t => t is > 0 and < 1);
    }

    private (double X, double Y) Placed(int i) => (
        (_matrix[0] * _operands[i]) + (_matrix[2] * _operands[i + 1]) + _matrix[4],
        (_matrix[1] * _operands[i]) + (_matrix[3] * _operands[i + 1]) + _matrix[5]);

    private static double[] Product(double[] a, double[] b) =>
    [
        (a[0] * b[0]) + (a[1] * b[2]), (a[0] * b[1]) + (a[1] * b[3]),
        (a[2] * b[0]) + (a[3] * b[2]), (a[2] * b[1]) + (a[3] * b[3]),
        (a[4] * b[0]) + (a[5] * b[2]) + b[4], (a[4] * b[1]) + (a[5] * b[3]) + b[5],
    ];

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"/MediaBox\s*\[\s*0 0 (\S+) ([\d.]+)\s*\]")]
    private static partial Regex MediaBox();

    [GeneratedRegex(@"/FlateDecode[^>]*>>\s*stream\r?\n")]
    private static partial Regex Streams();
}
