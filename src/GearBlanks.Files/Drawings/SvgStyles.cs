namespace GearBlanks.Files.Drawings;

/// <summary>What the style sheets of an SVG file say of elements by their class, name or kind; other selectors are not followed.</summary>
internal sealed class SvgStyles
{
    private readonly Dictionary<string, string> _rules = new(StringComparer.Ordinal);

    /// <summary>Takes in a sheet.</summary>
    /// <returns>False where it hides something by a selector that is not followed.</returns>
    public bool Add(string sheet)
    {
        bool isFollowed = true;
        foreach (string rule in WithoutComments(sheet).Split('}'))
        {
            if (rule.Split('{', 2) is not [var selectors, var declarations])
            {
                continue;
            }

            foreach (string selector in selectors.Split(',', StringSplitOptions.TrimEntries))
            {
                _rules[selector] = _rules.GetValueOrDefault(selector) + declarations + ";";
                isFollowed &= IsSimple(selector) || Value(declarations, "display") != "none";
            }
        }

        return isFollowed;
    }

    /// <summary>What an element's sheet says of a property: its name before its classes before its kind; null where nothing.</summary>
    public string? Of(string kind, string? id, string? classes, string property)
    {
        if (_rules.Count == 0)
        {
            return null;
        }

        string[] selectors = [$"#{id}", .. (classes ?? "").Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(name => $".{name}"), kind];
        return selectors.Select(selector => _rules.TryGetValue(selector, out string? found) ? Value(found, property) : null).FirstOrDefault(value => value is not null);
    }

    /// <summary>A property's value among declarations, the last one; null where there is none.</summary>
    public static string? Value(string declarations, string property)
    {
        string? value = null;
        foreach (string declaration in declarations.Split(';'))
        {
            if (declaration.Split(':', 2) is [var key, var said] && key.Trim() == property)
            {
                value = said.Split('!')[0].Trim();
            }
        }

        return value;
    }

    private static bool IsSimple(string selector) => selector.TrimStart('.', '#').All(letter => char.IsLetterOrDigit(letter) || letter is '-' or '_');

    private static string WithoutComments(string sheet)
    {
        for (int from = sheet.IndexOf("/*", StringComparison.Ordinal); from >= 0; from = sheet.IndexOf("/*", StringComparison.Ordinal))
        {
            int to = sheet.IndexOf("*/", from + 2, StringComparison.Ordinal);
            sheet = sheet[..from] + (to < 0 ? "" : sheet[(to + 2)..]);
        }

        return sheet;
    }
}
