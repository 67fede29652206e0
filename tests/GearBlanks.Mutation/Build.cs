using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Emit;

namespace GearBlanks.Mutation;

/// <summary>Compiles the kernel with every change in it, each behind its switch; changes that do not compile are left out.</summary>
internal static class Build
{
    private static readonly CSharpParseOptions Options = new(LanguageVersion.Latest);

    public static (List<Change> Changes, int Refused) Kernel(string repository, string folder, string[] files, string output)
    {
        string kernel = Path.Combine(repository, "src", "GearBlanks");
        string[] sources = [.. Directory.EnumerateFiles(kernel, "*.cs", SearchOption.AllDirectories)
            .Where(file => !Path.GetRelativePath(kernel, file).StartsWith("bin", StringComparison.Ordinal) && !Path.GetRelativePath(kernel, file).StartsWith("obj", StringComparison.Ordinal))
            .Concat(Directory.EnumerateFiles(Path.Combine(kernel, "obj", "Release", "net10.0"), "GearBlanks.*.cs"))
            .Order(StringComparer.Ordinal)];
        SyntaxTree[] trees = [.. sources.Select(file => CSharpSyntaxTree.ParseText(File.ReadAllText(file), Options, file))];
        string[] libraries = [.. ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator).Where(path => Path.GetFileName(path) != "GearBlanks.Kernel.dll")];
        var compilation = CSharpCompilation.Create(
            "GearBlanks.Kernel", trees, libraries.Select(path => MetadataReference.CreateFromFile(path)),
            new CSharpCompilationOptions(OutputKind.DynamicallyLinkedLibrary, optimizationLevel: OptimizationLevel.Release, nullableContextOptions: NullableContextOptions.Enable));
        var refused = new HashSet<string>();
        while (true)
        {
            var changes = new List<Change>();
            var keys = new List<string>();
            CSharpCompilation switched = compilation.AddSyntaxTrees(CSharpSyntaxTree.ParseText(Switched.Code, Options));
            foreach (SyntaxTree tree in trees.Where(tree => IsAsked(Path.GetRelativePath(kernel, tree.FilePath), folder, files)))
            {
                var rewriter = new Switched(compilation.GetSemanticModel(tree), Path.GetRelativePath(kernel, tree.FilePath).Replace('\\', '/'), changes, refused);
                SyntaxNode root = rewriter.Visit(tree.GetRoot())!;
                keys.AddRange(rewriter.Keys);
                switched = switched.ReplaceSyntaxTree(tree, CSharpSyntaxTree.ParseText(root.ToFullString(), Options, tree.FilePath));
            }

            EmitResult result = switched.Emit(output);
            if (result.Success)
            {
                return (changes, refused.Count);
            }

            int before = refused.Count;
            Diagnostic[] errors = [.. result.Diagnostics.Where(diagnostic => diagnostic.Severity == DiagnosticSeverity.Error)];
            refused.UnionWith(errors.SelectMany(IdsAround).Select(id => keys[id]));
            if (refused.Count == before)
            {
                throw new InvalidOperationException(string.Join('\n', errors.Take(10)));
            }
        }
    }

    private static bool IsAsked(string file, string folder, string[] files) =>
        file.StartsWith(folder + Path.DirectorySeparatorChar, StringComparison.Ordinal) && (files.Length == 0 || files.Contains(Path.GetFileName(file)));

    // The innermost change around an error; where the error is elsewhere, such as a variable no longer assigned, all changes of that member.
    private static IEnumerable<int> IdsAround(Diagnostic error)
    {
        SyntaxNode root = error.Location.SourceTree!.GetRoot();
        SyntaxNode? node = root.FindNode(error.Location.SourceSpan);
        for (SyntaxNode? at = node; at is not null; at = at.Parent)
        {
            ExpressionSyntax? condition = at switch
            {
                ConditionalExpressionSyntax conditional => conditional.Condition,
                IfStatementSyntax statement => statement.Condition,
                _ => null,
            };
            if (condition is InvocationExpressionSyntax call && IdOf(call) is { } id)
            {
                return [id];
            }

            if (at is MemberDeclarationSyntax)
            {
                return at.DescendantNodes().OfType<InvocationExpressionSyntax>().Select(IdOf).OfType<int>();
            }
        }

        return [];
    }

    private static int? IdOf(InvocationExpressionSyntax call) => call.Expression.ToString() == Switched.Name
        ? (int)((LiteralExpressionSyntax)call.ArgumentList.Arguments[0].Expression).Token.Value!
        : null;
}
