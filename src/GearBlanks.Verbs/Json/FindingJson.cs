using System.Text.Json;
using GearBlanks.Findings;

namespace GearBlanks.Verbs.Json;

internal static class FindingJson
{
    public static void Write(this Utf8JsonWriter json, IReadOnlyCollection<Finding> findings)
    {
        json.WriteString("verdict", LevelWords.Of(findings.Select(finding => finding.Level).DefaultIfEmpty(Level.Ok).Max()));
        json.WriteObjects("findings", findings, Write);
    }

    private static void Write(Utf8JsonWriter json, Finding finding)
    {
        json.WriteString("name", finding.Name);
        json.WriteString("place", finding.Place);
        json.WriteString("level", LevelWords.Of(finding.Level));
        json.WriteNumber("figure", finding.Figure);
        json.WriteOptional("limit", finding.Limit);
        json.WriteString("unit", finding.Unit);
        json.WriteString("source", finding.Source);
        json.WriteString("message", finding.Message);
        json.WriteString("advice", finding.Advice);
    }
}
