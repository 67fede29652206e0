using System.Collections.Immutable;
using GearBlanks.Meshing;
using GearBlanks.Meshing.Builds;

namespace GearBlanks.Mechanisms.Conditions;

/// <summary>What the conditions make of a mechanism.</summary>
/// <param name="Builds">How many random builds were drawn.</param>
/// <param name="Seed">The seed they were drawn from.</param>
/// <param name="IsNormal">True for normal distributions cut off at their limits, false for uniform ones.</param>
/// <param name="BindingShare">Share of builds in which a mesh binds, whichever, 0 to 1.</param>
/// <param name="RattlingShare">Share of builds in which a mesh rattles.</param>
/// <param name="Standard">What the tolerance classes are after, and whether outside it; null where none is used.</param>
/// <param name="Meshes">Each mesh, in the order of the mechanism's.</param>
public sealed record ConditionsReport(
    int Builds, int Seed, bool IsNormal, double BindingShare, double RattlingShare, string? Standard, ImmutableArray<MeshConditions> Meshes);

/// <summary>What the conditions make of one mesh. Backlash is circumferential, at the working circle, mm.</summary>
/// <param name="Mesh">Its name.</param>
/// <param name="Least">Least backlash of any build: a true bound.</param>
/// <param name="AsDrawn">Backlash as drawn.</param>
/// <param name="Greatest">Greatest backlash of any build: a true bound.</param>
/// <param name="Mean">Backlash with every quantity in its middle.</param>
/// <param name="ThreeDeviations">Root of the sum of squares: three standard deviations from linear sensitivities.</param>
/// <param name="Drawn">What the random builds were.</param>
/// <param name="BindingShare">Share of builds in which it binds, 0 to 1.</param>
/// <param name="RattlingShare">Share of builds in which it rattles.</param>
/// <param name="LeastDistance">What it is like at its least distance.</param>
/// <param name="GreatestDistance">What it is like at its greatest distance.</param>
/// <param name="LeastFaceOverlap">Least overlap of the faces along the axis, mm; null where heights are not known.</param>
/// <param name="ApproachShare">Share of the path of contact before the pitch point, 0 to 1; null where nothing drives it.</param>
/// <param name="IsStepUp">True where the larger gear drives.</param>
/// <param name="Contributions">What each quantity does.</param>
public sealed record MeshConditions(
    string Mesh, double Least, double AsDrawn, double Greatest, double Mean, double ThreeDeviations, DrawnBuilds Drawn, double BindingShare, double RattlingShare,
    MeshAtDistance LeastDistance, MeshAtDistance GreatestDistance, double? LeastFaceOverlap, double? ApproachShare, bool IsStepUp,
    ImmutableArray<Contribution> Contributions);

/// <summary>
/// One mesh at one end of its distances, with the teeth that make most of it: thickest where the distance takes play away, thinnest where it gives play.
/// </summary>
/// <param name="Distance">Centre distance, mm, as it acts on gears that have not grown.</param>
/// <param name="Pair">The pair there, with all its figures; null where there is none, as where the base circles leave no line of action.</param>
public sealed record MeshAtDistance(double Distance, GearPair? Pair);

/// <summary>Backlash of a mesh over random builds, mm.</summary>
/// <param name="Least">The least drawn.</param>
/// <param name="Greatest">The greatest drawn.</param>
/// <param name="Mean">Their mean.</param>
/// <param name="Deviation">Their standard deviation.</param>
public sealed record DrawnBuilds(double Least, double Greatest, double Mean, double Deviation);
