using System.Collections.Immutable;
using GearBlanks.Curves;
using GearBlanks.Teeth;

namespace GearBlanks.Mechanisms;

/// <summary>
/// The angles at which a mechanism's sandwiches stand when every gear is in mesh: on each line of centres a tooth of one gear is
/// centred in a gap of the other, with half the backlash on either side.
/// </summary>
/// <param name="Angles">
/// The angle of each sandwich by its name, rad in (-pi, pi], counter-clockwise from +X; of one with a rack how far it has slid, a pitch against the
/// rack's direction being a turn.
/// </param>
/// <param name="OutOfPhase">Meshes that close a loop and find their tooth beside the gap, in the order of the mechanism.</param>
public sealed record MeshedPhases(ImmutableDictionary<string, double> Angles, ImmutableArray<PhaseGap> OutOfPhase)
{
    /// <summary>Meshes that are centred, from the driven sandwich outward.</summary>
    internal ImmutableArray<Mesh> Centred { get; init; } = [];

    /// <summary>
    /// Finds the angles, from the driven sandwich outward: it stands at 0, and so does the first sandwich of each part of the mechanism
    /// that no mesh connects to it.
    /// </summary>
    public static MeshedPhases Of(Mechanism mechanism) => new PhaseWalk(mechanism).Walk();

    /// <summary>Where a gear's own frame stands in plan.</summary>
    /// <exception cref="KeyNotFoundException">The gear belongs to another mechanism.</exception>
    public Motion PlaceOf(MountedGear gear)
    {
        Motion turned = Motion.Turn(gear.RackPlace?.Direction ?? AngleOf(gear));

        // A rack's turn is one pitch against its direction.
        double slid = gear.Toothing is RackBar rack ? -Angles[gear.Sandwich] * rack.Pitch / (2 * Math.PI) : 0;
        return Motion.Shift(new Vector(slid, 0)).Then(turned).Then(Motion.Shift(gear.Axis.Position - default(Point)));
    }

    /// <summary>The angle of a gear's marked tooth, rad counter-clockwise from +X.</summary>
    /// <exception cref="KeyNotFoundException">The gear belongs to another mechanism.</exception>
    public double AngleOf(MountedGear gear) => Angles[gear.Sandwich] + gear.Turned;
}

/// <summary>A mesh whose teeth do not meet gaps, because other meshes already hold both its gears.</summary>
/// <param name="Mesh">The mesh.</param>
/// <param name="Offset">
/// How far the first gear's tooth stands beside the middle of the gap, mm along the working circle, counter-clockwise about the first gear
/// positive; at most half a pitch.
/// </param>
/// <param name="Play">How far the tooth can be brought over by the backlash of all meshes of the loop, each half its own either way, mm along the working circle.</param>
public sealed record PhaseGap(Mesh Mesh, double Offset, double Play);
