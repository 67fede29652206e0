namespace GearBlanks.Mutation;

/// <summary>One small change of the kernel's code.</summary>
/// <param name="Id">Its number.</param>
/// <param name="File">The file, within the kernel.</param>
/// <param name="Line">The line, counted from 1.</param>
/// <param name="From">The code as it is.</param>
/// <param name="To">The code as it is changed.</param>
internal sealed record Change(int Id, string File, int Line, string From, string To)
{
    public override string ToString() => FormattableString.Invariant($"{File}:{Line}  {Short(From)}  ->  {Short(To)}");

    private static string Short(string code)
    {
        string line = string.Join(' ', code.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        return line.Length > 90 ? line[..87] + "..." : line;
    }
}
