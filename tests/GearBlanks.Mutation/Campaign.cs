using System.Diagnostics;
using System.Globalization;

namespace GearBlanks.Mutation;

/// <summary>Changes a folder of the kernel in many ways and counts what no test notices.</summary>
internal static class Campaign
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(40);

    public static int Run(string repository, string folder, int processes, string namespaces, string[] files)
    {
        string place = Path.Combine(repository, "artifacts", "mutation", folder);
        if (Directory.Exists(place))
        {
            Directory.Delete(place, true);
        }

        Directory.CreateDirectory(place);
        foreach (string file in Directory.EnumerateFiles(AppContext.BaseDirectory))
        {
            File.Copy(file, Path.Combine(place, Path.GetFileName(file)));
        }

        (List<Change> changes, int refused) = Build.Kernel(repository, folder, files, Path.Combine(place, "GearBlanks.Kernel.dll"));
        Console.WriteLine(FormattableString.Invariant($"{changes.Count} changes; {refused} more do not compile"));
        string measures = Path.Combine(place, "measures.txt");
        Measure(place, measures, changes.Count, namespaces);
        string[] ends = new string[changes.Count];
        Parallel.For(0, processes, part => Work(place, namespaces, measures, part, [.. changes.Where(change => change.Id % processes == part).Select(change => change.Id)], ends));
        string report = Report(changes, ends);
        File.WriteAllText(Path.Combine(repository, "artifacts", "mutation", folder + ".txt"), report);
        Console.Write(report);
        return 0;
    }

    private static void Measure(string place, string measures, int count, string namespaces)
    {
        using var process = Process.Start("dotnet", [Path.Combine(place, "GearBlanks.Mutation.dll"), "measure", measures, count.ToString(CultureInfo.InvariantCulture), namespaces])!;
        process.WaitForExit();
        if (process.ExitCode != 0)
        {
            throw new InvalidOperationException("The tests do not get through on the unchanged kernel.");
        }
    }

    // A process that says nothing for long is ended, its change counted as noticed, and the rest done by another.
    private static void Work(string place, string namespaces, string measures, int part, List<int> ids, string[] ends)
    {
        while (ids.Count > 0)
        {
            string list = Path.Combine(place, FormattableString.Invariant($"changes-{part}.txt"));
            File.WriteAllLines(list, [namespaces, measures, .. ids.Select(id => id.ToString(CultureInfo.InvariantCulture))]);
            using var process = Process.Start(new ProcessStartInfo("dotnet", [Path.Combine(place, "GearBlanks.Mutation.dll"), "work", list]) { RedirectStandardOutput = true, RedirectStandardError = true })!;
            process.ErrorDataReceived += (_, _) => { };
            process.BeginErrorReadLine();
            int? current = null;
            while (true)
            {
                Task<string?> next = process.StandardOutput.ReadLineAsync();
                if (!next.Wait(current is null ? Patience * 3 : Patience) || next.Result is not { } line)
                {
                    process.Kill(true);
                    break;
                }

                if (line[0] == '?')
                {
                    current = int.Parse(line[2..], CultureInfo.InvariantCulture);
                }
                else if (line[0] == '=')
                {
                    string[] words = line.Split(' ', 3);
                    ends[current!.Value] = words[2];
                    ids.Remove(current.Value);
                }
            }

            if (ids.Count > 0)
            {
                if (current is not { } stuck)
                {
                    throw new InvalidOperationException("The tests do not get through on the unchanged kernel.");
                }

                if (ends[stuck] is null)
                {
                    ends[stuck] = "killed: hangs or ends the process";
                    ids.Remove(stuck);
                }
            }
        }
    }

    private static string Report(List<Change> changes, string[] ends)
    {
        var text = new StringWriter();
        bool IsKilled(Change change) => ends[change.Id].StartsWith("killed", StringComparison.Ordinal);
        foreach (IGrouping<string, Change> file in changes.GroupBy(change => change.File))
        {
            text.WriteLine(FormattableString.Invariant($"{file.Key,-40} {file.Count(IsKilled),5} of {file.Count(),5} noticed"));
        }

        foreach (Change change in changes.Where(change => !IsKilled(change)))
        {
            text.WriteLine($"{ends[change.Id],-9} {change}");
        }

        text.WriteLine(FormattableString.Invariant($"{changes.Count(IsKilled)} of {changes.Count} changes noticed: {100.0 * changes.Count(IsKilled) / changes.Count:0.0} %"));
        return text.ToString();
    }
}
