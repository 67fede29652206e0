using System.Text;

namespace GearBlanks.Files.Keys;

/// <summary>Writes declarations as a page of Markdown.</summary>
internal static class KeyPage
{
    public static string Write(string introduction, IEnumerable<(string Heading, KeyTable Table)> tables)
    {
        var declared = tables.ToList();
        var page = new StringBuilder(introduction).Append(Line(""));
        foreach (var kind in Enum.GetValues<KeyKind>())
        {
            if (Key.Writing(kind) is { } writing && declared.Any(t => t.Table.Keys.Any(k => k.Kind == kind)))
            {
                page.Append(Line($"- {Plural(kind)}: {writing}."));
            }
        }

        foreach (var (heading, table) in declared)
        {
            page.Append(Line("")).Append(Line($"## {heading}")).Append(Line("")).Append(Line(table.Meaning)).Append(Line(""));
            page.Append(Line("| key | needed | value | meaning |")).Append(Line("|---|---|---|---|"));
            foreach (var key in table.Keys)
            {
                page.Append(Line($"| `{key.Name}` | {(key.IsRequired ? "yes" : "no")} | {key.Brief} | {key.Meaning} |"));
            }
        }

        return page.ToString();
    }

    /// <summary>A table and the tables in it, outermost first.</summary>
    public static IEnumerable<KeyTable> Within(KeyTable table) =>
        table.Keys.Where(k => k.Of is not null).SelectMany(k => Within(k.Of!)).Prepend(table);

    private static string Plural(KeyKind kind) => kind switch
    {
        KeyKind.LayerName => "Layer names",
        KeyKind.ExactAngle => "Exact angles",
        _ => $"{kind}s",
    };

    private static string Line(string text) => text + "\n";
}
