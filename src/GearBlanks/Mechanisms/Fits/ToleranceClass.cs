using System.Globalization;

namespace GearBlanks.Mechanisms.Fits;

/// <summary>A tolerance class of ISO 286, such as H7 for a bore or h6 for a spindle.</summary>
public sealed record ToleranceClass
{
    /// <summary>Sizes go from this, mm.</summary>
    public const double LeastSize = 1;

    /// <summary>Sizes go up to this, mm.</summary>
    public const double GreatestSize = 120;

    private ToleranceClass(string letters, int grade)
    {
        Letters = letters;
        Grade = grade;
    }

    /// <summary>The fundamental deviation's letters: capitals for a hole, small ones for a shaft.</summary>
    public string Letters { get; }

    /// <summary>The standard tolerance grade, 5 to 11.</summary>
    public int Grade { get; }

    /// <summary>True for a hole's class.</summary>
    public bool IsHole => char.IsUpper(Letters[0]);

    /// <summary>Reads a class; null where there is none of this name here.</summary>
    /// <param name="text">The class, such as "H7".</param>
    public static ToleranceClass? Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        string letters = new([.. text.TakeWhile(char.IsAsciiLetter)]);
        return int.TryParse(text.AsSpan(letters.Length), NumberStyles.None, CultureInfo.InvariantCulture, out int grade)
            && Iso286.Has(letters, grade) && text == $"{letters}{grade.ToString(CultureInfo.InvariantCulture)}"
            ? new ToleranceClass(letters, grade)
            : null;
    }

    /// <summary>The lower and the upper deviation from a nominal size, mm. Source: ISO 286-1:2010, tables 1 to 3; from memory.</summary>
    /// <param name="size">Nominal size, mm, 1 to 120.</param>
    /// <exception cref="ArgumentOutOfRangeException">The size is out of range.</exception>
    public (double Lower, double Upper) Deviations(double size)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(size, LeastSize);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(size, GreatestSize);
        (double lower, double upper) = IsHole ? Iso286.Hole(Letters, Grade, size) : Iso286.Shaft(Letters, Grade, size);
        return (lower / 1000, upper / 1000);
    }

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Letters}{Grade}");
}
