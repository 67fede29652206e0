using BenchmarkDotNet.Attributes;
using GearBlanks.Rolling;
using GearBlanks.Teeth;

namespace GearBlanks.Benchmarks;

/// <summary>
/// A roll of 20/40 teeth over one turn of the first in 0.1 degree steps, both flanks, made ready from exact outlines. Wanted: at most 20 ms; and 1,000,000 contact
/// solves a second, one for each flank and position.
/// </summary>
[MemoryDiagnoser(displayGenColumns: false)]
public class RollBenchmarks
{
    private const int Solves = 7200;

    private readonly Toothing _one = Toothing.Of(Gears.Of(20) with { Thinning = 0.02 });
    private readonly Toothing _other = Toothing.Of(Gears.Of(40) with { Thinning = 0.02 });
    private ContactSolver? _solver;

    [GlobalSetup]
    public void Make() => _solver = new ContactSolver(new RollPlacing(RollGear.Of("one", _one), RollGear.Of("other", _other)));

    /// <summary>The whole roll: outlines, sides, both flanks, figures.</summary>
    [Benchmark]
    public double Roll() => RollTest.Of(new RollRequest(RollGear.Of("one", _one), RollGear.Of("other", _other), 30) { Length = RollLength.FirstTurn }).Backlash.Mean;

    /// <summary>Contact alone: the time of one solve.</summary>
    [Benchmark(OperationsPerInvoke = Solves)]
    public double Contact()
    {
        double sum = 0;
        for (int i = 0; i < Solves / 2; i++)
        {
            double turn = i * Math.PI / 1800;
            double even = _solver!.Placing.TurnFor(turn);
            sum += _solver.At(turn, 30, true, even).Limit - _solver.At(turn, 30, false, even).Limit;
        }

        return sum;
    }
}
