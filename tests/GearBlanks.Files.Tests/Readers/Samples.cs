using GearBlanks.Curves;
using GearBlanks.Cutting;

namespace GearBlanks.Files.Tests.Readers;

/// <summary>Drawings made by hand, lopsided so that a mirrored or turned reading shows.</summary>
public static class Samples
{
    private static readonly double Quarter = Math.Tan(Math.PI / 8);

    /// <summary>A plate with everything a drawing can carry. The arc on its right side decides its width.</summary>
    public static Drawing Plate { get; } = new("Plate for a tide dial's <arbor> & post",
    [
        new("holes", Operation.CutHoles, [Slot], [new(new Point(-8, 5), 4), new(new Point(9, -3), 1.25)]),
        new("outside", Operation.CutOutside, [PlateOutline], []),
        new("engrave", Operation.Engrave, [ArcPath.Strokes([new(-15, 15), new(-12.5, 18), new(-10, 15), new(-11, 15.5)])], []),
        new("note", Operation.Note, [ArcPath.Strokes([new(-20, -15), new(-20, -17), new(-20, -16), new(-10, -16), new(-10, -15), new(-10, -17)])], []),
    ]);

    /// <summary>The plate's outside by hand: the arc's rise is its half chord times tan 22.5 degrees = sqrt 2 - 1.</summary>
    public static Extent PlateOutside { get; } = new(-20, -12, 18 + (8 * (Math.Sqrt(2) - 1)), 22);

    /// <summary>A washer far from the origin: circles only.</summary>
    public static Drawing Washer { get; } = new("Washer",
    [
        new("holes", Operation.CutHoles, [], [new(new Point(1003.25, -517.5), 2.05)]),
        new("outside", Operation.CutOutside, [], [new(new Point(1003.25, -517.5), 3.9)]),
    ]);

    /// <summary>A wheel of many short arcs that turn both ways, and no straight piece.</summary>
    public static Drawing Wheel { get; } = new("Scalloped wheel",
    [
        new("holes", Operation.CutHoles, [], [new(default, 2.5)]),
        new("outside", Operation.CutOutside, [Scallops(83, 31.7, 0.31)], []),
    ]);

    /// <summary>Every drawing that goes through every reader, by a name for the test's title.</summary>
    public static IReadOnlyDictionary<string, Drawing> All { get; } = new Dictionary<string, Drawing>
    {
        ["plate"] = Plate,
        ["washer"] = Washer,
        ["wheel"] = Wheel,
    };

    private static ArcPath PlateOutline => new(
    [
        new(new Point(-17, -12), 0), new(new Point(15, -12), Quarter), new(new Point(18, -9), 0), new(new Point(18, 0), Quarter),
        new(new Point(18, 16), 0), new(new Point(10, 22), -0.2), new(new Point(2, 22), 0), new(new Point(-17, 22), Quarter),
        new(new Point(-20, 19), 0), new(new Point(-20, -9), Quarter),
    ], Closed: true);

    private static ArcPath Slot => new(
    [
        new(new Point(-12, -6), 0), new(new Point(-4, -6), Quarter), new(new Point(-3, -5), Quarter), new(new Point(-4, -4), 0),
        new(new Point(-12, -4), Quarter), new(new Point(-13, -5), Quarter),
    ], Closed: true);

    private static ArcPath Scallops(int count, double radius, double bulge) =>
        new([.. Enumerable.Range(0, 2 * count).Select(i => new PathVertex(Point.Polar(radius, i * Math.PI / count), i % 2 == 0 ? bulge : -bulge / 3))], Closed: true);
}
