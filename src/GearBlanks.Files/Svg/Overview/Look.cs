using GearBlanks.Cutting;
using GearBlanks.Findings;

namespace GearBlanks.Files.Svg.Overview;

/// <summary>Sizes and inks of a picture. Lettering grows with the mechanism, within what can be read on paper.</summary>
/// <param name="Height">Height of a capital, mm.</param>
internal sealed record Look(double Height)
{
    public const string Dark = "#1c2730";
    public const string Paper = "#ffffff";

    private const double LeastHeight = 2;
    private const double GreatestHeight = 8;
    private const double ShareOfPlan = 0.018;

    // What a callout takes beside the plan, in capital heights.
    private const double HeightsPerAxis = 3.6;
    private const double HeightsPerGear = 1.75;

    // Light, and alike in grey: they part neighbours, they mean nothing.
    private static readonly string[] Tints = ["#d9e3ea", "#ece4d3", "#dce8d9", "#e9dde4"];

    /// <summary>Distance from one baseline to the next, mm.</summary>
    public double Line => 1.75 * Height;

    /// <summary>Free space between the parts of the sheet, mm.</summary>
    public double Gap => 3 * Height;

    /// <summary>Radius of the circle that a mark's letter needs, mm.</summary>
    public double MarkRadius => 0.95 * Height;

    public Ink Text => new(Dark, 0.1 * Height);

    public Ink BoldText => new(Dark, 0.16 * Height);

    public Ink Hairline => new("#5a6670", 0.05 * Height);

    /// <summary>Laid under thin lines so that they can be followed over teeth.</summary>
    public Ink Halo => new(Paper, 0.25 * Height);

    /// <summary>Smaller where many callouts must stand beside the plan.</summary>
    public static Look For(Extent plan, int axes, int gears)
    {
        double size = Math.Max(plan.Width, plan.Height);
        double forCallouts = 2 * size / ((HeightsPerAxis * axes) + (HeightsPerGear * gears));
        return new Look(Math.Clamp(Math.Min(size * ShareOfPlan, forCallouts), LeastHeight, GreatestHeight));
    }

    public static Ink Gear(int sandwich, double module) => new(Dark, Math.Clamp(0.12 * module, 0.05, 0.35), Tints[sandwich % Tints.Length], 0.5);

    public static string Word(Level level) => level switch
    {
        Level.Ok => "ok",
        Level.Tight => "tight",
        Level.Fails => "fails",
        _ => throw new ArgumentOutOfRangeException(nameof(level), level, null),
    };
}
