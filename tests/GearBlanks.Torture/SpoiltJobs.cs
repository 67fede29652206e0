using System.Diagnostics;
using System.Text;
using GearBlanks.Files.Tests.Jobs;

namespace GearBlanks.Torture;

/// <summary>A run over spoilt jobs. Each has a seed of its own, so that it is the same whatever the number of threads.</summary>
internal sealed class SpoiltJobs(string repository, string failures, int seed)
{
    private readonly JobMutator _mutator = new(Sources.Jobs(repository), Sources.Fragments(repository));
    private readonly long[] _ends = new long[Enum.GetValues<End>().Length];
    private long _slowest;

    public long Failed => _ends[(int)End.Failed];

    public void Try(int count)
    {
        Directory.CreateDirectory(failures);
        Parallel.For(0, count, new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount }, i =>
        {
            // The seeds of neighbouring runs must not overlap: a large odd factor spreads them.
            string text = _mutator.Next(new Random(unchecked((seed * 1_000_003) + i)));
            (End end, TimeSpan took, string? failure) = Trial.Of(text);
            Interlocked.Increment(ref _ends[(int)end]);
            Raise(ref _slowest, took.Ticks);
            if (failure is not null)
            {
                string name = Path.Combine(failures, FormattableString.Invariant($"seed-{seed}-{i}"));
                File.WriteAllText(name + ".toml", text, new UTF8Encoding(false));
                File.WriteAllText(name + ".txt", failure);
                Console.WriteLine($"{name}: {failure.Split('\n')[0]}");
            }
        });
    }

    public string Told()
    {
        using var process = Process.GetCurrentProcess();
        string ends = string.Join(", ", Enum.GetValues<End>().Select(end => FormattableString.Invariant($"{_ends[(int)end]} {end}")));
        return FormattableString.Invariant(
            $"{_ends.Sum()} spoilt jobs: {ends}; the slowest took {TimeSpan.FromTicks(_slowest).TotalSeconds:0.000} s; peak memory {process.PeakWorkingSet64 / 1048576} MiB").ToLowerInvariant();
    }

    private static void Raise(ref long most, long value)
    {
        for (long known = Interlocked.Read(ref most); value > known; known = Interlocked.Read(ref most))
        {
            if (Interlocked.CompareExchange(ref most, value, known) == known)
            {
                return;
            }
        }
    }
}
