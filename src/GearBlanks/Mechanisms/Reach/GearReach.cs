using System.Collections.Immutable;
using GearBlanks.Curves;
using GearBlanks.Findings;
using GearBlanks.Teeth;

namespace GearBlanks.Mechanisms.Reach;

/// <summary>What a beam or an end mill reaches of one gear, ring or rack. Diameters of cutters in mm.</summary>
/// <param name="Name">The gear's name.</param>
/// <param name="Teeth">Its teeth, nominal.</param>
/// <param name="Tool">Diameter of the beam or mill that it is cut with.</param>
/// <param name="Largest">The largest cutters for it.</param>
/// <param name="AsCut">The contour of the teeth as the tool leaves it.</param>
/// <param name="UncutDepth">Greatest distance of a point of the nominal outline from the outline as cut, mm.</param>
/// <param name="UncutAreaPerGap">Area that stays standing in one gap, mm2.</param>
/// <param name="UncutArea">The same of all gaps, mm2; of a rack those between its teeth.</param>
/// <param name="Findings">What there is to say of it.</param>
public sealed record GearReach(
    string Name, Toothing Teeth, double Tool, LargestCutters Largest, Outline AsCut, double UncutDepth, double UncutAreaPerGap, double UncutArea, ImmutableArray<Finding> Findings)
{
    /// <summary>What stays uncut, closed contours, counter-clockwise.</summary>
    public ImmutableArray<Outline> Uncut { get; init; } = [];

    /// <summary>One of its gaps, to be looked at.</summary>
    public required GapView Gap { get; init; }

    /// <summary>The worst level.</summary>
    public Level Verdict => Findings.Select(finding => finding.Level).DefaultIfEmpty(Level.Ok).Max();
}

/// <summary>The largest round cutters for the teeth of a gear, as diameters, mm.</summary>
/// <param name="RootTouching">The largest that touches the root at the gap's middle.</param>
/// <param name="WholeFillet">The largest that follows all of the gap; 0 where it has a sharp inside corner.</param>
/// <param name="RunningFree">The largest that leaves every mate running free; null where that is not known, or none does.</param>
/// <param name="WhyNot">Why no such tool is told; null where one is.</param>
public sealed record LargestCutters(double RootTouching, double WholeFillet, double? RunningFree, string? WhyNot);
