using GearBlanks.Curves;

namespace GearBlanks.Tests.Properties;

/// <summary>Distances from a chain of exact curves to points that travel along it, each by the foot of its perpendicular.</summary>
internal sealed class ExactDistance(IReadOnlyList<Curve> chain, double fineness)
{
    private const int MostSteps = 60;

    // A point near a corner, or near a curve shorter than the steps between points, may belong to one of the next curves.
    private const int Ahead = 3;

    private int _at;

    /// <summary>Begins anew at the curve it has come to.</summary>
    public int At
    {
        get => _at;
        set => _at = value;
    }

    public double To(Point p)
    {
        double least = double.PositiveInfinity;
        int nearest = _at;
        for (int i = _at; i < Math.Min(chain.Count, _at + Ahead); i++)
        {
            double distance = FromCurve(chain[i], p);
            (least, nearest) = distance < least ? (distance, i) : (least, nearest);
        }

        _at = nearest;
        return least;
    }

    // False position, halved where one end stays: how far the point lies ahead of the curve's normal falls along the curve.
    private double FromCurve(Curve curve, Point p)
    {
        double Ahead(double share)
        {
            double t = curve.Start + ((curve.End - curve.Start) * share);
            return (p - curve.PointAt(t)).Dot(curve.TangentAt(t));
        }

        (double low, double high) = (0, 1);
        (double atLow, double atHigh) = (Ahead(low), Ahead(high));
        if (atLow <= 0 || atHigh >= 0)
        {
            return p.DistanceTo(atLow <= 0 ? curve.StartPoint : curve.EndPoint);
        }

        double foot = 0;
        int side = 0;
        for (int i = 0; i < MostSteps; i++)
        {
            foot = low + ((high - low) * atLow / (atLow - atHigh));
            double there = Ahead(foot);
            if (Math.Abs(there) <= fineness)
            {
                break;
            }

            if (there > 0)
            {
                (low, atLow) = (foot, there);
                atHigh = side > 0 ? atHigh / 2 : atHigh;
                side = 1;
            }
            else
            {
                (high, atHigh) = (foot, there);
                atLow = side < 0 ? atLow / 2 : atLow;
                side = -1;
            }
        }

        return p.DistanceTo(curve.PointAt(curve.Start + ((curve.End - curve.Start) * foot)));
    }
}
