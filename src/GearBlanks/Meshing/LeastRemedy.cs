using System.Globalization;
using GearBlanks.Findings;
using GearBlanks.Teeth;

namespace GearBlanks.Meshing;

/// <summary>The least single change of distance, profile shift or tip that mends a figure and worsens no other of the pair or its teeth.</summary>
internal sealed class LeastRemedy
{
    private const string None = "No single change of distance, profile shift or tip mends it without worsening another check of this mesh.";

    // Steps of what people type in: distance in micrometres, shifts in thousandths, tips in hundredths of a millimetre.
    private const double DistanceStep = 0.001;
    private const double ShiftStep = 0.001;
    private const double TipStep = 0.01;

    // In modules and coefficients: what would take more is another design.
    private const double MostDistance = 1;
    private const double MostShift = 1;
    private const double MostTip = 1;

    private readonly GearPair _pair;
    private readonly Limits _limits;
    private readonly double _wantedBacklash;
    private readonly Lazy<PairFigure[]> _before;
    private readonly Lever[] _levers;

    public LeastRemedy(GearPair pair, string firstName, string secondName, Limits limits, double wantedBacklash)
    {
        _pair = pair;
        _limits = limits;
        _wantedBacklash = wantedBacklash;
        _before = new Lazy<PairFigure[]>(() => [.. Figures(pair)]);
        _levers = [.. Levers(firstName, secondName)];
    }

    /// <summary>The sentence on a figure that is not ok.</summary>
    public string Sentence(PairFigure figure)
    {
        string[] remedies = [.. _levers
            .Select(lever => (Lever: lever, Mended: Least(lever, figure)))
            .Where(found => found.Mended is not null)
            .OrderBy(found => found.Mended!.Value.Steps * found.Lever.Weight)
            .Where(found => WorsensNothing(found.Mended!.Value.Pair, figure))
            .Take(2)
            .Select(found => found.Lever.Words(found.Mended!.Value.Steps))];
        return remedies.Length == 0 ? None : $"Least that mends it and worsens nothing else in this mesh: {string.Join("; or ", remedies)}.";
    }

    private (int Steps, GearPair Pair)? Least(Lever lever, PairFigure figure)
    {
        double bound = figure.Limit.Comfortable(figure.Value);
        int side = Math.Sign(bound - figure.Value);
        GearPair? mended = null;
        double? Miss(int steps)
        {
            if (lever.Pair(steps) is not { } pair)
            {
                return null;
            }

            double miss = PairFigures.One(pair, figure.Name, figure.Side, _limits) is { } now ? side * (bound - now.Value) : double.NegativeInfinity;
            mended = miss > Limit.Rounding ? mended : pair;
            return miss;
        }

        // Each that mends it needs fewer steps than the one before, so the last one is the least.
        return LeastSteps.Of(side * (bound - figure.Value), lever.Most, Miss) is { } least ? (least, mended!) : null;
    }

    private bool WorsensNothing(GearPair pair, PairFigure mended) =>
        Figures(pair).All(after => after.Level == Level.Ok || (!after.IsOf(mended) && Same(_before.Value, after) is { } before && after.Level <= before.Level));

    private IEnumerable<PairFigure> Figures(GearPair pair) => PairFigures.OfMesh(pair, _limits)
        .Concat(PairFigures.OfTeeth(pair, _limits))
        .Append(new PairFigure(
            "backlash-miss", 0, Math.Abs(pair.CircumferentialBacklash - _wantedBacklash), _limits.BacklashMiss.Times(pair.First.Module), "mm"));

    private static PairFigure? Same(IEnumerable<PairFigure> figures, PairFigure figure)
    {
        foreach (PairFigure other in figures)
        {
            if (other.IsOf(figure))
            {
                return other;
            }
        }

        return null;
    }

    private IEnumerable<Lever> Levers(string firstName, string secondName)
    {
        double m = _pair.First.Module;
        foreach (int sign in (int[])[1, -1])
        {
            double At(int steps) => _pair.CentreDistance + (sign * steps * DistanceStep);
            yield return new Lever(
                steps => Made(() => _pair.First, () => _pair.Second, At(steps)), (int)(MostDistance * m / DistanceStep), DistanceStep / m,
                steps => PairAdvice.Move(_pair, At(steps)));
            yield return Shifted(sign, firstName, isFirst: true);
            yield return Shifted(sign, secondName, isFirst: false);
        }

        yield return Shortened(firstName, isFirst: true);
        yield return Shortened(secondName, isFirst: false);
    }

    private Lever Shifted(int sign, string name, bool isFirst)
    {
        ToothData data = isFirst ? _pair.First.Data : _pair.Second.Data;
        return new Lever(
            steps => WithOne(data with { ProfileShift = data.ProfileShift + (sign * steps * ShiftStep) }, isFirst), (int)(MostShift / ShiftStep), ShiftStep,
            steps => $"shift {name} by {(sign * steps * ShiftStep).ToString("+0.000;-0.000", CultureInfo.InvariantCulture)}");
    }

    private Lever Shortened(string name, bool isFirst)
    {
        Toothing teeth = isFirst ? _pair.First : _pair.Second;
        double m = teeth.Module;
        double At(int steps) => TipChange.Shortened(teeth, steps * TipStep);
        return new Lever(
            steps => WithOne(teeth.Data.WithTip(At(steps)), isFirst), (int)(MostTip * m / TipStep), TipStep / m,
            steps => $"{TipChange.Verb(teeth, isInSentence: true)} of {name} to {Words.Mm(At(steps))}");
    }

    private GearPair? WithOne(ToothData changed, bool isFirst) => isFirst
        ? Made(() => Toothing.Of(changed), () => _pair.Second, _pair.CentreDistance)
        : Made(() => _pair.First, () => Toothing.Of(changed), _pair.CentreDistance);

    private static GearPair? Made(Func<Toothing> first, Func<Toothing> second, double distance)
    {
        try
        {
            return GearPair.At(first(), second(), distance);
        }
        catch (GearGeometryException)
        {
            return null;
        }
    }

    /// <summary>One thing that can be changed, in steps of what people type in.</summary>
    /// <param name="Pair">The pair after so many steps; null where there is none.</param>
    /// <param name="Most">The most steps.</param>
    /// <param name="Weight">A step in modules, by which changes are compared.</param>
    /// <param name="Words">The change in words.</param>
    private sealed record Lever(Func<int, GearPair?> Pair, int Most, double Weight, Func<int, string> Words);
}
