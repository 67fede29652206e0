using System.Diagnostics;
using System.Globalization;
using System.Runtime.CompilerServices;
using GearBlanks.Files.Folders;

namespace GearBlanks.Files.Tests.Folders;

/// <summary>Kills a real process that writes a folder over and over.</summary>
public class FolderKillTests
{
    private const string Variable = "GEARBLANKS_TEST_WRITES_TO";
    private const int LongestWait = 60;
    private const int FileBytes = 8000;

    // tests/torture asks for more.
    private static readonly int Kills = int.Parse(Environment.GetEnvironmentVariable("GEARBLANKS_KILLS") ?? "30", CultureInfo.InvariantCulture);

    [Fact]
    public void Whenever_it_is_killed_the_folder_is_whole()
    {
        using var place = new Workplace();
        Workplace.WriteDone(FolderWriter.Write(place.Out, Files('b'), Workplace.Data, false));
        File.WriteAllText(Path.Join(place.Out, "notes.txt"), "mine");
        var killedInside = 0;
        var moments = new Random(7_411);
        for (var i = 0; i < Kills; i++)
        {
            KillAfter(place.Out, TimeSpan.FromMilliseconds(moments.NextDouble() * LongestWait));
            killedInside += Directory.EnumerateDirectories(place.Root, ".out.*").Any() ? 1 : 0;
            AssertOneVersion(place.Out);
            Assert.Equal("mine", File.ReadAllText(Path.Join(place.Out, "notes.txt")));
        }

        Assert.True(killedInside > 0, "No kill came in the middle of a run.");
        var written = Workplace.WriteDone(FolderWriter.Write(place.Out, Files('a'), Workplace.Data, false));
        Assert.Empty(written.Notes);
        place.AssertTidy();
    }

    // The tests start themselves anew; in the process so started this runs before anything else and never returns.
    [ModuleInitializer]
    internal static void WriteWhereAsked()
    {
        if (Environment.GetEnvironmentVariable(Variable) is not { Length: > 0 } folder)
        {
            return;
        }

        for (var i = 0; ; i++)
        {
            var outcome = FolderWriter.Write(folder, Files((char)('a' + i % 2)), Workplace.Data, false);
            if (outcome.Value is null)
            {
                Console.WriteLine(outcome.Problems[0].Message);
                Environment.Exit(1);
            }

            if (i == 0)
            {
                Console.WriteLine("writing");
            }
        }
    }

    private static OutputFile[] Files(char letter) => [.. Enumerable.Range(0, 5).Select(i => Workplace.File($"gear-{i}.dxf", new string(letter, FileBytes + i)))];

    private static void KillAfter(string folder, TimeSpan wait)
    {
        var start = new ProcessStartInfo(Path.Join(AppContext.BaseDirectory, "GearBlanks.Files.Tests")) { RedirectStandardOutput = true };
        start.Environment[Variable] = folder;
        using var process = Process.Start(start)!;
        Assert.Equal("writing", process.StandardOutput.ReadLine());
        Thread.Sleep(wait);
        process.Kill();
        process.WaitForExit();
    }

    private static void AssertOneVersion(string folder)
    {
        var letter = File.ReadAllText(Path.Join(folder, "gear-0.dxf"))[0];
        foreach (var file in Files(letter))
        {
            Assert.Equal(file.Content.ToArray(), File.ReadAllBytes(Path.Join(folder, file.Name)));
        }

        Assert.Equal(Manifest.Write(Files(letter).Select(ManifestFile.Of), Workplace.Data), File.ReadAllBytes(Path.Join(folder, "manifest.json")));
    }
}
