using GearBlanks.Files.Keys;
using GearBlanks.Files.Toml;
using GearBlanks.Findings;
using GearBlanks.Mechanisms;
using GearBlanks.Teeth;

namespace GearBlanks.Files.Profiles;

/// <summary>
/// Finds profiles by name: in racks/, materials/, machines/ or limits/ beside the job, in the same folders under profiles/ beside the job,
/// then among those built into the program. Only what is asked for is read.
/// </summary>
public sealed class ProfileFinder : IProfiles
{
    private readonly ProfileStore _store;

    private ProfileFinder(string? folder) => _store = new ProfileStore(folder);

    /// <summary>Finds only profiles that are built in.</summary>
    public static ProfileFinder BuiltIn { get; } = new(null);

    /// <summary>Finds profiles for a job.</summary>
    /// <param name="jobFile">The job's file name, as the user gave it.</param>
    public static ProfileFinder BesideJob(string jobFile) => new(Path.GetDirectoryName(jobFile) ?? "");

    /// <summary>The basic rack of a name.</summary>
    /// <param name="name">Name of the profile.</param>
    /// <param name="askedAt">Where the name is written.</param>
    public Outcome<BasicRack> Rack(string name, Place askedAt) => Find(ProfileKind.Rack, name, askedAt, ProfileBuilder.Rack);

    /// <summary>The material of a name.</summary>
    /// <param name="name">Name of the profile.</param>
    /// <param name="askedAt">Where the name is written.</param>
    public Outcome<Material> Material(string name, Place askedAt) => Find(ProfileKind.Material, name, askedAt, ProfileBuilder.Material);

    /// <summary>The machine of a name.</summary>
    /// <param name="name">Name of the profile.</param>
    /// <param name="askedAt">Where the name is written.</param>
    public Outcome<Machine> Machine(string name, Place askedAt) => Find(ProfileKind.Machine, name, askedAt, ProfileBuilder.Machine);

    /// <summary>The limits of a name.</summary>
    /// <param name="name">Name of the profile.</param>
    /// <param name="askedAt">Where the name is written.</param>
    public Outcome<Limits> Limits(string name, Place askedAt) => Find(ProfileKind.Limits, name, askedAt, ProfileBuilder.Limits);

    /// <summary>All names of a kind that can be found, in order.</summary>
    /// <param name="kind">Which profiles.</param>
    public IReadOnlyList<string> Names(ProfileKind kind) => _store.Names(kind);

    internal bool Exists(ProfileKind kind, string name) => _store.Exists(kind, name);

    internal Problem Unknown(ProfileKind kind, string name, Place askedAt)
    {
        var names = Names(kind);
        var folder = ProfileStore.FolderOf(kind);
        return new Problem(
            askedAt, KeyOf(kind), ProblemList.Shown(name), $"There is no profile of this name in {folder}/ beside the job, in profiles/{folder}/ beside the job, or built in",
            "one of " + string.Join(", ", names), Nearest.To(name, names));
    }

    private Outcome<T> Find<T>(ProfileKind kind, string name, Place askedAt, Func<string, Entries, T> build)
        where T : class
    {
        ArgumentNullException.ThrowIfNull(name);
        var problems = new ProblemList();
        var (text, file) = _store.Read(kind, name, problems);
        if (text is null)
        {
            if (problems.IsEmpty)
            {
                problems.Add(Unknown(kind, name, askedAt));
            }

            return problems.InOrder();
        }

        if (TomlSource.Read(text, file, problems) is not { } table)
        {
            return problems.InOrder();
        }

        var entries = new KeyReader(problems).Read(table, ProfileKeys.Of(kind));
        ProfileRules.Check(kind, entries, problems);
        return problems.IsEmpty ? build(name, entries) : problems.InOrder();
    }

    private static string KeyOf(ProfileKind kind) => kind switch
    {
        ProfileKind.Rack => "rack",
        ProfileKind.Material => "material",
        ProfileKind.Machine => "machine",
        _ => "limits",
    };
}
