namespace GearBlanks.Files.Folders;

/// <summary>The moments between which a run may be cut short.</summary>
internal enum Moment
{
    ParentsMade,
    Started,
    FileWritten,
    ManifestWritten,
    EntryCarried,
    Built,
    Named,
    MovedAside,
    InPlace,
    Done,
}

/// <summary>What a run may use of the system, and who is told how far it is: tests take away and cut short.</summary>
internal sealed record Means(bool MayExchange, bool MayLink, Action<Moment> Reached)
{
    public static Means All { get; } = new(true, true, _ => { });
}
