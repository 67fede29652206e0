using System.Collections.Immutable;

namespace GearBlanks.Curves;

/// <summary>
/// A closed chain of exact curves: a pattern turned about the origin in equal steps until it closes. A gear's pattern is one
/// tooth; a shape without repetition is its own pattern, taken once. Counter-clockwise outlines have their material inside.
/// </summary>
public sealed record Outline
{
    // Ends are computed by different formulas and meet within rounding; anything wider is a programming error.
    private const double ClosureInUlps = 1e-11;

    /// <summary>Makes an outline.</summary>
    /// <param name="pattern">Curves end to end.</param>
    /// <param name="repeats">How often the pattern stands around the origin; at least 1.</param>
    /// <exception cref="ArgumentException">The curves do not meet end to end, or the chain does not close.</exception>
    public Outline(ImmutableArray<Curve> pattern, int repeats = 1)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(repeats, 1);
        if (pattern.IsDefaultOrEmpty)
        {
            throw new ArgumentException("An outline needs at least one curve.", nameof(pattern));
        }

        Point next = Motion.TurnStep(1, repeats).Apply(pattern[0].StartPoint);
        for (int i = pattern.Length - 1; i >= 0; i--)
        {
            double gap = pattern[i].EndPoint.DistanceTo(next);
            if (!(gap <= ClosureInUlps * (1 + next.Radius)))
            {
                throw new ArgumentException($"Curve {i} of the outline ends {gap:R} mm from the next one.", nameof(pattern));
            }

            next = pattern[i].StartPoint;
        }

        Pattern = pattern;
        Repeats = repeats;
    }

    /// <summary>The curves of one step.</summary>
    public ImmutableArray<Curve> Pattern { get; }

    /// <summary>How often the pattern stands around the origin.</summary>
    public int Repeats { get; }

    /// <summary>The outline that is one whole circle, counter-clockwise.</summary>
    public static Outline Of(Circle circle) => new([Arc.FullCircle(circle)]);

    /// <summary>The circle that the outline is; null where it is anything else.</summary>
    public Circle? AsCircle => Pattern is [Arc { IsFullCircle: true } arc] ? new Circle(arc.Centre, arc.Radius) : null;

    /// <summary>All curves in order of travel.</summary>
    public IEnumerable<Curve> Curves()
    {
        for (int i = 0; i < Repeats; i++)
        {
            Motion turn = Motion.TurnStep(i, Repeats);
            foreach (Curve curve in Pattern)
            {
                yield return curve.Moved(turn);
            }
        }
    }

    /// <summary>The same shape after a rigid motion; a mirrored outline is travelled backwards so that it stays counter-clockwise.</summary>
    public Outline Moved(Motion motion)
    {
        ImmutableArray<Curve> moved = [.. Curves().Select(curve => curve.Moved(motion))];
        return new Outline(motion.IsMirrored ? [.. moved.Reverse().Select(curve => curve.Reversed())] : moved);
    }

    /// <summary>The same points travelled the other way.</summary>
    public Outline Reversed() => new([.. Curves().Reverse().Select(curve => curve.Reversed())]);
}
