using GearBlanks.Files.Jobs;

namespace GearBlanks.Files.Tests.Jobs;

/// <summary>Spoils good jobs at random places, seeded: whatever comes of it is a job or a problem, never an exception.</summary>
public class JobMutationTests
{
    private const int Runs = 4000;

    private static readonly string[] Pieces =
    [
        "[", "]", "[[", "]]", "{", "}", "=", ",", ".", "\"", "'", "\"\"\"", "\n", "\r", "#", "\\", "\0", "\u001b", "\uD800", "\u00e4", "-", "1e308", "nan",
        "inf", "-0.0", "99999999999999999999", "1979-05-27", "true", "../x", "name", "gears", "\"1/0 in\"", "[[axes]]\n", "[drive]\n", "{}", "[]", "0x", "\t",
    ];

    [Fact]
    public void No_mutation_throws()
    {
        var random = new Random(20240229);
        var (jobs, problems) = (0, 0);
        for (var run = 0; run < Runs; run++)
        {
            var text = (run % 3) switch { 0 => JobTexts.Pair, 1 => JobTexts.Compact, _ => JobTexts.Full };
            for (var edits = random.Next(1, 5); edits > 0; edits--)
            {
                text = Mutate(text, random);
            }

            var outcome = JobReader.Parse(text, "m.toml");
            Assert.True(outcome.Value is not null ^ outcome.Problems.Length > 0);
            Assert.All(outcome.Problems, p => Assert.True(p.Message.Length > 0 && p.Place.Line >= 0 && p.Place.Line <= text.Count(c => c == '\n') + 1, text));
            (jobs, problems) = outcome.Value is null ? (jobs, problems + 1) : (jobs + 1, problems);
        }

        // Both ways were taken often enough for the test to mean something.
        Assert.True(jobs > Runs / 100 && problems > Runs / 2, $"{jobs} jobs, {problems} refused");
    }

    private static string Mutate(string text, Random random)
    {
        var at = random.Next(text.Length);
        var length = Math.Min(random.Next(1, 20), text.Length - at);
        switch (random.Next(5))
        {
            case 0:
                return text.Remove(at, length);
            case 1:
                return text.Insert(at, Pieces[random.Next(Pieces.Length)]);
            case 2:
                return text.Insert(random.Next(text.Length), text.Substring(at, length));
            case 3:
                return text.Remove(at, 1).Insert(at, ((char)random.Next(1, 256)).ToString());
            default:
                var lines = text.Split('\n');
                var (one, other) = (random.Next(lines.Length), random.Next(lines.Length));
                (lines[one], lines[other]) = (lines[other], lines[one]);
                return string.Join('\n', lines);
        }
    }
}
