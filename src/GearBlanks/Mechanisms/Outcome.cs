using System.Collections.Immutable;

namespace GearBlanks.Mechanisms;

/// <summary>A value, or the problems that stood in its way: never both, never neither.</summary>
/// <typeparam name="T">The value's type.</typeparam>
public sealed record Outcome<T>
    where T : class
{
    private Outcome(T? value, ImmutableArray<Problem> problems)
    {
        Value = value;
        Problems = problems;
    }

    /// <summary>The value; null where there are problems.</summary>
    public T? Value { get; }

    /// <summary>The problems in order of place; empty where there is a value.</summary>
    public ImmutableArray<Problem> Problems { get; }

    /// <summary>Success.</summary>
    public static implicit operator Outcome<T>(T value) => new(value, []);

    /// <summary>Failure, with one problem at least.</summary>
    public static implicit operator Outcome<T>(ImmutableArray<Problem> problems) =>
        problems.IsDefaultOrEmpty ? throw new ArgumentException("A failure needs a problem.", nameof(problems)) : new(null, problems);
}
