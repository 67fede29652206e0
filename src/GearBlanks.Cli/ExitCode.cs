using GearBlanks.Findings;

namespace GearBlanks.Cli;

/// <summary>What the program's exit status says.</summary>
internal static class ExitCode
{
    public const int Done = 0;
    public const int CheckFails = 1;
    public const int WrongInput = 2;
    public const int ProgramFailed = 3;

    public static int Of(Level verdict) => verdict == Level.Fails ? CheckFails : Done;
}
