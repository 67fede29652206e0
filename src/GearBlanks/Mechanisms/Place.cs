namespace GearBlanks.Mechanisms;

/// <summary>Where in a file something is written.</summary>
/// <param name="File">File name as the user gave it.</param>
/// <param name="Line">Line, from 1; 0 where the place is the whole file.</param>
/// <param name="Column">Column, from 1; 0 where the place is the whole line.</param>
public readonly record struct Place(string File, int Line, int Column);
