namespace GearBlanks.Mechanisms;

/// <summary>Something in the input that a person has to put right.</summary>
/// <param name="Place">Where it is written.</param>
/// <param name="Key">The key, with its table, for example <c>sandwiches.layers.teeth</c>; empty where there is none.</param>
/// <param name="Value">The value as written; null where there is none.</param>
/// <param name="Message">What is wrong.</param>
/// <param name="Allowed">What is allowed; null where the message says it.</param>
/// <param name="Nearest">The nearest valid name, or the nearest value that works; null where there is none.</param>
public sealed record Problem(Place Place, string Key, string? Value, string Message, string? Allowed = null, string? Nearest = null);
