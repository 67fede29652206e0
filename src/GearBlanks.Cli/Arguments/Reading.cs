namespace GearBlanks.Cli.Arguments;

/// <summary>What a word of the command line means, or what is wrong with it.</summary>
/// <param name="Value">What it means; nothing of use where there is a complaint.</param>
/// <param name="Complaint">What is wrong; null where nothing is.</param>
internal readonly record struct Reading<T>(T? Value, Complaint? Complaint = null);

/// <summary>What is wrong with a word.</summary>
/// <param name="Message">What is wrong, a sentence without its full stop.</param>
/// <param name="Allowed">What is allowed.</param>
/// <param name="Nearest">The nearest that works; null where there is none.</param>
internal sealed record Complaint(string Message, string? Allowed, string? Nearest = null);
