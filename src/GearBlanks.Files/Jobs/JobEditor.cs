using System.Globalization;
using System.Text;
using GearBlanks.Files.Toml;
using GearBlanks.Mechanisms;

namespace GearBlanks.Files.Jobs;

/// <summary>Numbers of one gear to be put into a job's text.</summary>
/// <param name="Place">The table of the gear.</param>
/// <param name="ProfileShift">Profile shift coefficient.</param>
/// <param name="TipDiameter">Tip diameter, mm; null where it stays as it is.</param>
/// <param name="Module">Module, mm; null where it stays as it is.</param>
public sealed record GearEdit(Place Place, double ProfileShift, double? TipDiameter, double? Module);

/// <summary>Changes numbers in the text of a job, and nothing else: comments, order and layout stay.</summary>
public static class JobEditor
{
    private const int ShiftDecimals = 5;
    private const int LengthDecimals = 3;
    private const int ModuleDecimals = 4;

    /// <summary>The text with the numbers put in.</summary>
    /// <param name="job">A job file that reads without problems.</param>
    /// <param name="edits">The numbers.</param>
    /// <returns>The new text, or why it cannot be made.</returns>
    public static Outcome<JobText> WithNumbers(JobText job, IEnumerable<GearEdit> edits)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(edits);
        var problems = new ProblemList();
        if (TomlSource.Read(job.Text, job.File, problems) is not { } root)
        {
            return problems.InOrder();
        }

        var layers = Tables(root, "sandwiches").SelectMany(sandwich => Tables(sandwich, "layers")).ToList();
        var changes = new List<(int At, int Length, string Text)>();
        var lines = LineStarts(job.Text);
        foreach (var edit in edits)
        {
            var layer = layers.First(table => table.Place == edit.Place);
            Put(layer, "profile-shift", Numbers.ToText(edit.ProfileShift, ShiftDecimals), job.Text, lines, changes);
            if (edit.TipDiameter is { } tip)
            {
                Put(layer, "tip-diameter", Numbers.ToText(tip, LengthDecimals), job.Text, lines, changes);
            }

            if (edit.Module is { } module)
            {
                Put(layer, "module", Numbers.ToText(module, ModuleDecimals), job.Text, lines, changes);
            }
        }

        var text = new StringBuilder(job.Text);
        foreach (var (at, length, put) in changes.OrderByDescending(change => change.At).ThenByDescending(change => change.Text, StringComparer.Ordinal))
        {
            text.Remove(at, length).Insert(at, put);
        }

        var made = new JobText(job.File, text.ToString());
        var read = JobReader.Parse(made.Text, made.File);
        return read.Value is null ? read.Problems : made;
    }

    private static IEnumerable<TomlTable> Tables(TomlTable table, string key) =>
        table.Find(key)?.Value is TomlArray array ? array.Items.OfType<TomlTable>() : [];

    private static void Put(TomlTable layer, string key, string number, string text, int[] lines, List<(int At, int Length, string Text)> changes)
    {
        if (layer.Find(key) is { } entry)
        {
            changes.Add((Offset(entry.Value.Place, lines), entry.Value.Written.Length, number));
            return;
        }

        // After what every gear has; in braces on the same line, else on a line of its own, as far in.
        var anchor = layer.Find("teeth") ?? layer.Find("rack-length")!;
        var end = Offset(anchor.Value.Place, lines) + anchor.Value.Written.Length;
        if (layer.IsInline)
        {
            changes.Add((end, 0, $", {key} = {number}"));
            return;
        }

        var start = lines[anchor.Place.Line - 1];
        var indent = text[start..Offset(anchor.Place, lines)];
        var newline = text.IndexOf('\n', end);
        var lineEnd = newline < 0 ? text.Length : newline > 0 && text[newline - 1] == '\r' ? newline - 1 : newline;
        var ending = text.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";
        changes.Add((lineEnd, 0, string.Create(CultureInfo.InvariantCulture, $"{ending}{(string.IsNullOrWhiteSpace(indent) ? indent : "")}{key} = {number}")));
    }

    private static int Offset(Place place, int[] lines) => lines[place.Line - 1] + place.Column - 1;

    // A mark of the byte order stands before the first line, and is not counted.
    private static int[] LineStarts(string text)
    {
        var starts = new List<int> { text.StartsWith('\uFEFF') ? 1 : 0 };
        for (var i = 0; i < text.Length; i++)
        {
            if (text[i] == '\n')
            {
                starts.Add(i + 1);
            }
        }

        return [.. starts];
    }
}
