using System.Text;
using GearBlanks.Files.Folders;
using GearBlanks.Mechanisms;

namespace GearBlanks.Verbs;

/// <summary>Writes a first job file for somebody to change.</summary>
public static class NewVerb
{
    /// <summary>Runs the verb: writes the file, which must not exist yet.</summary>
    /// <param name="file">The file, ending in .toml.</param>
    public static Outcome<WrittenFile> Run(string file)
    {
        if (!file.EndsWith(".toml", StringComparison.OrdinalIgnoreCase))
        {
            return CommandLine.Problem("FILE", file, "A job file's name ends in .toml", "a name such as dial.toml", file + ".toml");
        }

        return SingleFile.Write(file, Encoding.UTF8.GetBytes(Files.Jobs.JobTemplate.Text), mustBeNew: true);
    }
}
