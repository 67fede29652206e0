using System.Collections.Immutable;
using System.Text;
using BenchmarkDotNet.Attributes;
using GearBlanks.Files.Jobs;
using GearBlanks.Files.Profiles;
using GearBlanks.Mechanisms;

namespace GearBlanks.Benchmarks;

/// <summary>The whole check of a mechanism of 100 gears. Wanted: at most 20 milliseconds, and 100 with all conditions.</summary>
[MemoryDiagnoser(displayGenColumns: false)]
public class MechanismBenchmarks
{
    private const string File = "hundred.toml";

    private string _text = "";
    private Job? _job;
    private Mechanism? _mechanism;

    /// <summary>Idlers in a row have 99 meshes; wheels and pinions on 50 arbors have 49, and sandwiches.</summary>
    [Params(HundredGears.Idlers, HundredGears.Arbors)]
    public string Arrangement { get; set; } = HundredGears.Idlers;

    [Params(false, true)]
    public bool Conditions { get; set; }

    [GlobalSetup]
    public void Make()
    {
        _text = HundredGears.Text(Arrangement, Conditions);
        _job = Sound(JobReader.Parse(_text, File));
        _mechanism = Sound(Resolver.Resolve(_job, ProfileFinder.BuiltIn));
        if (_mechanism.Gears.Count() != 100)
        {
            throw new InvalidOperationException("These are not 100 gears.");
        }
    }

    [Benchmark]
    public MechanismReport Check() => MechanismCheck.Of(_mechanism!);

    [Benchmark]
    public Outcome<Mechanism> Resolve() => Resolver.Resolve(_job!, ProfileFinder.BuiltIn);

    [Benchmark]
    public Outcome<Job> Read() => JobReader.Parse(_text, File);

    private static T Sound<T>(Outcome<T> outcome)
        where T : class => outcome.Value ?? throw new InvalidOperationException(Told(outcome.Problems));

    private static string Told(ImmutableArray<Problem> problems) =>
        problems.Aggregate(new StringBuilder(), (told, p) => told.AppendLine(System.Globalization.CultureInfo.InvariantCulture, $"{p.Place.Line}: {p.Key}: {p.Message}")).ToString();
}
