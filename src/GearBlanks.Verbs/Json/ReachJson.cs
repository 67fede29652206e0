using System.Text.Json;
using GearBlanks.Findings;
using GearBlanks.Mechanisms.Reach;

namespace GearBlanks.Verbs.Json;

/// <summary>The result of <c>reach</c> as JSON.</summary>
public static class ReachJson
{
    /// <summary>The whole object.</summary>
    public static string Of(ReachResult result) => JsonText.Of("gearblanks.reach/1", json =>
    {
        json.WriteString("title", result.Title);
        json.WriteString("verdict", LevelWords.Of(result.Verdict));
        json.WriteObjects("gears", result.Gears, WriteGear);
        json.WriteStrings("files", result.Files);
        json.WriteStrings("cautions", result.Cautions);
    });

    private static void WriteGear(Utf8JsonWriter json, GearReach gear)
    {
        json.WriteString("name", gear.Name);
        json.WriteNumber("tool", gear.Tool);
        json.WriteNumber("rootTouchingTool", gear.Largest.RootTouching);
        json.WriteNumber("wholeFilletTool", gear.Largest.WholeFillet);
        json.WriteOptional("runningFreeTool", gear.Largest.RunningFree);
        json.WriteString("whyNoRunningFreeTool", gear.Largest.WhyNot);
        json.WriteNumber("uncutDepth", gear.UncutDepth);
        json.WriteNumber("uncutAreaPerGap", gear.UncutAreaPerGap);
        json.WriteNumber("uncutArea", gear.UncutArea);
        json.Write(gear.Findings);
    }
}
