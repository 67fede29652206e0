using GearBlanks.Files.Tests.Jobs;

namespace GearBlanks.Files.Tests.Cli;

/// <summary>The stored samples are what the jobs that come along produce. To renew them set GEARBLANKS_RENEW=1 and run the tests.</summary>
public class OutputSamplesTests
{
    [Theory]
    [InlineData("tide-dial")]
    [InlineData("slipway-counter-pair")]
    [InlineData("chart-sled")]
    [InlineData("watch-hut-motion-work")]
    public void A_job_gives_its_sample(string job)
    {
        string stored = Path.Combine(Repository.Root, "output-samples", job);
        using var desk = new Desk();
        Ran ran = Ran.Of("cut", Path.Combine(Repository.Root, "profiles", "jobs", job + ".toml"), "--out", desk["made"]);
        Assert.True(ran.Exit == 0, ran.Told);
        if (Environment.GetEnvironmentVariable("GEARBLANKS_RENEW") == "1")
        {
            Renew(desk["made"], stored);
        }

        Folder.AssertSame(desk["made"], stored);
    }

    private static void Renew(string made, string stored)
    {
        if (Directory.Exists(stored))
        {
            Directory.Delete(stored, recursive: true);
        }

        Directory.CreateDirectory(stored);
        foreach (string name in Folder.Names(made))
        {
            File.Copy(Path.Join(made, name), Path.Join(stored, name));
        }
    }
}
