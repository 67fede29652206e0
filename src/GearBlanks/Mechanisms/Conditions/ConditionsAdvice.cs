using System.Globalization;
using GearBlanks.Findings;
using GearBlanks.Meshing.Builds;

namespace GearBlanks.Mechanisms.Conditions;

/// <summary>What to change for a mesh's backlash under its conditions, worked out so that doing it is enough.</summary>
internal sealed class ConditionsAdvice(Mesh mesh, MeshConditions under, MeshBuild build, ConditionLimits limits)
{
    private readonly double _module = mesh.Pair.First.Module;

    /// <summary>The least backlash that leaves nothing to say, mm; 0 where the limits have no such bound.</summary>
    public double LeastWanted => (limits.BacklashLeast.TightBelow ?? limits.BacklashLeast.FailsBelow ?? 0) * _module;

    /// <summary>The greatest backlash that leaves nothing to say, mm; infinite where the limits have no such bound.</summary>
    public double MostWanted => (limits.BacklashGreatest.TightAbove ?? limits.BacklashGreatest.FailsAbove ?? double.PositiveInfinity) * _module;

    /// <summary>For a least backlash, mm.</summary>
    public string ForLeast(double bound) => Move(bound - under.Least, Widest(under.Greatest), "take", one => one.Takes);

    /// <summary>For a greatest backlash, mm.</summary>
    public string ForGreatest(double bound) => Move(bound - under.Greatest, Widest(under.Least), "give", one => one.Gives);

    // How far the backlash may move before the finding at its other end bites, mm.
    private double Widest(double otherEnd) => otherEnd == under.Greatest
        ? MostWanted - otherEnd
        : otherEnd - LeastWanted;

    private string Move(double by, double room, string does, Func<Contribution, double> part)
    {
        string matters = Matters(does, part);
        if (!double.IsFinite(by))
        {
            return matters;
        }

        double over = Round(Math.Abs(by) - room);
        return over > 0
            ? $"No distance and no thinning suits every build: narrow the spread by {Length(over)} of backlash. {matters}"
            : $"{Distance(by)}, or {(by > 0 ? "thin" : "thicken")} the teeth by {Length(Thinning(by))} in all. {matters}";
    }

    private string Distance(double by)
    {
        bool further = by * build.Equation.Sense > 0;
        string verb = (further, mesh.Pair is Meshing.RackPair) switch
        {
            (true, true) => "Raise the gear",
            (false, true) => "Lower the gear",
            (true, false) => "Open the centre distance",
            _ => "Close the centre distance",
        };
        return $"{verb} by {Length(Further(by))}";
    }

    // The least step of distance on the grid of micrometres that is enough, found on the bound itself.
    private double Further(double by)
    {
        double sign = Math.Sign(by) * build.Equation.Sense;
        double most = Math.Abs(by);
        while (!IsEnough(most) && most < _module)
        {
            most *= 2;
        }

        double least = 0;
        while (most - least > 1e-4)
        {
            double middle = (least + most) / 2;
            (least, most) = IsEnough(middle) ? (least, middle) : (middle, most);
        }

        return Round(most);

        bool IsEnough(double further)
        {
            (double low, double high) = (build with { Distance = build.Distance + (sign * further) }).Bounds();
            return by > 0 ? low >= under.Least + by : high <= under.Greatest + by;
        }
    }

    // Each mm of thinning gives the same backlash, but for the growth of the gears.
    private double Thinning(double by)
    {
        const double step = 0.001;
        double gives = (build.LeastWith(0, -step) - under.Least) / step;
        return Round(Math.Abs(by) / gives * 1.001);
    }

    private string Matters(string does, Func<Contribution, double> part)
    {
        Contribution? most = under.Contributions.MaxBy(part);
        return most is null || part(most) <= 0 ? "" : $"Most of it: {most.Name}{(most.Of.Length == 0 ? "" : $" of {most.Of}")} can {does} {Length(part(most))}.";
    }

    private static double Round(double length) => Math.Ceiling((length * 1000) - 1e-6) / 1000;

    private static string Length(double length) => length.ToString("0.000", CultureInfo.InvariantCulture) + " mm";
}
