using GearBlanks.Curves;
using GearBlanks.Cutting;
using GearBlanks.Mechanisms;

namespace GearBlanks.Files.Svg.Overview;

/// <summary>Centre marks of the axes.</summary>
internal static class AxisFigures
{
    public static Figure Of(Axis axis, Look look)
    {
        double arm = 0.7 * look.Height;
        var across = new Vector(arm, 0);
        var up = new Vector(0, arm);
        Shape Cross(Ink ink) => new(
            [ArcPath.Strokes([axis.Position - across, axis.Position + across]), ArcPath.Strokes([axis.Position - up, axis.Position + up])], ink);
        return new Figure(
            $"axis {axis.Name}",
            [Cross(look.Halo), Cross(look.Text with { Width = 0.09 * look.Height }), new Shape([SvgPaths.InQuarters(new Circle(axis.Position, 0.2 * look.Height))], new Ink(null, 0, Look.Dark))],
            new Extent(axis.Position.X, axis.Position.Y, axis.Position.X, axis.Position.Y).Grown(arm));
    }
}
