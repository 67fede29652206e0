using System.Collections.Immutable;
using GearBlanks.Cutting.Routes;
using GearBlanks.Mechanisms;

namespace GearBlanks.Verbs;

/// <summary>What a user asks of contours instead of what the machine's profile says; null where the profile decides.</summary>
/// <param name="Start">Where the contour of the teeth starts.</param>
/// <param name="Lead">The form of leads.</param>
/// <param name="LeadLength">Their length, mm.</param>
/// <param name="Tabs">How many tabs; 0 for none.</param>
/// <param name="TabWidth">Their width, mm.</param>
public sealed record AskedRoute(StartPlace? Start, LeadForm? Lead, double? LeadLength, int? Tabs, double? TabWidth)
{
    /// <summary>The plan on a machine.</summary>
    internal Outcome<RoutePlan> On(Machine machine)
    {
        RoutePlan own = machine.Route;
        var plan = new RoutePlan(
            Start ?? own.Start, Lead ?? own.Lead, LeadLength ?? own.LeadLength, Tabs ?? own.Tabs, Tabs == 0 ? 0 : TabWidth ?? own.TabWidth);
        ImmutableArray<Problem>? problem =
            plan.Lead is not null && plan.LeadLength == 0 ? CommandLine.Problem("--lead", null, "A lead needs its length", "--lead together with --lead-length")
            : plan.Lead is null && plan.LeadLength > 0 ? CommandLine.Problem("--lead-length", null, "No lead is asked for", "--lead-length together with --lead")
            : plan.Tabs > 0 && plan.TabWidth == 0 ? CommandLine.Problem("--tabs", null, "Tabs need their width", "--tabs together with --tab-width")
            : plan.Tabs == 0 && TabWidth is not null ? CommandLine.Problem("--tab-width", null, "No tabs are asked for", "--tab-width together with --tabs")
            : null;
        return problem is { } told ? told : plan;
    }
}
