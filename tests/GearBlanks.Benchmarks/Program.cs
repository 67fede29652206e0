using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Loggers;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using GearBlanks.Benchmarks;

// In this process, because a project generated for each benchmark would be built by the rules of this repository.
// Ten rounds before it counts: the runtime compiles what is hot again after some dozens of calls.
ManualConfig config = ManualConfig.CreateEmpty()
    .AddJob(Job.ShortRun.WithWarmupCount(10).WithIterationCount(8).WithToolchain(InProcessEmitToolchain.Instance))
    .AddColumnProvider(DefaultColumnProviders.Instance)
    .AddColumn(StatisticColumn.Median, StatisticColumn.Min)
    .AddLogger(ConsoleLogger.Default)
    .WithOptions(ConfigOptions.DisableLogFile);

Console.WriteLine(PieceTable.Told());
Console.WriteLine(PolygonAccuracy.Told());
BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args, config);
