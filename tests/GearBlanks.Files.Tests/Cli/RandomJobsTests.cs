using System.Globalization;

namespace GearBlanks.Files.Tests.Cli;

/// <summary>Pairs at random, from a seed that is always the same, most of them odd: each is cut or refused, and never makes the program fail.</summary>
public class RandomJobsTests
{
    private const int Seed = 8_117;
    private const int Jobs = 60;

    [Fact]
    public void Pairs_at_random_are_cut_or_refused()
    {
        using var desk = new Desk();
        var random = new Random(Seed);
        int[] ends = new int[4];
        for (int i = 0; i < Jobs; i++)
        {
            string job = Job(random);
            File.WriteAllText(desk["job.toml"], job);
            Ran ran = Ran.Of(["cut", desk["job.toml"], "--out", desk["out"], .. Pick(random, "--tolerance 0.001", "--tolerance 0.0025 --pieces chords", "--tolerance 0.00002 --format svg", "--dxf-version r12").Split(' ')]);
            Assert.True(ran.Exit is 0 or 1 or 2, $"{job}\n{ran.Told}");
            ends[ran.Exit]++;
        }

        Assert.True(ends[1] >= 10 && ends[2] >= 10, string.Join(' ', ends));
    }

    private static string Job(Random random)
    {
        double module = double.Parse(Pick(random, "0.05", "0.3", "0.8", "1", "1", "2.5", "20"), CultureInfo.InvariantCulture);
        (int z1, int z2) = (Teeth(random), Teeth(random));
        double distance = module * ((z1 + z2) / 2.0) * (1 + (random.NextDouble() * random.Next(2) * 0.2) - 0.02);
        return FormattableString.Invariant($$"""
            title = "At random"
            defaults = { module = {{module}}, thickness = {{Pick(random, "2", "0.001", "1000")}}, rack = "{{Pick(random, "iso-53-a", "iso-53-d", "ansi-b6-1", "ansi-b6-7")}}", backlash = {{0.04 * module * random.Next(3)}} }
            axes = [
              { name = "a", position = [0, 0] },
              { name = "b", from = "a", distance = {{distance:0.####}}, direction = {{random.Next(-360, 361)}} },
            ]
            sandwiches = [
              { name = "one", axis = "a", height = {{random.Next(-5, 6)}}, layers = [{ {{Gear(random, z1, module)}} }, { washer = 0.5 }] },
              { name = "two", axis = "b", layers = [{ {{Gear(random, z2, module)}} }] },
            ]
            meshes = [{ gears = ["one", "two"]{{Pick(random, "", ", split = [0, 1]", ", measured-distance = 100000")}} }]
            drive = { sandwich = "one", turn = "{{Pick(random, "1 s", "1000000 d", "1/3 h")}}" }
            hands = [{ name = "h", sandwich = "two", turn = "{{Pick(random, "2 s", "1 d", "0.0000001 s")}}" }]

            """);
    }

    private static string Gear(Random random, int teeth, double module)
    {
        double reference = teeth * module;
        List<string> keys = [FormattableString.Invariant($"teeth = {teeth}")];
        Maybe(0.7, () => $"profile-shift = {Pick(random, "-1", "-0.5", "-0.2", "0.3", "0.6", "1", "1.5")}");
        Maybe(0.2, () => $"thinning = {Math.Round(module * random.NextDouble() * 0.2, 4)}");
        Maybe(0.2, () => $"tip-diameter = {Math.Round(reference + (module * 4 * (random.NextDouble() - 0.3)), 4)}");
        Maybe(0.6, () => $"bore = {Math.Round(reference * random.NextDouble() * 0.6, 4)}");
        Maybe(0.4, () => $"screws = {{ count = {random.Next(1, 13)}, circle = {Math.Round((reference * (0.2 + (0.5 * random.NextDouble()))) + 0.01, 4)}, hole = {Math.Round((reference * 0.1 * random.NextDouble()) + 0.0001, 4)} }}");
        Maybe(0.2, () => $"holes = [{{ radius = {Math.Round(reference * 0.4 * random.NextDouble(), 4)}, angle = {random.Next(-360, 361)}, diameter = {Math.Round((reference * 0.05) + 0.001, 4)} }}]");
        Maybe(0.2, () => $"turned = {random.Next(-360, 361)}");
        Maybe(0.1, () => $"form = \"disc\"");
        Maybe(0.2, () => $"mark = true");
        Maybe(0.2, () => $"lettering = true");
        return string.Join(", ", keys);

        void Maybe(double chance, Func<FormattableString> key)
        {
            if (random.NextDouble() < chance)
            {
                keys.Add(FormattableString.Invariant(key()));
            }
        }
    }

    private static int Teeth(Random random) => random.Next(10) switch
    {
        0 => random.Next(4, 8),
        1 => random.Next(100, 300),
        _ => random.Next(8, 100),
    };

    private static string Pick(Random random, params string[] words) => words[random.Next(words.Length)];
}
