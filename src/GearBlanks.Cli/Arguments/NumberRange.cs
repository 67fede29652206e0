namespace GearBlanks.Cli.Arguments;

/// <summary>The numbers that an option takes.</summary>
/// <param name="Least">The least.</param>
/// <param name="Most">The greatest.</param>
/// <param name="Unit">Their unit; empty where they have none.</param>
/// <param name="IsAbove">True where the least itself is not among them.</param>
internal sealed record NumberRange(double Least, double Most, string Unit = "", bool IsAbove = false)
{
    private const int Decimals = 6;

    public string InWords => (IsAbove ? $"over {Text(Least)} and up to {Text(Most)}" : $"from {Text(Least)} to {Text(Most)}") + (Unit.Length == 0 ? "" : " " + Unit);

    /// <summary>What is wrong with a number; null where it is in the range.</summary>
    public Complaint? Judge(double value) =>
        value > Most ? new("This is too large", InWords, Text(Most))
        : value < Least || (IsAbove && value <= Least) ? new("This is too small", InWords, IsAbove ? null : Text(Least))
        : null;

    private static string Text(double value) => Files.Numbers.ToText(value, Decimals);
}
