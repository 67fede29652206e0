using BenchmarkDotNet.Attributes;
using GearBlanks.Curves;
using GearBlanks.Cutting.Reach;
using GearBlanks.Mechanisms.Reach;
using GearBlanks.Meshing;
using GearBlanks.Teeth;

namespace GearBlanks.Benchmarks;

/// <summary>The reach into one gear: the outline as cut, what stays uncut, and the three largest tools. The target is 1 ms for all of it.</summary>
[MemoryDiagnoser(displayGenColumns: false)]
public class ReachBenchmarks
{
    // Modules: stuck between the flanks.
    private const double Radius = 0.6;

    private static readonly BasicRack Rack = new("type A", Math.PI / 9, 1, 1.25, 0.38);

    private ExternalGear _gear = null!;
    private GearPair _pair = null!;

    /// <summary>Teeth of the gear; its mate has 40. Eight are undercut.</summary>
    [Params(8, 20, 100)]
    public int Teeth { get; set; }

    [GlobalSetup]
    public void Make()
    {
        _gear = ExternalGear.Create(new GearData(Teeth, 1, Rack));
        var mate = ExternalGear.Create(new GearData(40, 1, Rack));
        _pair = GearPair.At(_gear, mate, GearPair.ZeroBacklashDistance(_gear, mate)!.Value + 0.06);
    }

    [Benchmark]
    public Outline OutlineAsCut() => CutterReach.Outline(_gear, Radius);

    [Benchmark]
    public (double Depth, double? RunningFree) Everything()
    {
        var gap = HalfGap.Of(_gear);
        CutHalf half = CutterReach.Half(_gear, gap, Radius);
        double root = LargestTools.RootTouching(gap);
        double whole = LargestTools.WholeFillet(gap, root);
        double? free = RunningFree.Radius(_gear, gap, root, whole, _pair, isFirst: true);
        _ = CutterReach.Outline(_gear, gap, half, Radius);
        return (UncutRest.Of(gap, half).Depth, free);
    }
}
