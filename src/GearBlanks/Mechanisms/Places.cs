namespace GearBlanks.Mechanisms;

/// <summary>How findings name what they are about.</summary>
public static class Places
{
    /// <summary>A gear.</summary>
    public static string Gear(string name) => $"gear {name}";

    /// <summary>A mesh.</summary>
    public static string Mesh(string name) => $"mesh {name}";

    /// <summary>A sandwich.</summary>
    public static string Sandwich(string name) => $"sandwich {name}";

    /// <summary>A hand.</summary>
    public static string Hand(string name) => $"hand {name}";

    /// <summary>Two axes, the same whichever is named first.</summary>
    public static string Axes(string first, string second) =>
        string.CompareOrdinal(first, second) < 0 ? $"axes {first} and {second}" : $"axes {second} and {first}";

    /// <summary>All bodies together.</summary>
    internal const string Stack = "stack";

    internal static string Bodies(Stacks.Body first, Stacks.Body second) => $"{first.Words} and {second.Words}";

    internal static string Axes(Mesh mesh) => Axes(mesh.First.Axis.Name, mesh.Second.Axis.Name);
}
