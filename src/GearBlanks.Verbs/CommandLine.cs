using System.Collections.Immutable;
using GearBlanks.Mechanisms;
using GearBlanks.Teeth;

namespace GearBlanks.Verbs;

/// <summary>Problems whose place is the command line itself.</summary>
public static class CommandLine
{
    /// <summary>The place.</summary>
    public static Place Place { get; } = new("command line", 0, 0);

    /// <summary>One problem with an option.</summary>
    /// <param name="option">The option, with its dashes.</param>
    /// <param name="value">Its value; null where there is none.</param>
    /// <param name="message">What is wrong.</param>
    /// <param name="allowed">What is allowed; null where the message says it.</param>
    /// <param name="nearest">The nearest that works; null where there is none.</param>
    public static ImmutableArray<Problem> Problem(string option, string? value, string message, string? allowed = null, string? nearest = null) =>
        [new Problem(Place, option, value, message, allowed, nearest)];

    internal static ImmutableArray<Problem> Problem(string option, GearGeometryException e) => Problem(option, null, e.Message.TrimEnd('.'));
}
