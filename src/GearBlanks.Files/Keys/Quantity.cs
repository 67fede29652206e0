namespace GearBlanks.Files.Keys;

/// <summary>Quantities written with their unit, such as "1/4 in".</summary>
public static class Quantity
{
    /// <summary>A length in mm, or what is wrong with the text.</summary>
    public static (double? Value, string? Complaint) Length(string text)
    {
        var (value, complaint, nearest) = Quantities.Length(text);
        return (value?.ToDouble(), complaint is null || nearest is null ? complaint : $"{complaint}; nearest: {nearest}");
    }
}
