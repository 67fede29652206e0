using System.Globalization;

namespace GearBlanks.Teeth;

/// <summary>A shape that cannot exist: which case it is, the value that makes it so, the limit, and the nearest that works.</summary>
public sealed class GearGeometryException : Exception
{
    /// <summary>Makes the exception.</summary>
    /// <param name="shapeCase">Stable name of the case, kebab case, for example <c>severed</c>.</param>
    /// <param name="what">What is wrong, a sentence without its full stop.</param>
    /// <param name="value">The value that makes it so, mm, rad or a coefficient as <paramref name="what"/> says.</param>
    /// <param name="limit">The limit it breaks, in the same unit.</param>
    /// <param name="remedy">What to change; null where nothing near works.</param>
    public GearGeometryException(string shapeCase, string what, double value, double limit, string? remedy)
        : base(string.Create(CultureInfo.InvariantCulture, $"{what} ({shapeCase}: {value:0.######}, limit {limit:0.######}){(remedy is null ? "" : "; " + remedy)}."))
    {
        ShapeCase = shapeCase;
        What = what;
        Value = value;
        Limit = limit;
        Remedy = remedy;
    }

    /// <summary>Stable name of the case, kebab case.</summary>
    public string ShapeCase { get; }

    /// <summary>What is wrong, a sentence without its full stop.</summary>
    public string What { get; }

    /// <summary>The value that makes it so.</summary>
    public double Value { get; }

    /// <summary>The limit it breaks.</summary>
    public double Limit { get; }

    /// <summary>What to change; null where nothing near works.</summary>
    public string? Remedy { get; }
}
