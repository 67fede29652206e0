namespace GearBlanks.Files.Jobs;

/// <summary>A first job for somebody to change; built in from profiles/jobs.</summary>
public static class JobTemplate
{
    private const string Resource = "profiles/jobs/first-pair.toml";

    /// <summary>The job's text.</summary>
    public static string Text { get; } = Read();

    private static string Read()
    {
        using Stream stream = typeof(JobTemplate).Assembly.GetManifestResourceStream(Resource)!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
