using GearBlanks.Files.Jobs;
using GearBlanks.Files.Profiles;

namespace GearBlanks.Files.Tests.Jobs;

/// <summary>The stored reference pages are the ones the reader's declarations give. To renew them set GEARBLANKS_RENEW=1 and run the tests.</summary>
public class ReferencePageTests
{
    [Fact]
    public void The_page_of_job_keys_is_up_to_date() => Same("profiles/jobs/KEYS.md", JobReference.Markdown());

    [Fact]
    public void The_page_of_profile_keys_is_up_to_date() => Same("profiles/KEYS.md", ProfileReference.Markdown());

    [Fact]
    public void The_page_names_every_key_of_the_full_job()
    {
        var page = JobReference.Markdown();
        var keys = JobTexts.Full.Split('\n').Where(l => l.Contains('=', StringComparison.Ordinal)).Select(l => l.Split('=')[0].Trim());
        Assert.All(keys, k => Assert.Contains($"| `{k}` |", page, StringComparison.Ordinal));
    }

    private static void Same(string stored, string generated)
    {
        var file = Path.Combine(Repository.Root, stored);
        if (Environment.GetEnvironmentVariable("GEARBLANKS_RENEW") == "1")
        {
            File.WriteAllText(file, generated);
        }

        Assert.Equal(generated, File.ReadAllText(file));
    }
}
