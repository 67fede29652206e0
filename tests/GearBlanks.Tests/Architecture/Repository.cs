namespace GearBlanks.Tests.Architecture;

/// <summary>The sources that the tests were built from.</summary>
internal static class Repository
{
    /// <summary>The folder of the products' sources.</summary>
    public static string Source { get; } = Path.Combine(Root(), "src");

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "GearBlanks.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("The tests run outside the repository.");
    }
}
