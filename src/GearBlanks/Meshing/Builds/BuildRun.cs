namespace GearBlanks.Meshing.Builds;

/// <summary>Many random builds of a train, counted.</summary>
internal static class BuildRun
{
    // Long enough that a block's arrays cost nothing, short enough that all cores have work.
    private const int BlockLength = 2048;

    /// <summary>The counts: of a seed always the same, whatever the number of threads.</summary>
    /// <param name="train">The train.</param>
    /// <param name="spread">How quantities lie between their limits.</param>
    /// <param name="seed">The seed.</param>
    /// <param name="builds">How many builds, at least 1.</param>
    /// <param name="threads">How many threads at most; -1 for as many as the machine has.</param>
    public static BuildTally Of(TrainBuild train, Spread spread, int seed, int builds, int threads = -1)
    {
        var rows = new BuildRows(train, spread);
        var tallies = new BuildTally[(builds + BlockLength - 1) / BlockLength];
        Parallel.For(0, tallies.Length, new ParallelOptions { MaxDegreeOfParallelism = threads }, i => tallies[i] =
            new BuildBlock(rows, RandomStream.Of((ulong)seed, (ulong)i)).Run(Math.Min(BlockLength, builds - (i * BlockLength))));
        return tallies.Aggregate((sum, next) => sum.With(next));
    }
}
