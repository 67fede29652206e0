namespace GearBlanks.Teeth;

/// <summary>The circles that a tooth form finds, as radii, mm: root, form, tip as cut, tip asked for.</summary>
internal readonly record struct GearCircles(double Root, double Form, double Tip, double NominalTip);
