using System.CommandLine;
using System.CommandLine.Invocation;
using GearBlanks.Cli.Commands;
using GearBlanks.Cli.Output;

namespace GearBlanks.Cli;

/// <summary>The command line: translates arguments and results, nothing else.</summary>
public static class App
{
    private const string About =
        """
        Gears for displays assembled by hand: from a job file to gears that can be cut and meshes that are known to run.

        Examples:
          gearblanks new dial.toml
          gearblanks check dial.toml
          gearblanks shift dial.toml --write
          gearblanks cut dial.toml --out dial-parts
          gearblanks gear --module 0.8 --teeth 24 --profile-shift 0.3 --bore 4 --out wheel.dxf
          gearblanks roll wheel.dxf pinion.dxf --distance 40
          gearblanks reach dial.toml --tool 0.8
          gearblanks mesh --module 0.8 --teeth 13 87 --profile-shift 0.3 -0.3 --distance 40

        Exit status: 0 done, 1 a check fails, 2 the input is wrong, 3 the program failed.
        Not checked: strength, fatigue, lifting, vehicles. Mind the machine's manual, local codes and licensed practice.
        """;

    // A word is a word: no files of further words, no bundles of letters.
    private static readonly ParserConfiguration AsWritten = new() { ResponseFileTokenReplacer = null, EnablePosixBundling = false };

    /// <summary>Runs one command line.</summary>
    /// <param name="args">The arguments, without the program's name.</param>
    /// <param name="output">Where results go.</param>
    /// <param name="error">Where messages for people go.</param>
    /// <returns>0 done, 1 a check fails, 2 the input is wrong, 3 the program failed.</returns>
    public static int Run(string[] args, TextWriter output, TextWriter error)
    {
        var console = new Terminal(output, error);
        try
        {
            return args.Length == 0 ? ShowHelp(console, error) : Invoke(Root(console).Parse(args, AsWritten), console, output, error);
        }
        catch (IOException e)
        {
            // The reader of our output went away, or its disk is full.
            return console.FailToWrite(e);
        }
#pragma warning disable CA1031 // The outermost program: whatever gets here is a fault of ours, told as such.
        catch (Exception e)
#pragma warning restore CA1031
        {
            return console.Fail(e);
        }
    }

    private static int Invoke(ParseResult parsed, Terminal console, TextWriter output, TextWriter error) =>
        parsed.Action is ParseErrorAction or null
            ? console.Refuse(ParseProblems.Of(parsed), parsed.GetValue(SharedOptions.Json))
            : parsed.Invoke(new InvocationConfiguration { Output = output, Error = error, EnableDefaultExceptionHandler = false });

    private static int ShowHelp(Terminal console, TextWriter error)
    {
        _ = Root(console).Parse("--help").Invoke(new InvocationConfiguration { Output = error });
        return ExitCode.WrongInput;
    }

    private static RootCommand Root(Terminal console)
    {
        var root = new RootCommand(About)
        {
            NewCommand.Make(console),
            CheckCommand.Make(console),
            ShiftCommand.Make(console),
            ExplainCommand.Make(console),
            CutCommand.Make(console),
            GearCommand.Make(console),
            MeshCommand.Make(console),
            RollCommand.Make(console),
            ReachCommand.Make(console),
            SharedOptions.Json,
        };

        // Words such as /h and [suggest] are file names like any other.
        root.Directives.Clear();
        foreach (Option option in root.Options)
        {
            option.Aliases.Remove("/h");
            option.Aliases.Remove("/?");
        }

        return root;
    }
}
