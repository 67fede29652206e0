using GearBlanks.Curves;

namespace GearBlanks.Tests.Properties;

/// <summary>
/// Proves that the pieces of a path meet nowhere but end to end. A way that turns by less than half a turn in all cannot come back to itself;
/// pieces that are farther apart on the way lie in boxes that do not touch, halved as often as that takes.
/// </summary>
internal static class Apart
{
    private const int Deepest = 48;

    public static bool Are(IReadOnlyList<PathArc> pieces)
    {
        for (int i = 0; i < pieces.Count; i++)
        {
            double between = 0;
            for (int j = i + 1; j < pieces.Count; j++)
            {
                between += Kink(pieces[j - 1], pieces[j]);
                if (!Are(pieces[i], between, pieces[j], Deepest))
                {
                    return false;
                }

                between += Math.Abs(pieces[j].Sweep);
            }
        }

        return true;
    }

    private static bool Are(PathArc one, double between, PathArc other, int halvings)
    {
        if (Math.Abs(one.Sweep) + between + Math.Abs(other.Sweep) < Math.PI - 1e-9 || HaveBoxesApart(one, other))
        {
            return true;
        }

        if (halvings == 0)
        {
            return false;
        }

        // The longer one is halved; what is nearer on the way to the other turns less.
        if (one.From.DistanceTo(one.To) > other.From.DistanceTo(other.To))
        {
            (PathArc first, PathArc second) = one.Halves();
            return Are(second, between, other, halvings - 1) && Are(first, between + Math.Abs(second.Sweep), other, halvings - 1);
        }

        (PathArc near, PathArc far) = other.Halves();
        return Are(one, between, near, halvings - 1) && Are(one, between + Math.Abs(near.Sweep), far, halvings - 1);
    }

    private static bool HaveBoxesApart(PathArc one, PathArc other)
    {
        Vector x = new(1, 0);
        Vector y = new(0, 1);
        return one.Reach(x) < -other.Reach(-x) || other.Reach(x) < -one.Reach(-x)
            || one.Reach(y) < -other.Reach(-y) || other.Reach(y) < -one.Reach(-y);
    }

    private static double Kink(PathArc one, PathArc next) => Math.Abs(one.EndTangent.AngleTo(next.StartTangent));
}
