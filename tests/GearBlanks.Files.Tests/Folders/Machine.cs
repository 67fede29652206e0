using System.ComponentModel;
using System.Diagnostics;
using System.Runtime.ExceptionServices;
using System.Runtime.InteropServices;

namespace GearBlanks.Files.Tests.Folders;

/// <summary>
/// States of the machine that a writer must bear. They need the system's administrator: without it these tests fail,
/// they are not left out.
/// </summary>
internal static class Machine
{
    private const int Nobody = 65534;
    private const int FolderOfThread = 0x200;

    /// <summary>Does something with a file system of its own mounted on a folder.</summary>
    public static void Mounted(string folder, string options, Action work)
    {
        Run("mount", "-t", "tmpfs", "-o", options, "tmpfs", folder);
        try
        {
            work();
        }
        finally
        {
            Run("umount", folder);
        }
    }

    public static void Remount(string folder, string options) => Run("mount", "-o", "remount," + options, folder);

    /// <summary>Does something with the rights of a user who has none.</summary>
    public static void AsNobody(Action work) => OnThread(() =>
    {
        // On Linux this holds for the calling thread only, which ends here.
        _ = SetFileUser(Nobody);
        Assert.Equal(Nobody, SetFileUser(Nobody));
        work();
    });

    /// <summary>Does something while standing in a folder; the rest of the program stays where it is.</summary>
    public static void StandingIn(string folder, Action work) => OnThread(() =>
    {
        Assert.Equal(0, Unshare(FolderOfThread));
        Directory.SetCurrentDirectory(folder);
        work();
    });

    public static void Run(string program, params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardError = true })
            ?? throw new Win32Exception($"{program} does not start.");
        var errors = process.StandardError.ReadToEnd();
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, $"{program} {string.Join(' ', arguments)}: {errors}");
    }

    private static void OnThread(Action work)
    {
        ExceptionDispatchInfo? failure = null;
        var thread = new Thread(() =>
        {
            try
            {
                work();
            }
            catch (Exception e)
            {
                failure = ExceptionDispatchInfo.Capture(e);
            }
        });
        thread.Start();
        thread.Join();
        failure?.Throw();
    }

    [DllImport("libc", EntryPoint = "unshare")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Unshare(int what);

    [DllImport("libc", EntryPoint = "setfsuid")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int SetFileUser(int user);
}
