using GearBlanks.Files.Folders;
using GearBlanks.Mechanisms;

namespace GearBlanks.Verbs;

/// <summary>Options of a roll that do not go together, or are missing.</summary>
internal static class RollContradictions
{
    public static IEnumerable<Problem> Of(RollAsked asked) => (asked.Job is null ? OfDrawings(asked) : OfJob(asked)).Concat(OfFiles(asked));

    private static IEnumerable<Problem> OfDrawings(RollAsked asked)
    {
        if (asked.First is null || asked.Second is null)
        {
            yield return Told("roll", null, asked.First is null ? "Nothing to roll is given" : "The second drawing is missing", "two drawings and --distance, or --job JOB");
        }

        if (asked.First is not null && asked.Distance is null)
        {
            yield return Told("--distance", null, "It is missing: drawings do not say how far apart their axes stand", "--distance MM");
        }

        if (asked.AsCut)
        {
            yield return Told("--as-cut", null, "Drawings are rolled as they are", "this option together with --job");
        }

        if (asked.Tool is not null)
        {
            yield return Told("--tool", null, "Drawings are rolled as they are", "this option together with --job and --as-cut");
        }

        if (asked.Mesh is not null)
        {
            yield return Told("--mesh", asked.Mesh, "Only a job has meshes", "this option together with --job");
        }
    }

    private static IEnumerable<Problem> OfJob(RollAsked asked)
    {
        if (asked.First is not null)
        {
            yield return Told("--job", asked.Job, "Drawings and a job are given", "one of the two");
        }

        if (asked.Tool is not null && !asked.AsCut)
        {
            yield return Told("--tool", null, "The tool matters only to gears as it leaves them", "this option together with --as-cut");
        }

        if (asked.FirstCentre is not null || asked.SecondCentre is not null)
        {
            yield return Told(asked.FirstCentre is null ? "--centre-b" : "--centre-a", null, "A job knows its axes", "this option together with two drawings");
        }

        if (asked.Layers.Length > 0)
        {
            yield return Told("--layer", asked.Layers[0], "A job has no layers", "this option together with two drawings");
        }
    }

    private static IEnumerable<Problem> OfFiles(RollAsked asked)
    {
        RollManner how = asked.How;
        foreach ((string option, string? file) in ((string, string?)[])[("--csv", how.Csv), ("--plot", how.Plot)])
        {
            if (file is not null && new[] { asked.First, asked.Second, asked.Job }.FirstOrDefault(input => input is not null && SameFile.Are(input, file)) is { } input)
            {
                yield return Told(option, file, $"It would be written over {input}, which is read", "another name");
            }
        }

        if (how.Csv is { } table && !table.EndsWith(".csv", StringComparison.OrdinalIgnoreCase))
        {
            yield return Told("--csv", table, "The table is a CSV file", "a name that ends in .csv");
        }

        if (how.Plot is { } plot && !plot.EndsWith(".svg", StringComparison.OrdinalIgnoreCase))
        {
            yield return Told("--plot", plot, "The picture is an SVG file", "a name that ends in .svg");
        }

        if (how.Csv is { } csv && how.Plot is { } picture && SameFile.Are(csv, picture))
        {
            yield return Told("--csv", csv, "Table and picture have one name", "two names");
        }
    }

    private static Problem Told(string option, string? value, string message, string allowed) => CommandLine.Problem(option, value, message, allowed)[0];
}
