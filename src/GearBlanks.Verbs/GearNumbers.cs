namespace GearBlanks.Verbs;

/// <summary>The numbers that <c>gear</c> and <c>mesh</c> share, as a command line gives them: mm and degrees.</summary>
/// <param name="Module">Module, mm; null where the diametral pitch is given.</param>
/// <param name="DiametralPitch">Diametral pitch, teeth per inch; null where the module is given.</param>
/// <param name="PressureAngleDegrees">Pressure angle, degrees; null for the rack's.</param>
/// <param name="Rack">Name of a rack profile; null for the proportions of the default one.</param>
public sealed record GearNumbers(double? Module, double? DiametralPitch, double? PressureAngleDegrees, string? Rack);
