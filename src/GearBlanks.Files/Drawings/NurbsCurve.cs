using GearBlanks.Curves;

namespace GearBlanks.Files.Drawings;

/// <summary>A spline by control points, knots and weights: a point at a parameter by de Boor's steps.</summary>
internal sealed class NurbsCurve(int degree, double[] knots, Point[] points, double[] weights)
{
    public int Degree => degree;

    /// <summary>The knots between which the curve runs, each once: it is smooth from one to the next.</summary>
    public IEnumerable<double> Joints()
    {
        double last = double.NaN;
        for (int i = degree; i <= points.Length; i++)
        {
            if (knots[i] != last)
            {
                last = knots[i];
                yield return last;
            }
        }
    }

    public Point At(double parameter, double spanStart)
    {
        int span = degree;
        while (span < points.Length - 1 && knots[span + 1] <= spanStart)
        {
            span++;
        }

        Span<(double X, double Y, double W)> work = stackalloc (double, double, double)[degree + 1];
        for (int i = 0; i <= degree; i++)
        {
            int at = span - degree + i;
            work[i] = (points[at].X * weights[at], points[at].Y * weights[at], weights[at]);
        }

        for (int level = 1; level <= degree; level++)
        {
            for (int i = degree; i >= level; i--)
            {
                int at = span - degree + i;
                double width = knots[at + degree - level + 1] - knots[at];
                double share = width == 0 ? 0 : (parameter - knots[at]) / width;
                work[i] = (Mix(work[i - 1].X, work[i].X, share), Mix(work[i - 1].Y, work[i].Y, share), Mix(work[i - 1].W, work[i].W, share));
            }
        }

        return new Point(work[degree].X / work[degree].W, work[degree].Y / work[degree].W);
    }

    private static double Mix(double low, double high, double share) => ((1 - share) * low) + (share * high);
}
