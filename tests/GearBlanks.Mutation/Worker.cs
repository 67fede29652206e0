using System.Diagnostics;
using System.Globalization;
using System.Reflection;

namespace GearBlanks.Mutation;

/// <summary>Runs the tests, in a process of its own that may hang or die: once on the unchanged kernel, then on one change after the other.</summary>
internal static class Worker
{
    // Longer tests are left to the whole run of the tests: a change that only they would notice counts as survived.
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(4);

    /// <summary>Writes down how long each test takes on the unchanged kernel, and which changes it passes by.</summary>
    public static int Measure(string file, int count, string namespaces)
    {
        FieldInfo seen = Switch("Seen");
        var lines = new List<string>();
        double all = 0;
        foreach ((int index, Item item) in Tests(namespaces).Index())
        {
            bool[] hits = new bool[count];
            seen.SetValue(null, hits);
            bool passes = item.Passes();
            seen.SetValue(null, null);
            var watch = Stopwatch.StartNew();
            passes = passes && item.Passes();
            if (passes && watch.Elapsed <= Longest)
            {
                all += watch.Elapsed.TotalSeconds;
                lines.Add(string.Create(CultureInfo.InvariantCulture, $"{index} {watch.Elapsed.TotalMilliseconds:0.###} {string.Join(',', hits.Index().Where(hit => hit.Item).Select(hit => hit.Index))}"));
            }
            else
            {
                Console.WriteLine($"# left out, {(passes ? FormattableString.Invariant($"takes {watch.Elapsed.TotalSeconds:0.0} s") : "fails here")}: {item.Name}");
            }
        }

        Console.WriteLine(FormattableString.Invariant($"# {lines.Count} tests, {all:0.0} s"));
        File.WriteAllLines(file, lines);
        return 0;
    }

    /// <summary>Tries changes: the first line of the file names the namespaces, the second the file of measures, the others a change each.</summary>
    public static int Run(string file)
    {
        string[] lines = File.ReadAllLines(file);
        Item[] tests = [.. Tests(lines[0])];
        (Item Test, double Time, HashSet<int> Seen)[] covering = [.. File.ReadLines(lines[1]).Select(line => line.Split(' ')).Select(words => (
            tests[int.Parse(words[0], CultureInfo.InvariantCulture)], double.Parse(words[1], CultureInfo.InvariantCulture),
            words[2].Split(',', StringSplitOptions.RemoveEmptyEntries).Select(id => int.Parse(id, CultureInfo.InvariantCulture)).ToHashSet()))];
        FieldInfo active = Switch("Active");
        foreach (int id in lines[2..].Select(line => int.Parse(line, CultureInfo.InvariantCulture)))
        {
            Console.WriteLine(FormattableString.Invariant($"? {id}"));
            Item[] passing = [.. covering.Where(test => test.Seen.Contains(id)).OrderBy(test => test.Time).Select(test => test.Test)];
            active.SetValue(null, id);
            string? killer = passing.FirstOrDefault(Notices)?.Name;
            active.SetValue(null, -1);
            Console.WriteLine(FormattableString.Invariant($"= {id} {(killer is not null ? "killed by " + killer : passing.Length > 0 ? "survived" : "unseen")}"));
        }

        return 0;
    }

    // A sign of life before each test, so that a hang is told from many tests.
    private static bool Notices(Item test)
    {
        Console.WriteLine(".");
        return !test.Passes();
    }

    private static IEnumerable<Item> Tests(string namespaces) => Suite.In(Assembly.Load("GearBlanks.Tests"), namespaces.Split(','));

    private static FieldInfo Switch(string name) => Assembly.Load("GearBlanks.Kernel").GetType("MutationSwitch", true)!.GetField(name)!;
}
