namespace GearBlanks.Findings;

/// <summary>Levels in words, the same in reports, files and JSON.</summary>
public static class LevelWords
{
    /// <summary>The word for a level.</summary>
    public static string Of(Level level) => level switch
    {
        Level.Ok => "ok",
        Level.Tight => "tight",
        _ => "fails",
    };
}
