using System.ComponentModel;
using System.Diagnostics;

namespace GearBlanks.Files.Tests.Readers;

/// <summary>Runs a reader that was not written here. A reader that is missing is an error, never a reason to skip.</summary>
public static class ReaderProcess
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    public sealed record Output(int ExitCode, string Text, string Errors);

    /// <summary>What the program wrote; its exit status is the caller's to judge.</summary>
    /// <exception cref="InvalidOperationException">The program is not installed, or did not end in time.</exception>
    public static Output Run(string program, params string[] arguments)
    {
        ProcessStartInfo start = new(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true };
        start.Environment["LC_ALL"] = "C.UTF-8";
        start.Environment["QT_QPA_PLATFORM"] = "offscreen";
        using Process process = Start(start);
        Task<string> text = process.StandardOutput.ReadToEndAsync();
        Task<string> errors = process.StandardError.ReadToEndAsync();
        if (!process.WaitForExit(Patience))
        {
            process.Kill(entireProcessTree: true);
            throw new InvalidOperationException($"{program} did not end within {Patience.TotalSeconds} s.");
        }

        return new Output(process.ExitCode, text.Result, errors.Result);
    }

    private static Process Start(ProcessStartInfo start)
    {
        try
        {
            return Process.Start(start)!;
        }
        catch (Win32Exception cause)
        {
            throw new InvalidOperationException($"The reader {start.FileName} is not installed; tests/run installs it.", cause);
        }
    }
}
