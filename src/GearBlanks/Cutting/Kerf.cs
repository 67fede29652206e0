using System.Globalization;

namespace GearBlanks.Cutting;

/// <summary>The width of the cut that a beam leaves; it may be wider across one axis than across the other.</summary>
public sealed record Kerf
{
    /// <summary>The greatest width, mm.</summary>
    public const double Greatest = 5;

    /// <summary>How many times wider a beam may be along one axis than along the other.</summary>
    public const double GreatestRatio = 4;

    /// <summary>Makes a kerf.</summary>
    /// <param name="x">Full width along X, mm: of a cut that runs along Y. Over 0 and up to <see cref="Greatest"/>.</param>
    /// <param name="y">Full width along Y, mm; the same range, and at most <see cref="GreatestRatio"/> times as wide or as narrow.</param>
    /// <exception cref="ArgumentOutOfRangeException">A width is out of its range.</exception>
    public Kerf(double x, double y)
    {
        if (!(x > 0 && x <= Greatest && y > 0 && y <= Greatest && Math.Max(x, y) <= GreatestRatio * Math.Min(x, y)))
        {
            throw new ArgumentOutOfRangeException(nameof(x), $"A kerf of {x:R} by {y:R} mm is out of range.");
        }

        X = x;
        Y = y;
    }

    /// <summary>Full width along X, mm.</summary>
    public double X { get; }

    /// <summary>Full width along Y, mm.</summary>
    public double Y { get; }

    /// <summary>True where the width is the same in every direction.</summary>
    public bool IsEqual => X == Y;

    /// <summary>The kerf of a round beam.</summary>
    /// <param name="width">Full width, mm.</param>
    public static Kerf Of(double width) => new(width, width);

    /// <summary>The widths in words, for example <c>0.18 mm</c> or <c>0.18 x 0.20 mm</c>.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{X:0.00####}{(IsEqual ? "" : string.Create(CultureInfo.InvariantCulture, $" x {Y:0.00####}"))} mm");
}
