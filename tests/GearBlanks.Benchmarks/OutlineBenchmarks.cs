using BenchmarkDotNet.Attributes;
using GearBlanks.Curves;
using GearBlanks.Curves.Fitting;
using GearBlanks.Teeth;

namespace GearBlanks.Benchmarks;

/// <summary>From the numbers of a gear to its exact outline, and on to arcs within 0.001 mm. Wanted at 60 teeth: at most 50 microseconds.</summary>
[MemoryDiagnoser(displayGenColumns: false)]
public class OutlineBenchmarks
{
    /// <summary>Tooth counts: what is allocated grows in proportion to them, less what one tooth takes.</summary>
    [Params(15, 60, 240, 960)]
    public int Teeth { get; set; }

    [Benchmark]
    public Outline ExactOutline() => ExternalGear.Create(Gears.Of(Teeth)).Outline();

    [Benchmark]
    public ArcPath OutlineAndArcs() => OutlineFit.Fit(ExternalGear.Create(Gears.Of(Teeth)).Outline(), Gears.Tolerance);
}
