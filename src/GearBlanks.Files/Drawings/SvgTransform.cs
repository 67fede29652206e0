namespace GearBlanks.Files.Drawings;

/// <summary>Reads the transform attribute of SVG.</summary>
internal static class SvgTransform
{
    private const double RadiansInADegree = Math.PI / 180;

    /// <exception cref="DrawingException">It cannot be read.</exception>
    public static Affine Of(string? text, int line)
    {
        Affine all = Affine.None;
        string rest = text?.Trim() ?? "";
        while (rest.Length > 0)
        {
            int open = rest.IndexOf('(', StringComparison.Ordinal);
            int close = rest.IndexOf(')', StringComparison.Ordinal);
            if (open <= 0 || close < open || One(rest[..open].Trim(), SvgNumbers.All(rest[(open + 1)..close], line, "transform")) is not { IsUsable: true } one)
            {
                throw new DrawingException(line, text, "This transform cannot be read", "matrix, translate, scale, rotate, skewX and skewY that leave something to see") { Key = "transform" };
            }

            all = all.After(one);
            rest = rest[(close + 1)..].TrimStart(' ', ',', '\t', '\r', '\n');
        }

        return all;
    }

    private static Affine? One(string name, List<double> values) => (name, values) switch
    {
        ("matrix", [var a, var b, var c, var d, var e, var f]) => new Affine(a, c, b, d, e, f),
        ("translate", [var x]) => Affine.Shift(x, 0),
        ("translate", [var x, var y]) => Affine.Shift(x, y),
        ("scale", [var size]) => Affine.Scale(size, size),
        ("scale", [var x, var y]) => Affine.Scale(x, y),
        ("rotate", [var angle]) => Affine.Turn(angle * RadiansInADegree),
        ("rotate", [var angle, var x, var y]) => Affine.Shift(x, y).After(Affine.Turn(angle * RadiansInADegree)).After(Affine.Shift(-x, -y)),
        ("skewX", [var angle]) => new Affine(1, Math.Tan(angle * RadiansInADegree), 0, 1, 0, 0),
        ("skewY", [var angle]) => new Affine(1, 0, Math.Tan(angle * RadiansInADegree), 1, 0, 0),
        _ => null,
    };
}
