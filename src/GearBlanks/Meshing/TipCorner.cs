namespace GearBlanks.Meshing;

/// <summary>Where the mate's tip corner, on its way past a tooth's side while the flanks touch, comes nearest to the fillet, and whether it digs in.</summary>
internal static class TipCorner
{
    // The room is smooth on the scale of a module, and both stretches are shorter: there are no more dips than these find.
    private const int FilletSamples = 32;
    private const int FlankSamples = 16;

    // Flanks that touch on the line of action are found at zero but for rounding.
    private const double Rounding = 1e-7;

    // Of a stretch: the room is least there, so that the square of it is all that is lost.
    private const double Accuracy = 1e-6;

    private static readonly double Golden = (Math.Sqrt(5) - 1) / 2;

    /// <summary>
    /// Least room between the corner and the side beyond the form circle, mm: negative where they dig in, there or on the flank as far as the working
    /// circle; null where the corner stays short of the form circle and free.
    /// </summary>
    public static double? LeastRoom(CornerPath path, ToothSide side, double form, double working)
    {
        double toForm = path.Reach(form);
        double toWorking = path.Reach(working);
        double inner = toForm > 0 ? toForm : 0;
        double? fillet = inner > 0 ? Least(path, side, -inner, inner, FilletSamples) : null;
        double flank = toWorking > inner
            ? Math.Min(Least(path, side, -toWorking, -inner, FlankSamples), Least(path, side, inner, toWorking, FlankSamples))
            : double.PositiveInfinity;
        double least = Math.Min(flank, fillet ?? double.PositiveInfinity);
        return least < -Rounding ? least : fillet is < 0 ? 0 : fillet;
    }

    private static double Least(CornerPath path, ToothSide side, double from, double to, int samples)
    {
        double step = (to - from) / samples;
        Span<double> rooms = stackalloc double[samples + 1];
        int best = 0;
        for (int i = 0; i <= samples; i++)
        {
            rooms[i] = side.Room(path.At(from + (i * step)));
            best = rooms[i] < rooms[best] ? i : best;
        }

        (int left, int right) = (Math.Max(0, best - 1), Math.Min(samples, best + 1));
        Sample At(int i, ReadOnlySpan<double> known) => new(from + (i * step), known[i]);
        return Dip(path, side, At(left, rooms), At(best, rooms), At(right, rooms), Accuracy * (to - from));
    }

    // Brent's minimisation: the vertex of the parabola through the three best points where it leads on, else the golden section of the wider side.
    private static double Dip(CornerPath path, ToothSide side, Sample left, Sample best, Sample right, double accuracy)
    {
        (double low, double high) = (left.At, right.At);
        (Sample second, Sample third) = left.Room < right.Room ? (left, right) : (right, left);
        (double step, double before) = (high - low, high - low);
        while (Math.Abs(best.At - ((low + high) / 2)) + ((high - low) / 2) > 2 * accuracy)
        {
            double vertex = Vertex(best, second, third);
            if (Math.Abs(vertex) < Math.Abs(before) / 2 && best.At + vertex > low && best.At + vertex < high)
            {
                (before, step) = (step, vertex);
            }
            else
            {
                before = (best.At < (low + high) / 2 ? high : low) - best.At;
                step = (1 - Golden) * before;
            }

            double at = best.At + (Math.Abs(step) < accuracy ? Math.CopySign(accuracy, step) : step);
            var found = new Sample(at, side.Room(path.At(at)));
            if (found.Room <= best.Room)
            {
                (low, high) = found.At < best.At ? (low, best.At) : (best.At, high);
                (best, second, third) = (found, best, second);
            }
            else
            {
                (low, high) = found.At < best.At ? (found.At, high) : (low, found.At);
                (second, third) = found.Room <= second.Room || second.At == best.At ? (found, second)
                    : found.Room <= third.Room || third.At == best.At || third.At == second.At ? (second, found)
                    : (second, third);
            }
        }

        return best.Room;
    }

    // Way from the best point to the vertex of the parabola through all three; not a number where they lie on a line.
    private static double Vertex(Sample best, Sample second, Sample third)
    {
        (double a, double b) = (second.At - best.At, third.At - best.At);
        (double ofA, double ofB) = (b * (second.Room - best.Room), a * (third.Room - best.Room));
        return ((b * ofA) - (a * ofB)) / (2 * (ofA - ofB));
    }

    private readonly record struct Sample(double At, double Room);
}
