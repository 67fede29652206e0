using System.Globalization;
using System.Text;
using GearBlanks.Mechanisms;

namespace GearBlanks.Cli.Output;

/// <summary>A problem as one or two lines for people.</summary>
internal static class ProblemText
{
    public static string Of(Problem problem)
    {
        var text = new StringBuilder(problem.Place.File);
        if (problem.Place.Line > 0)
        {
            text.Append(CultureInfo.InvariantCulture, $":{problem.Place.Line}");
        }

        if (problem.Place.Column > 0)
        {
            text.Append(CultureInfo.InvariantCulture, $":{problem.Place.Column}");
        }

        text.Append(": ").Append(problem.Key.Length > 0 ? problem.Key : "");
        text.Append(problem.Key.Length > 0 && problem.Value is not null ? " = " : "").Append(problem.Value);
        text.Append(problem.Key.Length > 0 || problem.Value is not null ? ": " : "").Append(problem.Message).Append('.');
        if (problem.Allowed is not null)
        {
            text.Append(" Allowed: ").Append(problem.Allowed).Append('.');
        }

        if (problem.Nearest is not null)
        {
            text.Append(" Nearest: ").Append(problem.Nearest).Append('.');
        }

        return text.ToString();
    }
}
