using GearBlanks.Teeth;

namespace GearBlanks.Mechanisms;

/// <summary>
/// One gear of a mesh seen from its own centre, so that all kinds follow one rule: a ring's teeth count negative, and a rack is one tooth to a turn, a turn
/// being one pitch against its own direction.
/// </summary>
/// <param name="Teeth">Teeth that pass in one turn; negative for a ring.</param>
/// <param name="PitchDirection">Direction of the pitch point, rad.</param>
/// <param name="ToothDirection">Direction of a tooth's middle while the sandwich stands at 0, rad.</param>
internal readonly record struct MeshSide(int Teeth, double PitchDirection, double ToothDirection)
{
    /// <summary>The side of one of a mesh's gears.</summary>
    public static MeshSide Of(MountedGear gear, Mesh mesh)
    {
        if (gear.RackPlace is { } place)
        {
            var rack = (RackBar)gear.Toothing;
            return new MeshSide(1, -Turns(place.AlongOf(mesh.PitchPoint), rack), -Turns(rack.FirstTooth, rack));
        }

        return new MeshSide(SignedTeeth(gear), (mesh.PitchPoint - gear.Axis.Position).Angle, gear.Turned);
    }

    /// <summary>Teeth that pass in one turn of a gear, or in one pitch of a rack; negative for a ring.</summary>
    public static int SignedTeeth(MountedGear gear) => gear.Toothing switch
    {
        RingGear ring => -ring.Teeth,
        RackBar => 1,
        _ => gear.Toothing.Teeth,
    };

    // A length along a rack as an angle: a pitch is a turn.
    private static double Turns(double along, RackBar rack) => 2 * Math.PI * along / rack.Pitch;
}
