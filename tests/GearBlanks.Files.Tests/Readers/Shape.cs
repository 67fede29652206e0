using GearBlanks.Curves;
using GearBlanks.Cutting;

namespace GearBlanks.Files.Tests.Readers;

/// <summary>A path or a circle as a reader understood it, or as the drawing means it.</summary>
/// <param name="Layer">The layer it is on.</param>
/// <param name="Closed">True for circles and closed paths.</param>
/// <param name="Box">What it covers, mm.</param>
/// <param name="Area">What it encloses, mm2, negative where it runs clockwise; 0 where it is open.</param>
public sealed record Shape(string Layer, bool Closed, Extent Box, double Area)
{
    /// <summary>The shapes of a drawing, worked out here and not by the code that is tested.</summary>
    public static IReadOnlyList<Shape> Of(Drawing drawing) => [.. drawing.Layers.SelectMany(layer =>
        layer.Paths.Select(path => Of(layer.Name, path)).Concat(layer.Circles.Select(circle => Of(layer.Name, circle))))];

    public static Shape Of(string layer, Circle circle) => new(
        layer, true, new Extent(circle.Centre.X, circle.Centre.Y, circle.Centre.X, circle.Centre.Y).Grown(circle.Radius), Math.PI * circle.Radius * circle.Radius);

    public static Shape Of(string layer, ArcPath path)
    {
        Extent box = Extent.Nothing;
        double area = 0;
        int pieces = path.Closed ? path.Vertices.Length : path.Vertices.Length - 1;
        for (int i = 0; i < pieces; i++)
        {
            PathVertex from = path.Vertices[i];
            Point to = path.Vertices[(i + 1) % path.Vertices.Length].Point;
            double sweep = 4 * Math.Atan(from.Bulge);
            double chord = from.Point.DistanceTo(to);
            area += ((from.Point.X * to.Y) - (to.X * from.Point.Y)) / 2;
            area += sweep == 0 ? 0 : chord * chord * (sweep - Math.Sin(sweep)) / (8 * Math.Pow(Math.Sin(sweep / 2), 2));
            box = PointsThatCount(from.Point, to, sweep).Aggregate(box, (all, p) => all.With(new Extent(p.X, p.Y, p.X, p.Y)));
        }

        return new Shape(layer, path.Closed, box, path.Closed ? area : 0);
    }

    // The ends, and where the arc runs through the directions 0, 90, 180 and 270 degrees from its centre.
    private static IEnumerable<Point> PointsThatCount(Point from, Point to, double sweep)
    {
        yield return from;
        yield return to;
        if (sweep == 0)
        {
            yield break;
        }

        double radius = from.DistanceTo(to) / (2 * Math.Sin(Math.Abs(sweep) / 2));
        double outward = (to - from).Angle - ((Math.PI / 2) * Math.Sign(sweep));
        double start = outward - (sweep / 2);
        Point centre = from - (Vector.AtAngle(start) * radius);
        for (int k = -8; k <= 8; k++)
        {
            double travelled = ((k * Math.PI / 2) - start) * Math.Sign(sweep);
            if (travelled > 0 && travelled < Math.Abs(sweep))
            {
                yield return centre + (Vector.AtAngle(k * Math.PI / 2) * radius);
            }
        }
    }
}
