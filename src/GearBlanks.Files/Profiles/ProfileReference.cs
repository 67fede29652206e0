using GearBlanks.Files.Keys;

namespace GearBlanks.Files.Profiles;

/// <summary>The reference page of the profiles' keys, written from the declarations that the reader works by.</summary>
public static class ProfileReference
{
    private const string Introduction =
        """
        # The keys of profiles

        This page is written from the declarations by which profiles are read: what it says is what is checked.
        A profile is a TOML file and goes by its file name. It is looked for in `racks/`, `materials/`, `machines/` or `limits/` beside the job,
        then in the same folders under `profiles/` beside the job, then among those built into the program: copy one, edit it, and name it in the job.

        """;

    /// <summary>The page, as Markdown with line feeds only.</summary>
    public static string Markdown() => KeyPage.Write(Introduction.ReplaceLineEndings("\n"), Enum.GetValues<ProfileKind>().SelectMany(Sections));

    private static IEnumerable<(string Heading, KeyTable Table)> Sections(ProfileKind kind) => KeyPage.Within(ProfileKeys.Of(kind))
        .Select(t => (t.Path.Length == 0 ? $"{ProfileStore.FolderOf(kind)}/" : $"{ProfileStore.FolderOf(kind)}/ `{t.Path}`", t));
}
