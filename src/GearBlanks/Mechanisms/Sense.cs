namespace GearBlanks.Mechanisms;

/// <summary>A sense of turning, seen from above; dials are read clockwise.</summary>
public enum Sense
{
    /// <summary>As the hands of a clock.</summary>
    Clockwise,

    /// <summary>Against them.</summary>
    CounterClockwise,
}
