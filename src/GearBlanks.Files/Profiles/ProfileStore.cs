using System.Text;
using GearBlanks.Files.Keys;
using GearBlanks.Files.Toml;

namespace GearBlanks.Files.Profiles;

/// <summary>Where profiles' texts are: beside the job, in profiles/ beside the job, then built into the program.</summary>
/// <param name="folder">The job's folder; null to look only at those built in.</param>
internal sealed class ProfileStore(string? folder)
{
    private const string Ending = ".toml";

    public static string FolderOf(ProfileKind kind) => kind switch
    {
        ProfileKind.Rack => "racks",
        ProfileKind.Material => "materials",
        ProfileKind.Machine => "machines",
        _ => "limits",
    };

    public bool Exists(ProfileKind kind, string name) => FileOf(kind, name) is not null || IsBuiltIn(kind, name);

    /// <summary>The text of a profile and the file it is in; no text where it is missing or cannot be read, which is then told.</summary>
    public (string? Text, string File) Read(ProfileKind kind, string name, ProblemList problems)
    {
        if (FileOf(kind, name) is { } file)
        {
            return (TextFile.Read(file, problems), file);
        }

        var resource = ResourceOf(kind, name);
        using var stream = IsName(name) ? typeof(ProfileStore).Assembly.GetManifestResourceStream(resource) : null;
        if (stream is null)
        {
            return (null, resource);
        }

        using var reader = new StreamReader(stream, Encoding.UTF8);
        return (reader.ReadToEnd(), resource);
    }

    /// <summary>All names of a kind, in order.</summary>
    public IReadOnlyList<string> Names(ProfileKind kind)
    {
        var start = $"profiles/{FolderOf(kind)}/";
        var names = typeof(ProfileStore).Assembly.GetManifestResourceNames()
            .Where(n => n.StartsWith(start, StringComparison.Ordinal) && n.EndsWith(Ending, StringComparison.Ordinal))
            .Select(n => n[start.Length..^Ending.Length])
            .Concat(Folders(kind).SelectMany(NamesIn));
        return [.. names.Where(IsName).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];
    }

    private string? FileOf(ProfileKind kind, string name) =>
        IsName(name) ? Folders(kind).Select(f => Path.Combine(f, name + Ending)).FirstOrDefault(File.Exists) : null;

    // A name that could lead out of its folder is never looked up.
    private static bool IsName(string name) => NameRules.Complaint(name) is null;

    private static bool IsBuiltIn(ProfileKind kind, string name) =>
        IsName(name) && typeof(ProfileStore).Assembly.GetManifestResourceInfo(ResourceOf(kind, name)) is not null;

    private static string ResourceOf(ProfileKind kind, string name) => $"profiles/{FolderOf(kind)}/{name}{Ending}";

    private IEnumerable<string> Folders(ProfileKind kind) => folder is null
        ? []
        : [Path.Combine(folder, FolderOf(kind)), Path.Combine(folder, "profiles", FolderOf(kind))];

    private static List<string> NamesIn(string folder)
    {
        try
        {
            return [.. Directory.EnumerateFiles(folder, "*" + Ending).Select(f => Path.GetFileNameWithoutExtension(f))];
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // No such folder, or not ours to look into: then it has nothing to offer.
            return [];
        }
    }
}
