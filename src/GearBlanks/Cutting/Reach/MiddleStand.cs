using GearBlanks.Curves;

namespace GearBlanks.Cutting.Reach;

/// <summary>
/// Where a cutter too large for the root gets stuck on its way in along the gap's middle line: there of all points of the outline, at a distance w from the
/// line and a height y, y + sqrt(R^2 - w^2) is greatest. Quicker than to follow the cutter everywhere, for searches.
/// </summary>
internal static class MiddleStand
{
    private const int Samples = 12;

    public static CutterStand Of(HalfGap gap, double radius)
    {
        (int index, double at, double height) = (0, 0, double.NegativeInfinity);
        for (int i = 0; i < gap.Curves.Length; i++)
        {
            Curve curve = gap.Curves[i];
            (double touch, double depth) = LeastValue.Of(t => -HeightOver(gap, radius, curve.PointAt(t)), curve.Start, curve.End, Samples);
            (index, at, height) = -depth > height ? (i, touch, -depth) : (index, at, height);
        }

        Point centre = gap.Root + (gap.Out * height);
        return new CutterStand(new Circle(centre, radius), centre - (gap.Out * radius), gap.Curves[index].PointAt(at), new ChainPlace(0, gap.Curves[0].Start), new ChainPlace(index, at), true);
    }

    // Below the root nothing stands; what is further aside than the radius does not stop the cutter.
    private static double HeightOver(HalfGap gap, double radius, Point point)
    {
        double aside = gap.AsideOf(point);
        return aside < radius ? gap.HeightOf(point) + Math.Sqrt((radius - aside) * (radius + aside)) : -aside;
    }
}
