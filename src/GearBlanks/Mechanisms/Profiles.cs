using System.Collections.Immutable;
using GearBlanks.Cutting;
using GearBlanks.Cutting.Routes;

namespace GearBlanks.Mechanisms;

/// <summary>A material, from profiles/materials.</summary>
/// <param name="Name">File name of the profile.</param>
/// <param name="Title">What it is called in words.</param>
/// <param name="ThermalExpansion">Linear expansion, 1/K; null where it is not known.</param>
/// <param name="Cautions">What to mind when it is cut.</param>
public sealed record Material(string Name, string Title, double? ThermalExpansion, ImmutableArray<string> Cautions)
{
    /// <summary>Linear growth with each per cent of relative humidity; null where it is not known.</summary>
    public double? MoistureExpansion { get; init; }
}

/// <summary>A machine or shop, from profiles/machines.</summary>
/// <param name="Name">File name of the profile.</param>
/// <param name="Title">What it is called in words.</param>
/// <param name="Layers">The layers of its drawings.</param>
/// <param name="Cautions">What to mind when it runs.</param>
public sealed record Machine(string Name, string Title, LayerPlan Layers, ImmutableArray<string> Cautions)
{
    /// <summary>True where the shop, the controller or the CAM program moves the cut off the outline itself: files stay nominal.</summary>
    public bool Compensates { get; init; }

    /// <summary>Its kerf in sheets that it is known for.</summary>
    public ImmutableArray<SheetKerf> Kerfs { get; init; } = [];

    /// <summary>Diameter of a mill's tool, mm; null where it has none.</summary>
    public double? ToolDiameter { get; init; }

    /// <summary>True where files are the path of the tool's centre; false where they are the part's contour.</summary>
    public bool FollowsToolCentre { get; init; }

    /// <summary>Where its contours start, its leads and its tabs.</summary>
    public RoutePlan Route { get; init; } = RoutePlan.None;

    /// <summary>The least wall and hole that it makes; null where it has no rule.</summary>
    public LeastFeature? LeastFeature { get; init; }
}

/// <summary>A machine's kerf in one sheet.</summary>
/// <param name="Material">File name of the material's profile.</param>
/// <param name="Thinnest">Least thickness it holds for, mm.</param>
/// <param name="Thickest">Greatest thickness it holds for, mm.</param>
/// <param name="Kerf">The kerf.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record SheetKerf(string Material, double Thinnest, double Thickest, Kerf Kerf, string Source);

/// <summary>A shop's rule for the least wall, web and hole: a share of the sheet's thickness, a length, or the greater of both.</summary>
/// <param name="Thicknesses">In sheet thicknesses; 0 for none.</param>
/// <param name="Length">In mm; 0 for none.</param>
/// <param name="Source">Where the rule comes from.</param>
public sealed record LeastFeature(double Thicknesses, double Length, string Source)
{
    /// <summary>The least size in a sheet, mm.</summary>
    /// <param name="thickness">The sheet's thickness, mm.</param>
    public double At(double thickness) => Math.Max(Thicknesses * thickness, Length);
}
