using BenchmarkDotNet.Attributes;
using GearBlanks.Curves;
using GearBlanks.Curves.Fitting;
using GearBlanks.Teeth;
using NetTopologySuite.Geometries;

namespace GearBlanks.Benchmarks;

/// <summary>
/// The same gear of 60 teeth at the same accuracy, by exact curves and by rolling a rack polygon over a blank. Wanted: the whole gear
/// at least 10,000 times faster by curves.
/// </summary>
public class PolygonBenchmarks
{
    [Benchmark(Baseline = true)]
    public ArcPath ByCurves() => OutlineFit.Fit(ExternalGear.Create(Gears.Of(PolygonGear.Teeth)).Outline(), Gears.Tolerance);

    /// <summary>Every gap cut by every position of the rack, as a general difference of polygons does.</summary>
    [Benchmark]
    public Geometry ByPolygons() => PolygonGear.Whole();

    /// <summary>The same helped on by knowing that all gaps are alike: one is cut, and its turned copies are taken from the blank.</summary>
    [Benchmark]
    public Geometry ByOnePolygonGapRepeated() => PolygonGear.OneGapRepeated();
}
