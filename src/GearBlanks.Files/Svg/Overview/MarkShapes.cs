using GearBlanks.Curves;
using GearBlanks.Findings;

namespace GearBlanks.Files.Svg.Overview;

/// <summary>What a mesh's mark looks like: each verdict has a shape of its own, so that it can be told without colour.</summary>
internal static class MarkShapes
{
    private const string Good = "#1f5a3c";
    private const string Warning = "#7a4b00";
    private const string Bad = "#8c1a1a";

    /// <summary>The greatest distance of a mark's outline from its centre, in the radius that its letter needs.</summary>
    public const double Reach = 1.8;

    /// <summary>How far under its middle a mark's centre lies, in the same radius: a triangle's corner reaches up farther than its side down.</summary>
    public static double Drop(Level level) => level == Level.Fails ? Reach / 4 : 0;

    /// <summary>The shapes of a mark: its outline and its letter.</summary>
    public static Shape[] Of(Level level, string letter, Point centre, Look look)
    {
        double height = (letter.Length > 1 ? 0.72 : 1) * 0.85 * look.Height;
        var (colour, filled) = level switch
        {
            Level.Ok => (Good, false),
            Level.Tight => (Warning, false),
            _ => (Bad, true),
        };
        var ink = new Ink(colour, 0.12 * look.Height, filled ? colour : Look.Paper);
        var letterInk = new Ink(filled ? Look.Paper : Look.Dark, 0.13 * height);
        return [new Shape([Outline(level, centre, look.MarkRadius)], ink), Lettered.Centred(letter, height, centre, letterInk)];
    }

    // A circle, a square on its corner, a triangle: each holds the circle that the letter needs.
    private static ArcPath Outline(Level level, Point centre, double radius) => level switch
    {
        Level.Ok => SvgPaths.InQuarters(new Circle(centre, radius)),
        Level.Tight => Polygon(4, centre, radius * 1.3),
        _ => Polygon(3, centre, radius * Reach),
    };

    private static ArcPath Polygon(int corners, Point centre, double radius) => new(
        [.. Enumerable.Range(0, corners).Select(i => new PathVertex(
            centre + (Vector.AtAngle((Math.PI / 2) + (2 * Math.PI * i / corners)) * radius), 0))],
        true);
}
