using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace GearBlanks.Mutation;

/// <summary>Rewrites a file so that each change stands beside the code it replaces, behind a switch.</summary>
internal sealed class Switched(SemanticModel model, string file, List<Change> changes, IReadOnlySet<string> refused) : CSharpSyntaxRewriter
{
    public const string Name = "global::MutationSwitch.Is";

    /// <summary>The code of the switch itself.</summary>
    public const string Code = """
        internal static class MutationSwitch
        {
            public static int Active = -1;
            public static bool[] Seen;
            public static bool Is(int id)
            {
                if (Seen != null) { Seen[id] = true; }
                return id == Active;
            }
        }
        """;

    private readonly Replacements _replacements = new(model);

    public override SyntaxNode? Visit(SyntaxNode? node) => node switch
    {
        // Worked out when the program is compiled or started, or told to people: no switch can stand there.
        AttributeListSyntax or ParameterSyntax or PatternSyntax or EnumMemberDeclarationSyntax or InterpolatedStringExpressionSyntax or SwitchLabelSyntax => node,
        FieldDeclarationSyntax field when field.Modifiers.Any(m => m.IsKind(SyntaxKind.ConstKeyword) || m.IsKind(SyntaxKind.StaticKeyword)) => node,
        LocalDeclarationStatementSyntax { IsConst: true } => node,
        PropertyDeclarationSyntax { Initializer: not null } property when property.Modifiers.Any(SyntaxKind.StaticKeyword) => node,
        ExpressionStatementSyntax statement => VisitStatement(statement),
        ExpressionSyntax expression => VisitAny(expression),
        _ => base.Visit(node),
    };

    private SyntaxNode? VisitStatement(ExpressionStatementSyntax statement)
    {
        var visited = (ExpressionStatementSyntax)base.Visit(statement)!;
        return Replacements.Of(statement) is { } changed && Numbered(statement, changed) is { } id
            ? SyntaxFactory.ParseStatement($"if ({Name}({id})) {{ {changed} }} else {{ {visited} }}")
            : visited;
    }

    private SyntaxNode? VisitAny(ExpressionSyntax node)
    {
        SyntaxNode? visited = base.Visit(node);

        // A variable declared in it would be declared twice.
        if (visited is not ExpressionSyntax || node.DescendantNodesAndSelf().Any(n => n is VariableDesignationSyntax) || node.Parent is ExpressionStatementSyntax)
        {
            return visited;
        }

        string code = visited.ToString();
        bool isSwitched = false;
        foreach (string changed in _replacements.Of(node))
        {
            if (Numbered(node, changed) is { } id)
            {
                code = $"({Name}({id}) ? ({changed}) : ({code}))";
                isSwitched = true;
            }
        }

        return isSwitched ? SyntaxFactory.ParseExpression(code) : visited;
    }

    private int? Numbered(SyntaxNode node, string changed)
    {
        var change = new Change(changes.Count, file, node.GetLocation().GetLineSpan().StartLinePosition.Line + 1, node.ToString(), changed);
        if (refused.Contains(KeyOf(change, node)))
        {
            return null;
        }

        changes.Add(change);
        Keys.Add(KeyOf(change, node));
        return change.Id;
    }

    /// <summary>What each change is known by while others are taken out.</summary>
    public List<string> Keys { get; } = [];

    private static string KeyOf(Change change, SyntaxNode node) => $"{change.File}|{node.SpanStart}|{node.RawKind}|{change.To}";
}
