namespace GearBlanks.Findings;

/// <summary>One figure held against one limit: makes the finding, and asks for advice only where it is needed.</summary>
public static class Check
{
    /// <summary>Judges a figure.</summary>
    /// <param name="name">Stable name, kebab case.</param>
    /// <param name="place">What is checked.</param>
    /// <param name="figure">The figure, in <paramref name="unit"/>.</param>
    /// <param name="limit">Its limit, in the same unit.</param>
    /// <param name="unit">Unit; empty for a plain number.</param>
    /// <param name="what">What the figure is, in words that "is 0.032 mm" can follow.</param>
    /// <param name="advice">What to change to reach the bound given, the comfortable one; not asked for where the figure is ok.</param>
    public static Finding Of(
        string name, string place, double figure, Limit limit, string unit, string what, Func<double, string?> advice)
    {
        (Level level, double? bound) = limit.Judge(figure);
        string message = level == Level.Ok
            ? $"{what} is {Words.Figure(figure, unit)}."
            : $"{what} is {Words.FigureBeside(bound!.Value, figure, unit)}{Against(level, figure, bound.Value, unit)}.";
        return new Finding(name, place, level, figure, bound, unit, limit.Source, message, level == Level.Ok ? null : advice(limit.Comfortable(figure)));
    }

    private static string Against(Level level, double figure, double bound, string unit) =>
        $", {(figure < bound ? "below" : "above")} the {(level == Level.Fails ? "limit" : "comfortable")} {Words.Figure(bound, unit)}";
}
