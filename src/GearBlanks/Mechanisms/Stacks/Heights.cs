namespace GearBlanks.Mechanisms.Stacks;

/// <summary>From where to where a body reaches, over the frame, and how far either end may deviate, mm.</summary>
internal readonly record struct Heights(double Bottom, double Top, double BottomTolerance, double TopTolerance)
{
    public double Least => Bottom - BottomTolerance;

    public double Greatest => Top + TopTolerance;

    /// <summary>How much of their height two bodies share, mm; negative is the gap between them.</summary>
    public double SharedWith(Heights other) => Math.Min(Top, other.Top) - Math.Max(Bottom, other.Bottom);

    /// <summary>What two bodies share of their heights as drawn.</summary>
    public Heights Common(Heights other) => new(Math.Max(Bottom, other.Bottom), Math.Min(Top, other.Top), 0, 0);

    /// <summary>The gap between two bodies that is left at the worst tolerances, mm; negative where they can meet.</summary>
    public double LeastGapTo(Heights other) => Bottom + Top < other.Bottom + other.Top ? other.Least - Greatest : Least - other.Greatest;

    /// <summary>What two bodies surely share of their heights, whatever their tolerances do, mm.</summary>
    public double LeastSharedWith(Heights other, double thickness, double otherThickness) => Math.Min(
        Math.Min(thickness, otherThickness),
        Math.Min(Top - TopTolerance - other.Bottom - other.BottomTolerance, other.Top - other.TopTolerance - Bottom - BottomTolerance));
}
