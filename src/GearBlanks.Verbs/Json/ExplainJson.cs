using GearBlanks.Findings;

namespace GearBlanks.Verbs.Json;

/// <summary>The result of <c>explain</c> as JSON.</summary>
public static class ExplainJson
{
    /// <summary>The whole object.</summary>
    public static string Of(Explanation explanation) => JsonText.Of("gearblanks.explain/1", json =>
    {
        json.WriteString("name", explanation.Name);
        json.WriteString("meaning", explanation.Meaning);
        json.WriteString("formula", explanation.Formula);
        json.WriteString("source", explanation.Source);
        json.WriteStrings("remedies", explanation.Remedies);
    });
}
