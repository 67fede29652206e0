using System.Collections.Immutable;
using GearBlanks.Mechanisms;

namespace GearBlanks.Files.Toml;

/// <summary>Gathers problems, so that all are told at once and in the order of the file.</summary>
internal sealed class ProblemList
{
    // Beyond this many, nobody reads on: the first ones explain the rest.
    private const int Most = 100;

    // Longer pieces of the user's text are cut off: they are shown so that the place is recognised.
    private const int MostCharacters = 80;

    private readonly List<Problem> _problems = [];

    public bool IsEmpty => _problems.Count == 0;

    /// <summary>False once more is told than anybody reads: then suggestions, which take time, can be left out.</summary>
    public bool WantsAdvice => _problems.Count < Most;

    public void Add(Place place, string key, string? value, string message, string? allowed = null, string? nearest = null) =>
        _problems.Add(new Problem(place, Shown(key), value is null ? null : Shown(value), message, allowed, nearest));

    public void Add(Problem problem) => _problems.Add(problem);

    public ImmutableArray<Problem> InOrder()
    {
        var ordered = _problems.OrderBy(p => p.Place.Line).ThenBy(p => p.Place.Column).ToList();
        if (ordered.Count > Most)
        {
            var next = ordered[Most].Place;
            ordered.RemoveRange(Most, ordered.Count - Most);
            ordered.Add(new Problem(next, "", null, "More problems follow from here on: put the ones above right first."));
        }

        return [.. ordered];
    }

    /// <summary>The user's text on one line, without control characters, cut off where it is long.</summary>
    public static string Shown(string text)
    {
        var cut = text.Length > MostCharacters ? string.Concat(text.AsSpan(0, MostCharacters), "...") : text;
        return string.Create(cut.Length, cut, static (to, from) =>
        {
            for (var i = 0; i < to.Length; i++)
            {
                to[i] = char.IsControl(from[i]) ? ' ' : from[i];
            }
        });
    }
}
