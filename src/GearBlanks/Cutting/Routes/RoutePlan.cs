namespace GearBlanks.Cutting.Routes;

/// <summary>Where contours start, how a tool comes to them and leaves them, and what holds the part while it is cut.</summary>
/// <param name="Start">Where the contour of teeth starts.</param>
/// <param name="Lead">The form of the way in and out; null for none.</param>
/// <param name="LeadLength">Length of the line, or radius of the arc, mm; over 0 where there is a lead.</param>
/// <param name="Tabs">How many tabs hold the part in its sheet; 0 for none.</param>
/// <param name="TabWidth">Width of each, mm; over 0 where there are tabs.</param>
public sealed record RoutePlan(StartPlace Start, LeadForm? Lead, double LeadLength, int Tabs, double TabWidth)
{
    /// <summary>Most tabs.</summary>
    public const int MostTabs = 24;

    /// <summary>Closed contours that start where they like.</summary>
    public static RoutePlan None { get; } = new(StartPlace.Anywhere, null, 0, 0, 0);

    /// <summary>The plan in words.</summary>
    public string Words => InWords([LeadLength], [.. Enumerable.Repeat(TabWidth, Tabs)]);

    /// <summary>What became of the plan, in words, for the file.</summary>
    /// <param name="leads">Lengths of the leads that there was room for, mm.</param>
    /// <param name="tabs">Widths of the tabs, mm.</param>
    internal string InWords(IReadOnlyCollection<double> leads, IReadOnlyCollection<double> tabs) => string.Join(", ", ((string?[])[
        Start switch { StartPlace.Tip => "starts on tips", StartPlace.Root => "starts in roots", _ => null },
        Lead is { } lead && leads.Count > 0 ? $"{lead.ToString().ToLowerInvariant()} leads {Range(leads)}" : null,
        tabs.Count > 0 ? FormattableString.Invariant($"{tabs.Count} tabs {Range(tabs)}") : null]).OfType<string>());

    private static string Range(IReadOnlyCollection<double> lengths)
    {
        (string least, string most) = (Findings.Words.Mm(lengths.Min()), Findings.Words.Mm(lengths.Max()));
        return least == most ? least : $"{least} to {most}";
    }
}

/// <summary>Where the contour of teeth starts.</summary>
public enum StartPlace
{
    /// <summary>Wherever the outline begins.</summary>
    Anywhere,

    /// <summary>In the middle of a tip land.</summary>
    Tip,

    /// <summary>In the middle of a root land, or the deepest point between two teeth.</summary>
    Root,
}

/// <summary>How a tool comes to a contour and leaves it.</summary>
public enum LeadForm
{
    /// <summary>Along a straight line.</summary>
    Line,

    /// <summary>Along a quarter of a circle that touches the contour.</summary>
    Arc,
}
