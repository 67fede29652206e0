using GearBlanks.Curves;

namespace GearBlanks.Files.Drawings;

/// <summary>A change of coordinates: x' = XX x + XY y + X, y' = YX x + YY y + Y.</summary>
internal readonly record struct Affine(double XX, double XY, double YX, double YY, double X, double Y)
{
    // Of the scale: what differs by less is as wide as it is high.
    private const double Rounding = 1e-9;

    public static Affine None { get; } = new(1, 0, 0, 1, 0, 0);

    public static Affine Shift(double x, double y) => new(1, 0, 0, 1, x, y);

    public static Affine Scale(double x, double y) => new(x, 0, 0, y, 0, 0);

    public static Affine Turn(double angle)
    {
        (double sine, double cosine) = Math.SinCos(angle);
        return new(cosine, -sine, sine, cosine, 0, 0);
    }

    /// <summary>True where circles stay circles.</summary>
    public bool KeepsCircles
    {
        get
        {
            double size = Math.Max(Math.Max(Math.Abs(XX), Math.Abs(XY)), Math.Max(Math.Abs(YX), Math.Abs(YY)));
            return Math.Abs((XX * XX) + (YX * YX) - (XY * XY) - (YY * YY)) <= Rounding * size * size
                && Math.Abs((XX * XY) + (YX * YY)) <= Rounding * size * size;
        }
    }

    /// <summary>True where counter-clockwise becomes clockwise.</summary>
    public bool IsMirrored => (XX * YY) - (XY * YX) < 0;

    public bool IsUsable => double.IsFinite(XX + XY + YX + YY + X + Y) && (XX * YY) - (XY * YX) != 0;

    public Point Apply(Point point) => new((XX * point.X) + (XY * point.Y) + X, (YX * point.X) + (YY * point.Y) + Y);

    /// <summary>The change that does <paramref name="inner"/> first and this one after it.</summary>
    public Affine After(Affine inner) => new(
        (XX * inner.XX) + (XY * inner.YX), (XX * inner.XY) + (XY * inner.YY),
        (YX * inner.XX) + (YY * inner.YX), (YX * inner.XY) + (YY * inner.YY),
        (XX * inner.X) + (XY * inner.Y) + X, (YX * inner.X) + (YY * inner.Y) + Y);
}
