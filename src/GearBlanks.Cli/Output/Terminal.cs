using System.Collections.Immutable;
using GearBlanks.Mechanisms;
using GearBlanks.Verbs.Json;
using Spectre.Console;

namespace GearBlanks.Cli.Output;

/// <summary>Standard output for results, standard error for messages.</summary>
internal sealed class Terminal(TextWriter output, TextWriter error)
{
    private const int WidthOfFile = 200;

    // Made on first use: a start that prints no table pays nothing.
    private IAnsiConsole? _tables;

    private IAnsiConsole Tables => _tables ??= MakeTables();

    public void Say(string line) => output.WriteLine(line);

    public void Warn(string line) => error.WriteLine(line);

    public void Say(Table table) => Tables.Write(table);

    /// <summary>Shows a verb's outcome: problems, JSON or text; returns the exit status.</summary>
    public int Show<T>(Outcome<T> outcome, bool asJson, Func<T, string> json, Action<T> text, Func<T, int> exit)
        where T : class
    {
        if (outcome.Value is not { } value)
        {
            return Refuse(outcome.Problems, asJson);
        }

        if (asJson)
        {
            output.WriteLine(json(value));
        }
        else
        {
            text(value);
        }

        return exit(value);
    }

    // A file or pipe has no width: tables there are as wide as they need.
    private IAnsiConsole MakeTables()
    {
        IAnsiConsole tables = AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(output) });
        if (!tables.Profile.Out.IsTerminal)
        {
            tables.Profile.Width = WidthOfFile;
        }

        return tables;
    }

    /// <summary>Tells what is wrong with the input.</summary>
    public int Refuse(ImmutableArray<Problem> problems, bool asJson)
    {
        if (asJson)
        {
            output.WriteLine(ProblemJson.Of(problems));
        }

        foreach (Problem problem in problems)
        {
            error.WriteLine(ProblemText.Of(problem));
        }

        return ExitCode.WrongInput;
    }

    /// <summary>Tells that standard output takes no more.</summary>
    public int FailToWrite(IOException e)
    {
        error.WriteLine($"gearblanks failed: its output could not be written: {e.Message}");
        return ExitCode.ProgramFailed;
    }

    /// <summary>Tells that the program itself failed.</summary>
    public int Fail(Exception e)
    {
        error.WriteLine($"gearblanks failed: {e.Message}");
        error.WriteLine($"This is a fault of the program ({e.GetType().Name}), not of your input: please report it with the command line and the job file.");
        return ExitCode.ProgramFailed;
    }
}
