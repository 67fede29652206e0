using System.CommandLine;

namespace GearBlanks.Cli.Arguments;

/// <summary>An argument that names a file. An unknown option would otherwise pass for a file's name.</summary>
internal sealed class FileArgument : Argument<string>
{
    public FileArgument(string name, string description)
        : base(name)
    {
        Description = description;
        Validators.Add(result =>
        {
            if (result.Tokens.Any(token => OptionLike.Is(token.Value)))
            {
                result.AddError("There is no such option");
            }
        });
    }
}
