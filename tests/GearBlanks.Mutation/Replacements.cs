using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace GearBlanks.Mutation;

/// <summary>What an expression or statement is replaced with, one change at a time.</summary>
internal sealed class Replacements(SemanticModel model)
{
    private static readonly Dictionary<string, string> Functions = new()
    {
        ["Sin"] = "Cos",
        ["Cos"] = "Sin",
        ["Tan"] = "Atan",
        ["Min"] = "Max",
        ["Max"] = "Min",
        ["Floor"] = "Ceiling",
        ["Ceiling"] = "Floor",
        ["Any"] = "All",
        ["All"] = "Any",
        ["First"] = "Last",
        ["Last"] = "First",
    };

    private static readonly string[] Dropped = ["Abs", "Sqrt", "Acos", "Asin", "Atan"];

    /// <summary>The changes of one expression.</summary>
    public IEnumerable<string> Of(ExpressionSyntax node) => node switch
    {
        BinaryExpressionSyntax binary => OfBinary(binary),
        PrefixUnaryExpressionSyntax { RawKind: (int)SyntaxKind.UnaryMinusExpression or (int)SyntaxKind.LogicalNotExpression } unary => [unary.Operand.ToString()],
        LiteralExpressionSyntax { RawKind: (int)SyntaxKind.NumericLiteralExpression } literal => OfLiteral(literal),
        LiteralExpressionSyntax { RawKind: (int)SyntaxKind.TrueLiteralExpression } => ["false"],
        LiteralExpressionSyntax { RawKind: (int)SyntaxKind.FalseLiteralExpression } => ["true"],
        ConditionalExpressionSyntax conditional => [$"({conditional.Condition}) ? ({conditional.WhenFalse}) : ({conditional.WhenTrue})"],
        InvocationExpressionSyntax call => OfCall(call),
        _ when IsCondition(node) => [$"!({node})"],
        _ => [],
    };

    /// <summary>The change of one statement: a compound assignment the other way, or nothing in its place.</summary>
    public static string? Of(ExpressionStatementSyntax statement) => statement.Expression switch
    {
        AssignmentExpressionSyntax { RawKind: (int)SyntaxKind.AddAssignmentExpression } a => $"{a.Left} -= {a.Right};",
        AssignmentExpressionSyntax { RawKind: (int)SyntaxKind.SubtractAssignmentExpression } a => $"{a.Left} += {a.Right};",
        AssignmentExpressionSyntax { RawKind: (int)SyntaxKind.MultiplyAssignmentExpression } a => $"{a.Left} /= {a.Right};",
        InvocationExpressionSyntax => "{ }",
        _ => null,
    };

    // What stands alone as a condition; comparisons are changed as such.
    private static bool IsCondition(ExpressionSyntax node) => node is MemberAccessExpressionSyntax or IdentifierNameSyntax or IsPatternExpressionSyntax
        && (node.Parent is IfStatementSyntax or WhileStatementSyntax || (node.Parent is ConditionalExpressionSyntax c && c.Condition == node));

    private IEnumerable<string> OfBinary(BinaryExpressionSyntax node)
    {
        string? other = node.Kind() switch
        {
            SyntaxKind.AddExpression => "-",
            SyntaxKind.SubtractExpression => "+",
            SyntaxKind.MultiplyExpression => "/",
            SyntaxKind.DivideExpression => "*",
            SyntaxKind.ModuloExpression => "*",
            SyntaxKind.LessThanExpression => ">=",
            SyntaxKind.LessThanOrEqualExpression => ">",
            SyntaxKind.GreaterThanExpression => "<=",
            SyntaxKind.GreaterThanOrEqualExpression => "<",
            SyntaxKind.EqualsExpression => "!=",
            SyntaxKind.NotEqualsExpression => "==",
            SyntaxKind.LogicalAndExpression => "||",
            SyntaxKind.LogicalOrExpression => "&&",
            _ => null,
        };
        if (other is null || model.GetTypeInfo(node).Type?.SpecialType == SpecialType.System_String)
        {
            yield break;
        }

        yield return With(node, other);

        // Between doubles the bound itself hardly ever occurs: only whole numbers are tried on it.
        if (model.GetTypeInfo(node.Left).Type?.SpecialType == SpecialType.System_Int32 && AtBound(node.Kind()) is { } atBound)
        {
            yield return With(node, atBound);
        }
    }

    private static string? AtBound(SyntaxKind kind) => kind switch
    {
        SyntaxKind.LessThanExpression => "<=",
        SyntaxKind.LessThanOrEqualExpression => "<",
        SyntaxKind.GreaterThanExpression => ">=",
        SyntaxKind.GreaterThanOrEqualExpression => ">",
        _ => null,
    };

    private static string With(BinaryExpressionSyntax node, string sign) => $"({node.Left}) {sign} ({node.Right})";

    private static string[] OfLiteral(LiteralExpressionSyntax literal) => literal.Token.Value switch
    {
        int and 0 => ["1"],
        int value => [FormattableString.Invariant($"{value + 1}")],
        double value when value == 0 => ["1.0"],
        double value => [FormattableString.Invariant($"{value * 1.5:R}") + "d"],
        _ => [],
    };

    private static IEnumerable<string> OfCall(InvocationExpressionSyntax call)
    {
        if (call.Expression is not MemberAccessExpressionSyntax member)
        {
            yield break;
        }

        string name = member.Name.Identifier.Text;
        if (Functions.TryGetValue(name, out string? other))
        {
            yield return $"{member.Expression}.{other}{call.ArgumentList}";
        }

        if (member.Expression.ToString() == "Math")
        {
            if (Dropped.Contains(name))
            {
                yield return $"({call.ArgumentList.Arguments[0]})";
            }

            if (name == "Atan2")
            {
                yield return $"Math.Atan2({call.ArgumentList.Arguments[1]}, {call.ArgumentList.Arguments[0]})";
            }
        }
    }
}
