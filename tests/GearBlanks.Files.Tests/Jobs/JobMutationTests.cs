using GearBlanks.Files.Jobs;

namespace GearBlanks.Files.Tests.Jobs;

/// <summary>Whatever comes of a spoilt job is a job or a problem, never an exception; tests/torture tries many more.</summary>
public class JobMutationTests
{
    private const int Runs = 4000;

    [Fact]
    public void No_mutation_throws()
    {
        var random = new Random(20240229);
        var mutator = new JobMutator([JobTexts.Pair, JobTexts.Compact, JobTexts.Full, BadMotionTests.Arm], [JobTexts.Compact]);
        var (jobs, problems) = (0, 0);
        for (var run = 0; run < Runs; run++)
        {
            var text = mutator.Next(random);
            var outcome = JobReader.Parse(text, "m.toml");
            Assert.True(outcome.Value is not null ^ outcome.Problems.Length > 0);
            Assert.All(outcome.Problems, p => Assert.True(p.Message.Length > 0 && p.Place.Line >= 0 && p.Place.Line <= text.Count(c => c == '\n') + 1, text));
            (jobs, problems) = outcome.Value is null ? (jobs, problems + 1) : (jobs + 1, problems);
        }

        // Both ways were taken often enough for the test to mean something.
        Assert.True(jobs > Runs / 100 && problems > Runs / 2, $"{jobs} jobs, {problems} refused");
    }
}
