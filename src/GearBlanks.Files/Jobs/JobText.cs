namespace GearBlanks.Files.Jobs;

/// <summary>A job file as it was read.</summary>
/// <param name="File">File name, as the user gave it.</param>
/// <param name="Text">Its text.</param>
public sealed record JobText(string File, string Text);
