using GearBlanks.Curves;
using GearBlanks.Curves.Offsets;

namespace GearBlanks.Cutting.Reach;

/// <summary>Whether a cutter goes through a hole and along its sides.</summary>
internal static class HoleReach
{
    // Halvings of the largest that does: to a few micrometres.
    private const int Halvings = 14;

    /// <summary>True where it does; it may leave its own round in the corners.</summary>
    /// <param name="hole">The hole's contour, counter-clockwise.</param>
    /// <param name="diameter">The cutter's diameter, mm.</param>
    public static bool Takes(Outline hole, double diameter) => hole.AsCircle is { } circle
        ? circle.Diameter >= diameter
        : OutlineOffset.Of(hole, new Beam(diameter / 2, diameter / 2), outward: false).Shape is not null;

    /// <summary>The largest cutter that does, mm, where one of a diameter does not.</summary>
    public static double Largest(Outline hole, double diameter)
    {
        if (hole.AsCircle is { } circle)
        {
            return circle.Diameter;
        }

        (double goes, double sticks) = (0, diameter);
        for (int i = 0; i < Halvings; i++)
        {
            double middle = (goes + sticks) / 2;
            (goes, sticks) = Takes(hole, middle) ? (middle, sticks) : (goes, middle);
        }

        return goes;
    }
}
