using System.Collections.Immutable;

namespace GearBlanks.Files.Folders;

/// <summary>What a manifest tells besides its list of files. Everything is written in the order given.</summary>
/// <param name="Program">Name and version of the program; neither a commit nor a time, which would change the bytes.</param>
/// <param name="Inputs">What the files were made from.</param>
/// <param name="Warnings">Sentences that whoever uses the files has to know.</param>
/// <param name="Verdict">The verdict in a word.</param>
public sealed record ManifestData(
    string Program, ImmutableArray<ManifestInput> Inputs, ImmutableArray<string> Warnings, string Verdict);

/// <summary>Something that the files were made from.</summary>
/// <param name="Name">What it is, such as the job or a profile.</param>
/// <param name="Value">Its value in words, such as a name or a hash.</param>
public sealed record ManifestInput(string Name, string Value);
