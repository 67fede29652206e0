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

    /// <summary>Two axes.</summary>
    public static string Axes(string first, string second) => $"axes {first} and {second}";
}
