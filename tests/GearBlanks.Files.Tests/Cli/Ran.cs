using System.Text.Json;
using GearBlanks.Cli;

namespace GearBlanks.Files.Tests.Cli;

/// <summary>What one command line did, run in this process.</summary>
internal sealed record Ran(int Exit, string Output, string Errors)
{
    public static Ran Of(params string[] words)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        int exit = App.Run(words, output, error);
        return new(exit, output.ToString(), error.ToString());
    }

    /// <summary>The one object on standard output.</summary>
    public JsonElement Json => JsonDocument.Parse(Output).RootElement;

    public string Told => $"exit {Exit}\n{Output}\n{Errors}";
}
