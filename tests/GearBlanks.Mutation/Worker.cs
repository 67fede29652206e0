using System.Diagnostics;
using System.Globalization;
using System.Reflection;

namespace GearBlanks.Mutation;

/// <summary>Runs the tests on one change after the other, in a process of its own that may hang or die.</summary>
internal static class Worker
{
    // Longer tests are left to the whole run of the tests: a change that only they would notice counts as survived.
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(4);

    public static int Run(string file)
    {
        string[] lines = File.ReadAllLines(file);
        int count = int.Parse(lines[0], CultureInfo.InvariantCulture);
        Type control = Assembly.Load("GearBlanks.Kernel").GetType("MutationSwitch", true)!;
        FieldInfo active = control.GetField("Active")!;
        FieldInfo seen = control.GetField("Seen")!;
        var covering = new List<(Item Item, bool[] Seen, TimeSpan Time)>();
        foreach (Item item in Suite.In(Assembly.Load("GearBlanks.Tests"), lines[1].Split(',')))
        {
            bool[] hits = new bool[count];
            seen.SetValue(null, hits);
            bool passes = item.Passes();
            seen.SetValue(null, null);
            var watch = Stopwatch.StartNew();
            passes = passes && item.Passes();
            if (passes && watch.Elapsed <= Longest)
            {
                covering.Add((item, hits, watch.Elapsed));
            }
            else
            {
                Console.WriteLine($"# left out, {(passes ? FormattableString.Invariant($"takes {watch.Elapsed.TotalSeconds:0.0} s") : "fails here")}: {item.Name}");
            }
        }

        Console.WriteLine(FormattableString.Invariant($"# {covering.Count} tests, {covering.Sum(c => c.Time.TotalSeconds):0.0} s"));
        foreach (int id in lines[2..].Select(line => int.Parse(line, CultureInfo.InvariantCulture)))
        {
            Console.WriteLine(FormattableString.Invariant($"? {id}"));
            active.SetValue(null, id);
            string? killer = covering.Where(c => c.Seen[id]).OrderBy(c => c.Time).Select(c => c.Item).FirstOrDefault(item => !item.Passes())?.Name;
            active.SetValue(null, -1);
            Console.WriteLine(FormattableString.Invariant($"= {id} {(killer is not null ? "killed by " + killer : covering.Any(c => c.Seen[id]) ? "survived" : "unseen")}"));
        }

        return 0;
    }
}
