namespace GearBlanks.Mechanisms;

/// <summary>What was measured on a gear's teeth: its thickness or its base tangent length.</summary>
/// <param name="Place">Where the job says it.</param>
/// <param name="Thickness">Tooth thickness on the reference circle (line, of a rack), mm (arc); null where the base tangent length was measured.</param>
/// <param name="Span">Base tangent length, mm; null where the thickness was measured.</param>
/// <param name="SpanTeeth">Over how many teeth.</param>
public sealed record JobMeasuredTeeth(Place Place, double? Thickness, double? Span, int SpanTeeth);
