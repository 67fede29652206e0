using GearBlanks.Files.Keys;

namespace GearBlanks.Files.Jobs;

/// <summary>The reference page of a job file's keys, written from the declarations that the reader works by.</summary>
public static class JobReference
{
    private const string Introduction =
        """
        # The keys of a job file

        This page is written from the declarations by which job files are read: what it says is what is checked.
        A job file is TOML. Bare lengths are millimetres, angles are degrees, times carry their unit.
        A list of tables can be written as headers in double brackets, or as tables in braces within a list.

        """;

    /// <summary>The page, as Markdown with line feeds only.</summary>
    public static string Markdown() => KeyPage.Write(
        Introduction.ReplaceLineEndings("\n"),
        KeyPage.Within(JobKeys.File).Select(t => (t.Path.Length == 0 ? "The file" : $"`{t.Path}`", t)));
}
