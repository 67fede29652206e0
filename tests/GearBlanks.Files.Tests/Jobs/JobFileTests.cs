using System.Text;
using GearBlanks.Files.Jobs;

namespace GearBlanks.Files.Tests.Jobs;

public sealed class JobFileTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("gearblanks-job-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void A_good_file_is_read()
    {
        var outcome = JobReader.Read(Write("bell-pull.toml", Encoding.UTF8.GetBytes(JobTexts.Compact)));
        Assert.Empty(outcome.Problems);
        Assert.Equal("bell-pull", outcome.Value!.Title);
    }

    [Fact]
    public void A_missing_file_is_told_with_its_neighbour()
    {
        Write("dial.toml", []);
        Refused(Path.Combine(_folder, "dail.toml"), "no such file");
        Assert.Equal("dial.toml", JobReader.Read(Path.Combine(_folder, "dail.toml")).Problems[0].Nearest);
        Refused(Path.Combine(_folder, "none", "dial.toml"), "no such file");
    }

    [Fact]
    public void A_directory_is_told() => Refused(_folder, "is a directory");

    [Theory]
    [InlineData("")]
    [InlineData(" ")]
    public void An_empty_name_is_told(string name) => Refused(name, "No file name");

    [Fact]
    public void A_hostile_name_is_told() => Refused("a\0b.toml", "");

    [Fact]
    public void A_file_below_a_file_is_told() => Refused(Path.Combine(Write("plain", [65]), "x.toml"), "");

    [Fact]
    public void Binary_is_told() => Refused(Write("a.toml", [1, 2, 0, 3]), "binary");

    [Fact]
    public void Other_encodings_are_told()
    {
        Refused(Write("a.toml", Encoding.Unicode.GetPreamble().Concat(Encoding.Unicode.GetBytes("a = 1")).ToArray()), "UTF-16");
        var file = Write("b.toml", [.. "a = 1\nb = '"u8, 0xE4, .. "'\n"u8]);
        Refused(file, "not UTF-8");
        Assert.Equal(2, JobReader.Read(file).Problems[0].Place.Line);
    }

    [Fact]
    public void A_huge_file_is_told() => Refused(Write("a.toml", new byte[(1 << 20) + 1]), "too large");

    [Fact]
    public void An_endless_file_is_told()
    {
        Assert.SkipUnless(File.Exists("/dev/zero"), "there is no endless file here");
        Refused("/dev/zero", "too large");
    }

    [Fact]
    public void A_file_without_permission_is_told()
    {
        var file = Write("a.toml", [65]);
        if (OperatingSystem.IsWindows())
        {
            using var held = new FileStream(file, FileMode.Open, FileAccess.ReadWrite, FileShare.None);
            Refused(file, "cannot be read");
            return;
        }

        File.SetUnixFileMode(file, UnixFileMode.None);

        // The superuser may read everything: then what stands in the file is told instead.
        Refused(file, Environment.IsPrivilegedProcess ? "needs = and a value" : "may not be read");
    }

    private static void Refused(string file, string says)
    {
        var outcome = JobReader.Read(file);
        Assert.Null(outcome.Value);
        var problem = Assert.Single(outcome.Problems);
        Assert.Equal(file, problem.Place.File);
        Assert.Contains(says, problem.Message, StringComparison.Ordinal);
    }

    private string Write(string name, byte[] bytes)
    {
        var file = Path.Combine(_folder, name);
        File.WriteAllBytes(file, bytes);
        return file;
    }
}
