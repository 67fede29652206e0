namespace GearBlanks.Files.Tests.Cli;

/// <summary>Command lines at random, from a seed that is always the same: the program never fails, and never says one thing and does another.</summary>
public class FuzzTests
{
    private const int Seed = 20_451;
    private const int Lines = 2000;

    private static readonly string[] Options =
    [
        "--module", "--diametral-pitch", "--teeth", "--profile-shift", "--pressure-angle", "--rack", "--distance", "--backlash", "--tip-diameter", "--tip-round", "--tip-chamfer",
        "--tip-rule", "--thinning", "--tolerance", "--bore", "--pieces", "--dxf-version", "--format", "--json", "--modul", "-x", "--", "--help", "--version",
    ];

    private static readonly string[] Values =
    [
        "1", "2", "0.8", "20", "40", "13", "8", "4", "5", "30", "25", "-0.3", "0.3", "-1", "1.5", "0", "-0", "-5", "nan", "inf", "-inf", "1e308", "1e-308", "1e999",
        "1,5", "1/4 in", "0.001", "1e-6", "0.05", "0.1", "100000", "1000", "3.7", "iso-53-a", "iso-53-d", "ansi-b6-7", "../x", "r12", "dxf", "svg,dxf", "png", "dxf,png,", "chords", "clearance",
        "", " ", "\u00e4", "\ud800", "a\0b", "@x", "[x]", "/?", "--", "x.toml", "'", "\"", "1 2", "%s", "{0}", "[red]", "[/]",
    ];

    [Fact]
    public void Words_at_random_never_make_the_program_fail()
    {
        using Desk desk = Desk.WithJob();
        var random = new Random(Seed);
        int[] ends = new int[4];
        for (int i = 0; i < Lines; i++)
        {
            string[] words = [.. Line(random, desk)];
            Ran ran = Ran.Of(words);
            Assert.True(ran.Exit is 0 or 1 or 2, $"{string.Join(' ', words.Select(word => $"'{word}'"))}\n{ran.Told}");
            Assert.True((ran.Exit == 2) == (ran.Errors.Length > 0 && !IsResult(ran)), $"{string.Join(' ', words)}\n{ran.Told}");
            ends[ran.Exit]++;
        }

        // Every end is reached often enough to mean something.
        Assert.True(ends[0] > 60 && ends[1] > 30 && ends[2] > 800, string.Join(' ', ends));
    }

    // Half of the lines are nearly right, so that more than the first complaint is reached.
    private static List<string> Line(Random random, Desk desk)
    {
        string verb = Pick(random, ["new", "new", "check", "check", "mesh", "mesh", "mesh", "mesh", "gear", "gear", "cut", "gaer"]);
        List<string> words = (random.Next(2), verb) switch
        {
            (0, "gear") => ["gear", "--module", Pick(random, ["0.3", "1", "3", "50"]), "--teeth", Pick(random, ["4", "8", "17", "60"]), "--out", desk["new.svg"]],
            (0, "mesh") => ["mesh", "--module", Pick(random, ["0.05", "0.8", "2"]), "--teeth", Pick(random, ["4", "13", "87"]), Pick(random, ["6", "20", "400"])],
            (0, "check") => ["check", desk["pair.toml"]],
            (0, "cut") => ["cut", desk["pair.toml"], "--out", desk["out"]],
            (0, "new") => ["new", desk["new.toml"]],
            (_, "cut" or "new" or "gear") => [verb, "--out", desk["missing/new"]],
            _ => [verb],
        };
        for (int i = random.Next(4); i > 0; i--)
        {
            words.AddRange(random.Next(4) switch
            {
                0 => [Pick(random, Options)],
                1 => [Pick(random, Values)],
                2 => [Pick(random, Options), Pick(random, Values), Pick(random, Values)],
                _ => [Pick(random, Options), Pick(random, Values)],
            });
        }

        // What does not look like a path of the desk must not become a file where the tests stand.
        return words[0] == "new" && words.Count > 2 ? ["new", desk["pair.toml"], .. words[2..]] : words;
    }

    private static bool IsResult(Ran ran) => ran.Output.Length > 0 && !ran.Output.Contains("gearblanks.problems/1", StringComparison.Ordinal);

    private static string Pick(Random random, string[] words) => words[random.Next(words.Length)];
}
