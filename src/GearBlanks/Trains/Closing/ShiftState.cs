using System.Collections.Immutable;
using GearBlanks.Findings;
using GearBlanks.Meshing;
using GearBlanks.Teeth;

namespace GearBlanks.Trains.Closing;

/// <summary>One choice of profile shifts, worked out: how far it is from what is comfortable and from what is allowed, and how well it suits the rule.</summary>
/// <param name="Data">The gears' numbers.</param>
/// <param name="Discomfort">How far the worst figure lies beyond its comfortable bound, in modules; 0 or less where all are comfortable.</param>
/// <param name="Excess">How far the worst figure lies beyond what fails, in modules; 0 or less where none fails.</param>
/// <param name="Objective">What the rule makes least.</param>
/// <param name="Worst">The figures that are worst, in sentences.</param>
internal sealed record ShiftState(ImmutableArray<ToothData> Data, double Discomfort, double Excess, double Objective, ImmutableArray<string> Worst)
{
    // What no teeth can have is worse than any figure.
    private const double Impossible = 1000;

    // A sliding without bound, where contact comes down to the base circle, as a number.
    private const double Unbounded = 1e3;

    // Figures this near the worst one stand in the way as much.
    private const double AsBad = 1e-3;

    public Level Level => Discomfort <= 0 ? Level.Ok : Excess <= 0 ? Level.Tight : Level.Fails;

    public static ShiftState Of(ClosingTask task, ShiftSums sums, Func<int, double> shift)
    {
        ToothData[] data = [.. sums.Gears.Select((gear, place) => task.Gears[gear].Data with { ProfileShift = shift(place) })];
        if (task.ShortensTips)
        {
            ShortenTips(task, sums, data);
        }

        var figures = new List<(string Words, double Discomfort, double Excess)>();
        Toothing?[] teeth = [.. data.Select((one, place) => Made(one, task.Gears[sums.Gears[place]].Name, figures))];
        double objective = 0;
        if (figures.Count == 0)
        {
            for (int place = 0; place < teeth.Length; place++)
            {
                foreach (PairFigure figure in PairFigures.OfTeeth(teeth[place]!, 0, task.Limits))
                {
                    Add(figure, task.Gears[sums.Gears[place]].Name, teeth[place]!.Module);
                }
            }

            foreach (int m in sums.Meshes)
            {
                ClosingMesh mesh = task.Meshes[m];
                GearPair pair = GearPair.At(teeth[sums.Gears.IndexOf(mesh.First)]!, teeth[sums.Gears.IndexOf(mesh.Second)]!, mesh.Distance);
                // The backlash is as it is wanted.
                foreach (PairFigure figure in PairFigures.OfMesh(pair, task.Limits).Where(figure => figure.Name != "backlash"))
                {
                    string side = figure.Side == 0 ? "" : $", {task.Gears[figure.Side == 1 ? mesh.First : mesh.Second].Name}";
                    Add(figure, mesh.Name + side, pair.First.Module);
                }

                objective += Term(pair, task.Rule);
            }
        }

        double excess = figures.Max(figure => figure.Excess);
        return new ShiftState(
            [.. data], figures.Max(figure => figure.Discomfort), excess, objective,
            [.. figures.Where(figure => figure.Excess >= excess - AsBad).Select(figure => figure.Words)]);

        void Add(PairFigure figure, string of, double module)
        {
            double scale = figure.Unit == "mm" ? module : 1;
            Limit limit = figure.Limit;
            double discomfort = Math.Max(Beyond(limit.TightBelow ?? limit.FailsBelow, figure.Value, 1), Beyond(limit.TightAbove ?? limit.FailsAbove, figure.Value, -1)) / scale;
            double excess = Math.Max(Beyond(limit.FailsBelow, figure.Value, 1), Beyond(limit.FailsAbove, figure.Value, -1)) / scale;
            figures.Add(($"{figure.Name} of {of}, {Words.Figure(figure.Value, figure.Unit)}", Math.Max(discomfort, excess), excess));
        }
    }

    private static double Beyond(double? bound, double value, int sense) => bound is { } b ? (sense * (b - value)) - Limit.Rounding : double.NegativeInfinity;

    private static Toothing? Made(ToothData data, string name, List<(string Words, double Discomfort, double Excess)> figures)
    {
        try
        {
            return Toothing.Of(data);
        }
        catch (GearGeometryException e)
        {
            double excess = Impossible + Math.Abs(data.ProfileShift);
            figures.Add(($"{e.ShapeCase} of {name}", excess, excess));
            return null;
        }
    }

    // Each tip as far as the mate's roots leave the comfortable clearance; tips that the job gives stay.
    private static void ShortenTips(ClosingTask task, ShiftSums sums, ToothData[] data)
    {
        Limit limit = task.Limits.TipClearance;
        double clearance = limit.TightBelow ?? limit.FailsBelow ?? 0;
        ToothData[] before = [.. data];
        foreach (int m in sums.Meshes)
        {
            ClosingMesh mesh = task.Meshes[m];
            (int one, int other) = (sums.Gears.IndexOf(mesh.First), sums.Gears.IndexOf(mesh.Second));
            Shorten(one, other, mesh.Distance);
            Shorten(other, one, mesh.Distance);
        }

        void Shorten(int place, int mate, double distance)
        {
            if (TipFitting.Longest(before[place], before[mate], distance, clearance * before[place].Module) is { } longest)
            {
                data[place] = TipFitting.NoLonger(data[place], longest);
            }
        }
    }

    private static double Term(GearPair pair, ShiftRule rule)
    {
        switch (rule)
        {
            case ShiftRule.EqualLand:
                return Square((pair.First.TipThickness - pair.Second.TipThickness) / pair.First.Module);
            case ShiftRule.EqualSliding:
                return pair.ContactEnds is var (root, tip)
                    ? Square(Greatest(root.FirstSliding, tip.FirstSliding) - Greatest(root.SecondSliding, tip.SecondSliding))
                    : Square(Unbounded);
            default:
                bool isFirstPinion = pair.First is not RackBar && (pair.Second is RackBar || pair.First.Teeth <= pair.Second.Teeth);
                return Square((rule == ShiftRule.Wheel) == isFirstPinion ? pair.First.Data.ProfileShift : pair.Second.Data.ProfileShift);
        }
    }

    private static double Greatest(double one, double other) => Math.Min(Unbounded, Math.Max(Math.Abs(one), Math.Abs(other)));

    private static double Square(double value) => value * value;
}
