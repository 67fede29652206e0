using System.Reflection;
using Xunit;
using Xunit.Sdk;
using Xunit.v3;

namespace GearBlanks.Mutation;

/// <summary>One test with one row of data, to be run again and again in one process.</summary>
internal sealed record Item(string Name, MethodInfo Method, object?[] Arguments)
{
    /// <summary>Runs it on a fresh object.</summary>
    /// <returns>True where it passes.</returns>
    public bool Passes()
    {
        object? instance = null;
        try
        {
            instance = Method.IsStatic ? null : Activator.CreateInstance(Method.DeclaringType!);
            if (Method.Invoke(instance, Arguments) is Task task)
            {
                task.GetAwaiter().GetResult();
            }

            return true;
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            return false;
        }
        finally
        {
            (instance as IDisposable)?.Dispose();
        }
    }
}

/// <summary>Finds the tests of an assembly.</summary>
internal static class Suite
{
    public static IEnumerable<Item> In(Assembly assembly, string[] namespaces) =>
        from type in assembly.GetTypes()
        where !type.IsAbstract && type.Namespace is { } name && namespaces.Any(asked => name == asked || name.StartsWith(asked + ".", StringComparison.Ordinal))
        where type.GetConstructor([]) is not null
        orderby type.FullName
        from method in type.GetMethods().OrderBy(method => method.Name, StringComparer.Ordinal)
        where method.GetCustomAttribute<FactAttribute>() is not null
        from row in Rows(method)
        select new Item($"{type.Name}.{method.Name}({string.Join(", ", row)})", method, row);

    private static IEnumerable<object?[]> Rows(MethodInfo method)
    {
        ParameterInfo[] parameters = method.GetParameters();
        if (parameters.Length == 0)
        {
            return [[]];
        }

        return method.GetCustomAttributes().SelectMany(attribute => attribute switch
        {
            MemberDataAttribute member => Member(member, method),
            IDataAttribute data => data.GetData(method, new DisposalTracker()).AsTask().GetAwaiter().GetResult(),
            _ => [],
        }).Select(row => Fitted(row.GetData(), parameters));
    }

    // Outside the framework's own runner the attribute does not find its member.
    private static IEnumerable<ITheoryDataRow> Member(MemberDataAttribute attribute, MethodInfo method)
    {
        const BindingFlags any = BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.FlattenHierarchy;
        Type type = attribute.MemberType ?? method.DeclaringType!;
        object? rows = type.GetProperty(attribute.MemberName, any)?.GetValue(null)
            ?? type.GetField(attribute.MemberName, any)?.GetValue(null)
            ?? type.GetMethod(attribute.MemberName, any)?.Invoke(null, attribute.Arguments);
        return ((System.Collections.IEnumerable)rows!).Cast<object>().Select(row => row as ITheoryDataRow ?? new TheoryDataRow((object?[])row));
    }

    private static object?[] Fitted(object?[] values, ParameterInfo[] parameters) =>
        [.. parameters.Select((parameter, i) => i < values.Length ? Fitted(values[i], parameter.ParameterType) : parameter.DefaultValue)];

    private static object? Fitted(object? value, Type type)
    {
        Type wanted = Nullable.GetUnderlyingType(type) ?? type;
        return value is IConvertible && wanted.IsPrimitive && value.GetType() != wanted ? Convert.ChangeType(value, wanted, null) : value;
    }
}
