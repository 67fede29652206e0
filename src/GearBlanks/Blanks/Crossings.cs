using System.Collections.Immutable;
using GearBlanks.Curves;
using GearBlanks.Teeth;

namespace GearBlanks.Blanks;

/// <summary>What is cut out of an external gear between hub and rim so that arms are left: windows with rounded corners, all alike.</summary>
/// <param name="Arms">How many arms; 2 to 100.</param>
/// <param name="HubDiameter">Diameter of the hub, mm.</param>
/// <param name="RimWidth">Width of the rim below the root circle, mm.</param>
/// <param name="ArmWidth">Width of an arm, mm, where its centre line leaves the hub.</param>
/// <param name="ArmWidthAtRim">Width of an arm, mm, where its centre line reaches the rim; the same for a straight arm.</param>
/// <param name="CornerRadius">Radius in the corners of the windows, mm; 0 for sharp ones.</param>
/// <param name="StartAngle">Angle of the first arm from the centre line of the tooth on +X, rad.</param>
public sealed record Crossings(
    int Arms, double HubDiameter, double RimWidth, double ArmWidth, double ArmWidthAtRim, double CornerRadius, double StartAngle)
{
    /// <summary>Fewest arms.</summary>
    public const int FewestArms = 2;

    /// <summary>Most arms.</summary>
    public const int MostArms = 100;

    /// <summary>The windows, counter-clockwise from the first arm; each a counter-clockwise contour of lines and arcs.</summary>
    /// <param name="rootRadius">Radius of the root circle, mm.</param>
    /// <exception cref="GearGeometryException">No such windows exist: the exception names what leaves no room for them.</exception>
    public ImmutableArray<Outline> Windows(double rootRadius)
    {
        RequireSizes(rootRadius);
        WindowForm form = WindowForm.Of(this, rootRadius) ?? throw CrossingsAdvice.Refusal(this, rootRadius);
        Outline first = form.Outline();
        return [.. Enumerable.Range(0, Arms).Select(i => first.Moved(Motion.Turn(StartAngle + (2 * Math.PI * (i + 0.5) / Arms))))];
    }

    private void RequireSizes(double rootRadius)
    {
        if (Arms is < FewestArms or > MostArms)
        {
            throw new GearGeometryException(
                "no-arms", "The number of arms is out of range", Arms, Arms < FewestArms ? FewestArms : MostArms, $"use {FewestArms} to {MostArms} arms");
        }

        Refusals.RequirePositive("The hub's diameter", HubDiameter);
        Refusals.RequirePositive("The rim's width", RimWidth);
        Refusals.RequirePositive("The arms' width", ArmWidth);
        Refusals.RequirePositive("The arms' width at the rim", ArmWidthAtRim);
        Refusals.RequireNotNegative("The windows' corner radius", CornerRadius);
        if (rootRadius - RimWidth - (HubDiameter / 2) <= 2 * CornerRadius)
        {
            throw CrossingsAdvice.NoDepth(this, rootRadius);
        }
    }
}
