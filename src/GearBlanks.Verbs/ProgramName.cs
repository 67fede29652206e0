using System.Reflection;

namespace GearBlanks.Verbs;

/// <summary>The program's name and version: no commit and no time, so that the same input gives the same files.</summary>
public static class ProgramName
{
    /// <summary>Version, for example <c>0.1.0</c>.</summary>
    public static string Version { get; } =
        typeof(ProgramName).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion;

    /// <summary>Name and version.</summary>
    public static string WithVersion => $"GearBlanks {Version}";
}
