using System.Collections.Immutable;
using GearBlanks.Mechanisms;

namespace GearBlanks.Verbs.Json;

/// <summary>Wrong input as JSON: what every verb prints instead of its result.</summary>
public static class ProblemJson
{
    /// <summary>The whole object.</summary>
    public static string Of(ImmutableArray<Problem> problems) => JsonText.Of("gearblanks.problems/1", json =>
        json.WriteObjects("problems", problems, (writer, problem) =>
        {
            writer.WriteString("file", problem.Place.File);
            writer.WriteNumber("line", problem.Place.Line);
            writer.WriteNumber("column", problem.Place.Column);
            writer.WriteString("key", problem.Key);
            writer.WriteString("value", problem.Value);
            writer.WriteString("message", problem.Message);
            writer.WriteString("allowed", problem.Allowed);
            writer.WriteString("nearest", problem.Nearest);
        }));
}
