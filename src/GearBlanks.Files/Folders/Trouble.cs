using System.Collections.Immutable;
using GearBlanks.Files.Toml;
using GearBlanks.Mechanisms;

namespace GearBlanks.Files.Folders;

/// <summary>Turns what the file system says into what a person can act on.</summary>
internal static class Trouble
{
    private const int WindowsDiskFull = unchecked((int)0x80070070);

    /// <summary>True for what a person can put right; anything else is the program's own fault.</summary>
    public static bool IsForPeople(Exception e) => e is RefusedException or IOException or UnauthorizedAccessException;

    public static ImmutableArray<Problem> Of(Exception e, string given)
    {
        var (message, allowed, value) = e switch
        {
            RefusedException refused => (refused.Message, refused.Allowed, refused.Value),
            UnauthorizedAccessException => ("Permission to write here is denied", "a place that you may write to", null),
            PathTooLongException => ("The name is too long for the file system", "a shorter name", null),
            _ => OfError(e),
        };
        return [new Problem(new Place(given, 0, 0), "", value is null ? null : ProblemList.Shown(value), message, allowed)];
    }

    private static (string Message, string Allowed, string? Value) OfError(Exception e) => e.HResult switch
    {
        Posix.NotPermitted or Posix.AccessDenied => ("Permission to write here is denied", "a place that you may write to", null),
        Posix.NoSpace or Posix.QuotaExceeded or WindowsDiskFull => ("The disk is full; nothing was changed", "a place with more room, or make room here", null),
        Posix.ReadOnlyFileSystem => ("The file system is read-only", "a place that can be written to", null),
        Posix.NameTooLong => ("The name is too long for the file system", "a shorter name", null),
        Posix.NotAFolder => ("A part of this path is a file, not a folder", "a path through folders only", null),
        Posix.TooManyLinks => ("This path's links lead in a circle", "a path without such links", null),
        Posix.Busy => ("This folder is a mount point and cannot be replaced whole", "a folder inside it", null),
        _ => ($"This could not be written ({ProblemList.Shown(e.Message)})", "try again, or choose another place", null),
    };
}
