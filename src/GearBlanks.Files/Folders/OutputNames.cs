namespace GearBlanks.Files.Folders;

/// <summary>Which names a file in an output folder may have.</summary>
internal static class OutputNames
{
    /// <summary>True for a plain file name on every system that is not the manifest's.</summary>
    public static bool IsPlain(string name) =>
        name is not ("" or "." or "..")
        && !name.AsSpan().ContainsAny("/\\:")
        && !name.Any(char.IsControl)
        && !name.Equals(Manifest.FileName, StringComparison.OrdinalIgnoreCase);

    /// <exception cref="ArgumentException">A name is not plain, or two would be one file on some system.</exception>
    public static void Check(IReadOnlyList<OutputFile> files)
    {
        ArgumentNullException.ThrowIfNull(files);
        var seen = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (var file in files)
        {
            if (!IsPlain(file.Name))
            {
                throw new ArgumentException($"'{file.Name}' is no name for a file of the folder.", nameof(files));
            }

            if (!seen.Add(file.Name))
            {
                throw new ArgumentException($"'{file.Name}' is in the list twice.", nameof(files));
            }
        }
    }
}
